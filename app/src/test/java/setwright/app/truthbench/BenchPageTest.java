package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class BenchPageTest {
    private static final String PAGE = "# Accuracy\n\n## Reading\n\nBy hand.\n";

    @Test
    void onlyWhatStandsBetweenTheMarksIsReplaced() {
        String first = BenchPage.with(PAGE, BenchPage.ALONE, "old figures\n");
        assertThat(first).startsWith(PAGE).contains("old figures");
        String second = BenchPage.with(first + "\nWritten below.\n", BenchPage.ALONE, "new figures\n");
        assertThat(second)
                .startsWith(PAGE)
                .contains("new figures")
                .doesNotContain("old figures")
                .endsWith("Written below.\n");
    }

    @Test
    void bothPartsLieSideBySide() {
        String both = BenchPage.with(BenchPage.with(PAGE, BenchPage.HELD, "held\n"), BenchPage.ALONE, "alone\n");
        assertThat(BenchPage.with(both, BenchPage.HELD, "held anew\n"))
                .contains("alone\n", "held anew\n")
                .doesNotContain("held\n");
    }

    @Test
    void reportingAndTuningKeepTheirSeedsApart() {
        assertThat(BenchOptions.REPORTING_SEED).isNotEqualTo(BenchOptions.TUNING_SEED);
        assertThat(BenchOptions.read(List.of("--record")).orElseThrow().seed()).isEqualTo(BenchOptions.REPORTING_SEED);
        assertThat(BenchOptions.read(List.of()).orElseThrow().seed()).isEqualTo(BenchOptions.TUNING_SEED);
        assertThat(BenchOptions.read(List.of("--record", "--seed", "1"))).isEmpty();
        assertThat(BenchOptions.read(List.of("--record", "--cases", "10"))).isEmpty();
        assertThat(BenchOptions.read(List.of("--record", "--baseline", "--grip", "2")))
                .isEmpty();
        assertThat(BenchOptions.read(List.of("--grip", "2"))).isEmpty();
        assertThat(BenchOptions.read(List.of("--baseline", "--grip", "2"))
                        .orElseThrow()
                        .otherDay())
                .hasValue(0.02);
        assertThat(BenchOptions.read(List.of("--cases", "few"))).isEmpty();
        assertThat(BenchOptions.read(List.of("--only", "balanced", "--cases", "3"))
                        .orElseThrow()
                        .only())
                .isEqualTo(Optional.of("balanced"));
    }
}
