package setwright.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.benchmarks.laps.TenLaps;
import setwright.core.circuit.Lap;

/** That the benchmark measures what it says; it times nothing. */
final class StintBenchmarkTest {

    @Test
    void measuresTenLapsAndFortyDifferentChanges() {
        TenLaps laps = TenLaps.read();
        assertThat(laps.stint().goodLaps()).hasSize(TenLaps.LAPS);
        assertThat(laps.stint().goodLaps().stream().map(Lap::number)).doesNotHaveDuplicates();
        assertThat(laps.candidates(40))
                .hasSize(40)
                .doesNotHaveDuplicates()
                .allSatisfy(candidate -> assertThat(candidate.get(0).to())
                        .isNotEqualTo(candidate.get(0).from()));
    }

    @Test
    void eachPartAnswers() {
        StintBenchmark benchmark = new StintBenchmark();
        benchmark.candidates = 1;
        benchmark.prepare();
        assertThat(benchmark.diagnose().passes()).isNotEmpty();
        assertThat(benchmark.predict())
                .singleElement()
                .satisfies(prediction -> assertThat(prediction.phases()).isNotEmpty());
    }
}
