package setwright.intake.columns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.columns.ParquetTable.Head;
import setwright.intake.columns.ParquetTable.Kind;

final class ParquetTableTest {
    private static final List<Head> HEADS = List.of(
            new Head("it's a \"name\"", Kind.TEXT),
            new Head("lap", Kind.WHOLE),
            new Head("speed (m/s)", Kind.NUMBER),
            new Head("good", Kind.TRUTH));

    @TempDir
    private Path folder;

    @Test
    void cellsComeBackAsTheyWere() throws IOException, SQLException {
        Path file = folder.resolve("it's.parquet");
        ParquetTable.write(file, HEADS, cells -> {
            cells.row();
            cells.text("'; DROP TABLE kept; --");
            cells.whole(Long.MIN_VALUE);
            cells.number(0.1);
            cells.truth(true);
            cells.row();
            for (int i = 0; i < HEADS.size(); i++) {
                cells.empty();
            }
        });
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT * FROM read_parquet('" + file.toString().replace("'", "''") + "')")) {
            for (int i = 0; i < HEADS.size(); i++) {
                assertThat(rows.getMetaData().getColumnName(i + 1))
                        .isEqualTo(HEADS.get(i).header());
            }
            assertThat(rows.next()).isTrue();
            assertThat(rows.getString(1)).isEqualTo("'; DROP TABLE kept; --");
            assertThat(rows.getLong(2)).isEqualTo(Long.MIN_VALUE);
            assertThat(rows.getDouble(3)).isEqualTo(0.1);
            assertThat(rows.getBoolean(4)).isTrue();
            assertThat(rows.next()).isTrue();
            for (int i = 1; i <= HEADS.size(); i++) {
                assertThat(rows.getObject(i)).isNull();
            }
            assertThat(rows.next()).isFalse();
        }
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        Path file = folder.resolve("no").resolve("t.parquet");
        assertThatThrownBy(() -> ParquetTable.write(file, HEADS, cells -> {}))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("cannot write " + file);
    }

    @Test
    void rowsAreReadAsTextsAndCopiedWithoutSomeOfThem() throws IOException {
        Path file = folder.resolve("some=1.parquet");
        try (ParquetTable.Growing table = ParquetTable.open(HEADS)) {
            for (String text : List.of("one", "it's", "three")) {
                table.cells().row();
                table.cells().text(text);
                table.cells().whole(text.length());
                table.cells().number(1.0 / 3.0);
                table.cells().empty();
            }
            table.finish(file);
        }
        Path copy = folder.resolve("copy.parquet");
        ParquetRows.copyWithout(file, copy, HEADS.get(0).header(), List.of("it's"));
        java.util.List<List<String>> rows = new java.util.ArrayList<>();
        ParquetRows.read(List.of(file, copy), List.of("lap", HEADS.get(0).header(), "good"), (number, row) -> {
            assertThat(number).isEqualTo(rows.size() < 3 ? 0 : 1);
            rows.add(row);
        });
        assertThat(rows)
                .containsExactly(
                        List.of("3", "one", ""),
                        List.of("4", "it's", ""),
                        List.of("5", "three", ""),
                        List.of("3", "one", ""),
                        List.of("5", "three", ""));
        assertThatThrownBy(() -> ParquetRows.read(List.of(file), List.of("none"), (number, row) -> rows.add(row)))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("cannot be read");
    }
}
