package setwright.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.core.simulation.sweep.SetupSweep;

/** That the benchmark measures what it says; it times nothing. */
final class LapBenchmarkTest {

    @Test
    void sixtyDifferentSetups() {
        LapBenchmark benchmark = new LapBenchmark();
        benchmark.prepare();
        SetupSweep sweep = benchmark.sweep();
        assertThat(sweep.laps()).hasSize(LapBenchmark.SETUPS).doesNotHaveDuplicates();
        assertThat(sweep.present().timeS()).isBetween(LapBenchmark.LENGTH_M / 80.0, LapBenchmark.LENGTH_M / 20.0);
    }
}
