package setwright.benchmarks.laps;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.circuit.StintBuilder;
import setwright.core.recording.Recording;
import setwright.intake.RecordingReader;

/** That the files are what their shape says; it times nothing. */
final class WrittenLapsTest {
    private static final WrittenLaps LAPS = WrittenLaps.drive(3);

    @TempDir
    private Path folder;

    @Test
    void lapsRateAndColumnsAreThoseOfTheShape() throws IOException {
        for (FileShape shape : List.of(
                FileShape.of(2),
                FileShape.of(3),
                new FileShape(2, 100.0, 10),
                new FileShape(2, 50.0, 20),
                new FileShape(2, 100.0, 60))) {
            Path file = LAPS.write(folder, shape);
            try (var lines = Files.lines(file)) {
                assertThat(lines.findFirst().orElseThrow().split(",", -1)).hasSize(shape.columns());
            }
            Recording recording = RecordingReader.read(file, Optional.empty(), Optional.empty())
                    .recording();
            assertThat(recording.sampleRateHz()).as("%s", shape).isEqualTo(shape.rateHz());
            assertThat(StintBuilder.build(recording).goodLaps()).as("%s", shape).hasSize(shape.laps());
        }
    }

    @Test
    void largerFilesGoOnWithTheSameLaps() throws IOException {
        long bytes = 3L * Files.size(LAPS.write(folder, FileShape.of(3)));
        Path file = LAPS.writeBytes(folder, bytes);
        assertThat(Files.size(file)).isBetween(bytes, bytes + 1000);
        Recording recording =
                RecordingReader.read(file, Optional.empty(), Optional.empty()).recording();
        // the out lap, then the same three laps until the file is full
        assertThat(StintBuilder.build(recording).goodLaps().size()).isGreaterThanOrEqualTo(8);
    }
}
