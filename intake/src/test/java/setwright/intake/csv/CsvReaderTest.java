package setwright.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

class CsvReaderTest {
    @TempDir
    private Path folder;

    private Table read(String text) throws IOException {
        return CsvReader.read(Files.writeString(folder.resolve("table.csv"), text, StandardCharsets.UTF_8));
    }

    @Test
    void quotesBlanksAndTrailingDelimiters() throws IOException {
        Table table = read("\"a [m]\", b ,c,\n\"1.5\", 2 ,3,\n4,,n/a,\n-.5,1e3,+7.,\n");
        assertThat(table.columns()).extracting(TableColumn::header).containsExactly("a [m]", "b", "c");
        assertThat(table.columns().get(0).toArray()).containsExactly(1.5, 4.0, -0.5);
        assertThat(table.columns().get(1).toArray()).containsExactly(2.0, Double.NaN, 1000.0);
        assertThat(table.columns().get(2).toArray()).containsExactly(3.0, Double.NaN, 7.0);
        assertThat(table.columns()).allMatch(column -> column.firstBad().isEmpty());
    }

    @Test
    void quotedDecimalCommas() throws IOException {
        Table table = read("a;b\n\"1,5\";2,25\n3;-4,75\n");
        assertThat(table.columns().get(0).toArray()).containsExactly(1.5, 3.0);
        assertThat(table.columns().get(1).toArray()).containsExactly(2.25, -4.75);
    }

    /** A mended fault: with most columns whole numbers, the one with decimal commas was taken for words. */
    @Test
    void decimalCommasAmongWholeNumbers() throws IOException {
        Table table = read("a;b;c;d\n1;2;3,5;0\n2;3;4,25;0\n3;4;-1,5;1\n");
        assertThat(table.columns().get(2).toArray()).containsExactly(3.5, 4.25, -1.5);
        assertThat(table.columns().get(3).toArray()).containsExactly(0.0, 0.0, 1.0);
    }

    @Test
    void aColumnOfWordsIsNoMistake() throws IOException {
        Table table = read("a,who,b\n1,someone,2\n3,someone,4\n5,,6\n");
        assertThat(table.columns().get(2).toArray()).containsExactly(2.0, 4.0, 6.0);
        assertThat(table.columns().get(1).finiteCount()).isZero();
    }

    @Test
    void linesAreCountedWithPreambleAndUnits() throws IOException {
        Table table = read("made by a logger\n\na,b\nm,s\n1,2\n3,4\n5,oops\n7,8\n9,10\n11,12\n13,14\n");
        assertThat(table.firstRow()).isEqualTo(5);
        assertThat(table.columns().get(0).unitRow()).isEqualTo("m");
        assertThat(table.columns().get(1).firstBad()).contains(new TableColumn.BadCell(7, "oops"));
    }

    /** A mended fault: rows of a file of several read buffers came in another order. */
    @Test
    void rowsKeepTheirOrderInLargeFiles() throws IOException {
        Path file = folder.resolve("large.csv");
        int count = 600_000;
        try (Writer out = Files.newBufferedWriter(file)) {
            out.write("row,remark,half\n");
            for (int i = 0; i < count; i++) {
                out.write(String.format(Locale.ROOT, "%d,%s,%.1f%n", i, i % 2 == 0 ? "x" : "a longer remark", 0.5 * i));
            }
        }
        Table table = CsvReader.read(file);
        assertThat(table.rowCount()).isEqualTo(count);
        TableColumn rows = table.columns().get(0);
        for (int i = 0; i < count; i++) {
            if (rows.get(i) != i) {
                assertThat(rows.get(i)).as("row %d", i).isEqualTo(i);
            }
        }
    }
}
