package setwright.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.problem.InputProblem;

/** Small files that become great ones. */
class BombTest {
    private static final String HEAD = "time,speed\n0.00,1\n0.01,2\n0.02,3\n0.03,4\n";

    @TempDir
    private Path folder;

    /** A table, then the same text over and over: some 80 MB in 100 kB. */
    private Path packed(String over) throws IOException {
        Path file = folder.resolve("bomb.csv.gz");
        byte[] block = over.repeat((1 << 20) / over.length()).getBytes(StandardCharsets.US_ASCII);
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file), 1 << 16)) {
            out.write(HEAD.repeat(40_000).getBytes(StandardCharsets.US_ASCII)); // beyond what is looked at first
            for (int i = 0; i < 80; i++) {
                out.write(block);
            }
        }
        assertThat(Files.size(file)).isLessThan(2L << 20);
        return file;
    }

    @Test
    void aPackedFileThatNeverEndsIsRefused() throws IOException {
        Path file = packed("9,9\n");
        assertThatThrownBy(() -> CsvReader.read(file))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("a packed file that holds more than 200 times its size");
    }

    @Test
    void soIsOneThatOnlyTheEngineCouldRead() throws IOException {
        Path file = packed("\"9\",9\n");
        assertThatThrownBy(() -> CsvReader.read(file))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("a packed file that holds more than 200 times its size");
    }

    @Test
    void aLineWithoutAnEndIsRefused() throws IOException {
        Path packed = packed("9");
        assertThatThrownBy(() -> CsvReader.read(packed)).isInstanceOf(InputProblem.class);
        Path plain = folder.resolve("endless.csv");
        Files.writeString(plain, HEAD.repeat(40_000) + "9".repeat(20 << 20));
        assertThatThrownBy(() -> CsvReader.read(plain))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("a line of more than 65536 bytes");
    }
}
