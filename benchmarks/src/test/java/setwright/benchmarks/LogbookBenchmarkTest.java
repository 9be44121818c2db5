package setwright.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** That the benchmark measures what it says; it times nothing. */
final class LogbookBenchmarkTest {

    @Test
    void allAreListedAndOneInAHundredIsFound() throws IOException {
        LogbookBenchmark benchmark = new LogbookBenchmark();
        benchmark.prepare();
        try {
            assertThat(benchmark.list()).hasSize(LogbookBenchmark.STINTS);
            assertThat(benchmark.search()).hasSize(LogbookBenchmark.STINTS / 100);
        } finally {
            benchmark.remove();
        }
    }
}
