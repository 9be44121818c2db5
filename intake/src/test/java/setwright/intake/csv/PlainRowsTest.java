package setwright.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.intake.table.Numbers;
import setwright.intake.table.Table;

/** The quick reader against the SQL engine, which takes any table, and against Java's own reading of numbers. */
class PlainRowsTest {
    private static final int ROWS = 400;
    private static final String[] FORMS = {
        "%.0f", "%.3f", " %.2f", "%.9f ", "+%.1f", "%.12e", "%.17g", "nan", "", "N/A", "0", "-0.0", ".5", "7.", "1e-3"
    };

    @TempDir
    private Path folder;

    private static Dialect dialect(String name, Path file) {
        return Sniffer.sniff(name, Sample.of(file));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void readsWhatTheEngineReads(long seed) throws IOException {
        Random random = new Random(seed);
        boolean comma = seed % 2 == 0;
        String end = seed % 3 == 0 ? "\r\n" : "\n";
        StringBuilder text = new StringBuilder("made by a logger" + end + "a;b;c;d" + end);
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < 4; column++) {
                String form = row < 20 ? "%.3f" : FORMS[random.nextInt(FORMS.length)];
                String cell = form.contains("%")
                        ? String.format(Locale.ROOT, form, 1000.0 * Math.abs(random.nextGaussian()))
                        : form;
                text.append(comma ? cell.replace('.', ',') : cell).append(column < 3 ? ";" : end);
            }
            text.append(row == 30 ? end : "");
        }
        Path file = folder.resolve("table.csv.gz");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
            out.write(text.toString().getBytes(StandardCharsets.UTF_8));
        }
        Dialect dialect = dialect("table", file);
        Table slow = CsvReader.engine("table", file, dialect);
        for (int block : new int[] {7, 64, 1 << 20}) {
            List<Numbers> quick =
                    PlainRows.read("table", file, dialect, block, rows -> {}).orElseThrow();
            for (int column = 0; column < 4; column++) {
                assertThat(all(quick.get(column)))
                        .as("seed %d, blocks of %d bytes, column %d", seed, block, column)
                        .containsExactly(slow.columns().get(column).toArray());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"9,oops", "9", "9,1,2", "\"9\",1", "9,1e999", "9,1_0", "9,0x1F"})
    void leavesTheRestToTheEngine(String row) throws IOException {
        Path file = folder.resolve("table.csv");
        Files.writeString(file, "a,b\n1,2\n3,4\n5,6\n7,8\n" + row + "\n");
        assertThat(PlainRows.read("table", file, dialect("table", file), rows -> {}))
                .isEmpty();
    }

    @Test
    void roundsAsJavaDoes() throws IOException {
        Random random = new Random(8L);
        StringBuilder text = new StringBuilder("a,b\n");
        double[] expected = new double[2000];
        for (int i = 0; i < expected.length; i++) {
            String number = String.format(Locale.ROOT, "%." + i % 17 + "f", Math.exp(8.0 * random.nextGaussian()));
            expected[i] = Double.parseDouble(number);
            text.append(number).append(",1\n");
        }
        Path file = folder.resolve("table.csv");
        Files.writeString(file, text);
        Optional<List<Numbers>> read = PlainRows.read("table", file, dialect("table", file), rows -> {});
        assertThat(read).isPresent();
        assertThat(all(read.get().get(0))).containsExactly(expected);
    }

    private static double[] all(Numbers numbers) {
        return numbers.copy(0, numbers.size());
    }
}
