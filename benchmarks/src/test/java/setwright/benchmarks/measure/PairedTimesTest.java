package setwright.benchmarks.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ratios, and what a process took. */
final class PairedTimesTest {
    @TempDir
    private Path folder;

    private static Spent of(double wallS, double processorS) {
        return new Spent(wallS, processorS, Double.NaN);
    }

    @Test
    void ratiosAreThoseOfEachRound() {
        PairedTimes times = new PairedTimes(
                List.of(of(2.0, 1.0), of(40.0, 1.0), of(3.0, 1.0)), List.of(of(1.0, 2.0), of(10.0, 2.0), of(2.0, 4.0)));
        assertThat(times.ratio(Spent::wallS)).isEqualTo(new Spread(2.0, 1.5, 4.0));
        assertThat(times.ratio(Spent::processorS)).isEqualTo(new Spread(0.5, 0.25, 0.5));
        assertThat(PairedTimes.of(times.ours(), Spent::wallS)).isEqualTo(new Spread(3.0, 2.0, 40.0));
        assertThat(PairedTimes.of(times.ours(), Spent::peakBytes).known()).isFalse();
        assertThatThrownBy(() -> new PairedTimes(times.ours(), List.of(of(1.0, 1.0))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theTableIsMarkdown() {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        RatioTable table = new RatioTable(new PrintStream(text, true, StandardCharsets.UTF_8));
        table.row("a", new PairedTimes(List.of(of(2.0, 0.0123)), List.of(of(4.0, 0.000_5))), "b");
        table.alone("c", List.of(of(0.1, 0.1)), "nothing");
        assertThat(text.toString(StandardCharsets.UTF_8).lines().skip(3).toList())
                .containsExactly(
                        "| a | 2.00 s | 4.00 s | **0.50** (0.50 to 0.50) | 12.3 ms / 500 µs | **24.6** (24.6 to 24.6) | b |",
                        "| c | 100 ms | | 100 ms to 100 ms | 100 ms | | nothing |");
    }

    @Test
    void aProcessThatFailsSaysWhy() throws IOException, InterruptedException {
        Spent spent = FreshProcess.run(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version"),
                folder,
                Map.of());
        assertThat(spent.wallS()).isPositive();
        assertThatThrownBy(() -> FreshProcess.run(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java")
                                        .toString(),
                                "NoSuchClass"),
                        folder,
                        Map.of()))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("NoSuchClass");
        assertThat(folder).isEmptyDirectory();
    }
}
