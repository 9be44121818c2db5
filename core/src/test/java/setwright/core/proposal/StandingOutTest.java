package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Drive;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Findings;
import setwright.core.judgement.SpeedRange;
import setwright.core.standing.SetupStanding;

/** Common practice: toe-in at the rear makes a car push, and so it is what to look at first when it stands out. */
final class StandingOutTest {
    private static final CarSheet USUAL = Sheets.adjustable();
    private static final CarSheet MUCH_TOE = USUAL.with(List.of(
            new SetupChange("rear_toe", USUAL.item("rear_toe").orElseThrow().value(), 0.4)));
    private static final SetupStanding SINCE = SetupStanding.against(
            USUAL, MUCH_TOE, Optional.of(new Drive(4L).laps(3).predictor(MUCH_TOE)));
    private static final Finding PUSHING = Findings.mid(BalanceSign.UNDERSTEER, SpeedRange.ALL);
    private static final Candidate BAR = Promising.of(MUCH_TOE, "front_bar", -2, 0.12);
    private static final Candidate TOE_BACK = Promising.of(MUCH_TOE, "rear_toe", -4, 0.08);
    private static final Candidate TOE_ON = Promising.of(MUCH_TOE, "rear_toe", 2, 0.08);

    @Test
    void whatItWouldDoTurnedBackStandsBesideTheChange() {
        assertThat(StandingOut.words(BAR, List.of(TOE_BACK), PUSHING, SINCE))
                .contains(
                        "Of what was changed since the baseline, rear_toe 0.4 to 0.2 would do -0.23 deg and -0.08 s a lap.");
    }

    @Test
    void aChangeThatTakesItBackIsCalledSo() {
        assertThat(StandingOut.words(TOE_BACK, List.of(BAR), PUSHING, SINCE))
                .contains("It takes back what was changed since the baseline, or a part of it.");
    }

    @Test
    void whatDoesNotMakeTheProblemOrWouldGoFartherIsNotNamed() {
        Finding loose = Findings.mid(BalanceSign.OVERSTEER, SpeedRange.ALL);
        assertThat(StandingOut.words(BAR, List.of(TOE_BACK), loose, SINCE)).isEmpty();
        assertThat(StandingOut.words(BAR, List.of(TOE_ON), PUSHING, SINCE)).isEmpty();
        assertThat(StandingOut.words(BAR, List.of(), PUSHING, SINCE)).isEmpty();
        assertThat(StandingOut.words(BAR, List.of(TOE_BACK), PUSHING, SetupStanding.unknown()))
                .isEmpty();
    }
}
