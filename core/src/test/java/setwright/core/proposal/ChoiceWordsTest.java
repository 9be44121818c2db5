package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.core.car.Sheets;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Findings;
import setwright.core.judgement.SpeedRange;

final class ChoiceWordsTest {
    private static final Finding TARGET = Findings.mid(BalanceSign.UNDERSTEER, SpeedRange.ALL);
    private static final Candidate BAR = Promising.of(Sheets.adjustable(), "front_bar", -2, 0.123);

    @Test
    void claimsNoMoreThanWasReplayed() {
        assertThat(ChoiceWords.of(BAR, TARGET, 44, 12, 1, 95.0))
                .startsWith("44 turns of items were tried in rough and the 12 most promising replayed in full;")
                .contains("of those that are allowed this is worth most: 0.12 s a lap", "-0.23 deg", "0.96")
                .doesNotContain("undo");
    }

    @Test
    void aTieIsToldWithWhatDecided() {
        assertThat(ChoiceWords.of(BAR, TARGET, 44, 12, 3, 95.0))
                .contains("3 of them are allowed and worth the same", "least to undo (a click or a turn)")
                .doesNotContain("worth most");
    }

    @Test
    void whatIsLittleIsSaidToBe() {
        Candidate click = Promising.of(Sheets.adjustable(), "front_bar", -2, 0.02, 0.4);
        assertThat(ChoiceWords.of(click, TARGET, 44, 12, 1, 95.0))
                .endsWith(
                        "Do not expect much: a change is usually made for 0.14 deg or more, and laps of two runs with the same"
                                + " setup differ by 0.10 s.");
        assertThat(ChoiceWords.of(BAR, TARGET, 44, 12, 1, 95.0)).doesNotContain("Do not expect");
    }
}
