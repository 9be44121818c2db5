package setwright.intake.parquet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.engine.Engine;
import setwright.intake.problem.InputProblem;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** Tables that another program's writer (DuckDB's) made. */
class ParquetFormatTest {
    @TempDir
    private Path folder;

    private Path write(String name, String query) throws SQLException, IOException {
        Path plain = folder.resolve("plain.parquet");
        try (Connection connection = Engine.open();
                Statement statement = connection.createStatement()) {
            statement.execute("COPY (" + query + ") TO " + Engine.text(plain.toString()) + " (FORMAT parquet)");
        }
        return Files.move(plain, folder.resolve(name));
    }

    private static TableColumn column(Table table, String header) {
        return table.column(header).orElseThrow();
    }

    @Test
    void everyTypeBecomesANumberOrSaysThatItIsNone() throws Exception {
        Path file = write(
                "laps.parquet",
                "SELECT i * 0.01 AS \"time [s]\", (i % 6)::TINYINT AS gear, i % 2 = 0 AS \"lap pulse\", i::DECIMAL(9, 3) AS fuel,"
                        + " TIMESTAMP '2031-05-04 09:30:00' + INTERVAL (i * 10) MILLISECOND AS stamp,"
                        + " CASE WHEN i = 3 THEN NULL ELSE i::FLOAT END AS speed, CASE WHEN i = 2 THEN 'off' ELSE ' ' || i END AS word,"
                        + " [i] AS list, 'inf'::DOUBLE AS endless FROM range(5) t(i)");
        Table table = Formats.read(file).get(0);
        assertThat(table.rowCount()).isEqualTo(5);
        assertThat(column(table, "time [s]").toArray()).containsExactly(0.0, 0.01, 0.02, 0.03, 0.04);
        assertThat(column(table, "gear").get(4)).isEqualTo(4.0);
        assertThat(column(table, "lap pulse").toArray()).containsExactly(1.0, 0.0, 1.0, 0.0, 1.0);
        assertThat(column(table, "fuel").get(3)).isEqualTo(3.0);
        // 2031-05-04T09:30:00Z by the calendar: 22403 days and 9.5 hours after 1970.
        assertThat(column(table, "stamp").get(1)).isEqualTo(22403 * 86400.0 + 34200.0 + 0.01);
        assertThat(column(table, "speed").get(3)).isNaN();
        assertThat(column(table, "speed").badCount()).isZero();
        assertThat(column(table, "word").toArray()).containsExactly(0.0, 1.0, Double.NaN, 3.0, 4.0);
        assertThat(column(table, "word").firstBad()).contains(new TableColumn.BadCell(3, "off"));
        assertThat(column(table, "list").isText()).isTrue();
        assertThat(column(table, "endless").finiteCount()).isZero();
    }

    @Test
    void aNameWithSignsOfPatternsIsAName() throws Exception {
        Path file = write("laps [1] *.parquet", "SELECT i * 0.1 AS t FROM range(9) t(i)");
        write("laps 1 x.parquet", "SELECT 7 AS other FROM range(9)");
        assertThat(Formats.read(file).get(0).columns())
                .extracting(TableColumn::header)
                .containsExactly("t");
    }

    @Test
    void aFolderNameIsNoColumn() throws Exception {
        Path file = write("laps.parquet", "SELECT i * 0.1 AS t FROM range(9) t(i)");
        Path inside = Files.createDirectory(folder.resolve("driver=ines")).resolve("laps.parquet");
        Files.move(file, inside);
        assertThat(Formats.read(inside).get(0).columns()).hasSize(1);
    }

    @Test
    void aDamagedFileIsRefusedWithOneMessage() throws Exception {
        Path file = write("laps.parquet", "SELECT i * 0.1 AS t FROM range(9000) t(i)");
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
        assertThatThrownBy(() -> Formats.read(file))
                .isInstanceOf(InputProblem.class)
                .hasMessageStartingWith("laps.parquet: expected a whole Parquet file, found a damaged one")
                .hasMessageNotContaining("\n");
    }

    @Test
    void aFileWithoutRowsIsRefused() throws Exception {
        Path file = write("laps.parquet", "SELECT i * 0.1 AS t FROM range(0) t(i)");
        assertThatThrownBy(() -> Formats.read(file))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("found none");
    }
}
