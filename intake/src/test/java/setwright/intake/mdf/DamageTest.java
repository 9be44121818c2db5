package setwright.intake.mdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;

/** Random damage to good files: tables of a bounded size or one clear problem, never anything else. */
class DamageTest {
    private static final long SEED = 20_261_127L;
    private static final int PER_FILE = 300;
    /** No fixture holds a tenth of this. */
    private static final long MOST_CELLS = 100_000;
    /** A safety net against a loop without an end; it takes a few seconds. */
    private static final Duration HANGS = Duration.ofSeconds(120);

    @TempDir
    private Path folder;

    @Test
    void damageIsReadOrRefused() {
        assertTimeoutPreemptively(HANGS, () -> {
            int refused = 0;
            int tries = 0;
            for (String name : Fixtures.names()) {
                byte[] good = Files.readAllBytes(Fixtures.file(name));
                for (int i = 0; i < PER_FILE; i++) {
                    refused += isRefused(name, i, good) ? 1 : 0;
                    tries++;
                }
            }
            assertThat(refused).as("damage that showed, of %d", tries).isBetween(tries / 4, tries - 1);
        });
    }

    private boolean isRefused(String name, int index, byte[] good) throws IOException {
        long seed = SEED + 31L * name.hashCode() + index;
        String label = "seed " + seed + ", " + name;
        Path file = Files.write(folder.resolve("damaged.mf4"), damaged(good, new Random(seed)));
        try {
            List<Table> tables = new MdfFormat().read(file);
            assertThat(tables).as(label).isNotEmpty();
            assertThat(tables.stream()
                            .mapToLong(table ->
                                    (long) table.rowCount() * table.columns().size())
                            .sum())
                    .as(label)
                    .isLessThan(MOST_CELLS);
            tables.forEach(table ->
                    assertThat(table.columns()).as(label).allMatch(column -> column.size() == table.rowCount()));
            return false;
        } catch (InputProblem problem) {
            assertThat(problem.getMessage()).as(label).startsWith("damaged.mf4: expected ");
            assertThat(problem.advice()).as(label).isNotEmpty();
            return true;
        } catch (RuntimeException | Error e) {
            throw new AssertionError(label, e);
        }
    }

    private static byte[] damaged(byte[] good, Random random) {
        byte[] bytes = good.clone();
        for (int k = 1 + random.nextInt(3); k > 0; k--) {
            ByteBuffer words = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
            int at = random.nextInt(bytes.length / 8) * 8;
            switch (random.nextInt(7)) {
                case 0 -> bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
                case 1 -> bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
                case 2 -> words.putLong(at, random.nextInt(bytes.length));
                case 3 -> words.putLong(at, 64 + 8L * random.nextInt(bytes.length / 8 - 8));
                case 4 -> words.putLong(at, words.getLong(random.nextInt(bytes.length / 8) * 8));
                case 5 -> words.putLong(at, random.nextLong() >> random.nextInt(64));
                default -> bytes = Arrays.copyOf(bytes, 64 + random.nextInt(bytes.length - 64));
            }
            if (bytes.length < 80) {
                return bytes;
            }
        }
        return bytes;
    }
}
