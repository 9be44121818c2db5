package setwright.benchmarks.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.benchmarks.laps.FileShape;
import setwright.benchmarks.laps.WrittenLaps;
import setwright.benchmarks.measure.PairedTimes;
import setwright.core.recording.Quantity;
import setwright.intake.columns.RecordingColumns;

/** That both sides of each pair do something; it asserts no time. */
final class PairTest {
    @TempDir
    private Path folder;

    @Test
    void eachPairTakesTurns() throws Exception {
        Path file = WrittenLaps.drive(2).write(folder, FileShape.of(2));
        for (Pair.Kind kind : Pair.Kind.values()) {
            PairedTimes times = PairProcess.run(kind.prepare(file, folder, 1), 0, 1);
            assertThat(times.ours()).as("%s", kind).hasSize(1);
            assertThat(times.reference()).as("%s", kind).hasSize(1);
        }
        assertThat(RecordingColumns.read(folder.resolve("kept.parquet")).has(Quantity.YAW_RATE))
                .isTrue();
        try (Duck duck = new Duck(1)) {
            assertThat(duck.scan(folder.resolve("copied.parquet"))).isNotZero().isFinite();
        }
    }
}
