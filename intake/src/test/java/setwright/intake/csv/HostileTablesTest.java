package setwright.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.hostile.Inputs;
import setwright.intake.hostile.Mutator;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Numbers;
import setwright.intake.table.Table;

/** Damaged text tables that the quick reader still reads: the SQL engine, an independent reader, must read the same numbers. */
class HostileTablesTest {
    @TempDir
    private Path folder;

    private static List<byte[]> recordings() throws Exception {
        List<byte[]> all = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            String name = "/cases/practice-0" + i + "/stint1.csv.gz";
            try (InputStream in =
                    new GZIPInputStream(Objects.requireNonNull(HostileTablesTest.class.getResourceAsStream(name)))) {
                all.add(new String(in.readNBytes(40_000), StandardCharsets.UTF_8)
                        .lines()
                        .limit(150)
                        .collect(Collectors.joining("\n"))
                        .getBytes(StandardCharsets.UTF_8));
            }
        }
        return all;
    }

    @Test
    void damageIsReadAlikeByBothReaders() throws Exception {
        List<byte[]> whole = recordings();
        Mutator mutator = new Mutator(77);
        Path file = folder.resolve("input");
        int compared = 0;
        for (int i = 0; i < Inputs.share(0.1); i++) {
            Files.write(file, mutator.damaged(whole.get(i % 8), whole.get((i * 3 + 1) % 8)));
            try {
                Dialect dialect = Sniffer.sniff("input", Sample.of(file));
                Optional<List<Numbers>> quick = PlainRows.read("input", file, dialect, rows -> {});
                if (quick.isEmpty() || quick.get().get(0).size() < 2) {
                    continue;
                }
                Table slow = CsvReader.engine("input", file, dialect);
                for (int column = 0; column < slow.columns().size(); column++) {
                    assertThat(quick.get().get(column).copy(0, slow.rowCount()))
                            .as("input %d, column %d", i, column)
                            .containsExactly(slow.columns().get(column).toArray());
                }
                compared++;
            } catch (InputProblem problem) {
                assertThat(problem.getMessage()).startsWith("input");
            }
        }
        assertThat(compared).isPositive();
    }
}
