package setwright.app.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.app.example.ExampleFinding;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;

final class FindingWordsTest {
    private static final Figures FIGURES = Figures.forPage(UnitSystem.METRIC);

    private static Finding at(double seconds, double low, double high) {
        return ExampleFinding.of(
                Phase.MID,
                SpeedRange.LOW,
                BalanceSign.UNDERSTEER,
                List.of(1, 2),
                new Finding.Price(seconds, low, high));
    }

    @Test
    void aLossIsToldWithItsInterval() {
        Finding finding = at(0.31, -0.02, 0.64);
        assertThat(plain(FindingWords.price(finding, FIGURES))).isEqualTo("0.31 s a lap (\u22120.02 to 0.64)");
        assertThat(plain(FindingWords.costs(finding, FIGURES))).isEqualTo("costs 0.31 s a lap");
    }

    /** Nobody reads "costs minus 1.40 s". */
    @Test
    void aGainIsToldAsOne() {
        Finding finding = at(-1.4, -1.6, -1.2);
        assertThat(plain(FindingWords.price(finding, FIGURES)))
                .isEqualTo("1.40 s quicker than in the baseline (1.20 to 1.60)");
        assertThat(plain(FindingWords.costs(finding, FIGURES)))
                .isEqualTo("shows, yet the laps are 1.40 s quicker than in the baseline: try it back to back only");
        assertThat(plain(FindingWords.brief(finding, FIGURES))).isEqualTo("1.40 s quicker");
    }

    @Test
    void aGainThatMayBeChanceIsNone() {
        Finding finding = at(-0.03, -0.28, 0.22);
        assertThat(plain(FindingWords.price(finding, FIGURES))).isEqualTo("no time that shows (\u22120.28 to 0.22)");
        assertThat(plain(FindingWords.costs(finding, FIGURES))).isEqualTo("costs no time that shows");
        assertThat(plain(FindingWords.costsAbout(finding, FIGURES)))
                .isEqualTo("costs no time that shows (\u22120.28 to 0.22)");
    }

    @Test
    void nothingKnownIsSaid() {
        assertThat(FindingWords.price(at(Double.NaN, Double.NaN, Double.NaN), FIGURES))
                .isEqualTo("price unknown");
    }

    private static String plain(String words) {
        return words.replace(Figures.KEPT_TOGETHER, ' ');
    }
}
