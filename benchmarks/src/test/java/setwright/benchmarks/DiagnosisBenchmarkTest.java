package setwright.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.circuit.StintBuilder;
import setwright.intake.RecordingReader;

/** That the benchmark measures what it says; it times nothing. */
final class DiagnosisBenchmarkTest {
    @TempDir
    private Path folder;

    @Test
    void fortyColumnsAndSoManyLaps() throws IOException {
        WrittenLaps.write(folder, List.of(2, 3));
        for (int laps : List.of(2, 3)) {
            Path file = WrittenLaps.file(folder, laps);
            try (var lines = Files.lines(file)) {
                assertThat(lines.findFirst().orElseThrow().split(",")).hasSize(WrittenLaps.COLUMNS);
            }
            var recording = RecordingReader.read(file, Optional.empty(), Optional.empty())
                    .recording();
            assertThat(recording.sampleRateHz()).isEqualTo(100.0);
            assertThat(StintBuilder.build(recording).goodLaps()).hasSize(laps);
        }
    }
}
