package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Drive;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Findings;
import setwright.core.judgement.SpeedRange;
import setwright.core.standing.SetupStanding;

/** Common practice: the brake balance works on entry, while the brakes are on, and nowhere else. */
final class BrakesOffTest {
    private static final CarSheet SHEET = Sheets.adjustable();
    private static final Turn REARWARD =
            Promising.of(SHEET, "brake_bias_front", -4, 0.1).turn();
    private static final Turn WING = Promising.of(SHEET, "front_wing", 1, 0.1).turn();

    private static Finding pushing(Phase phase) {
        return Findings.at(phase, BalanceSign.UNDERSTEER, SpeedRange.ALL);
    }

    @Test
    void brakesAreNotMovedForWhatHappensWithoutThem() {
        assertThat(BrakesOff.refusal(REARWARD, pushing(Phase.MID), SetupStanding.unknown()))
                .hasValueSatisfying(refusal -> {
                    assertThat(refusal.kind()).isEqualTo(Refusal.Kind.BRAKE_BALANCE);
                    assertThat(refusal.words()).contains("where the brakes are off");
                });
        assertThat(BrakesOff.refusal(REARWARD, pushing(Phase.EXIT), SetupStanding.unknown()))
                .isPresent();
        assertThat(BrakesOff.refusal(REARWARD, pushing(Phase.ENTRY), SetupStanding.unknown()))
                .isEmpty();
        assertThat(BrakesOff.refusal(REARWARD, pushing(Phase.BRAKING), SetupStanding.unknown()))
                .isEmpty();
        assertThat(BrakesOff.refusal(WING, pushing(Phase.MID), SetupStanding.unknown()))
                .isEmpty();
    }

    @Test
    void whatWasMovedSinceTheBaselineMayGoBack() {
        double usual = SHEET.item("brake_bias_front").orElseThrow().value();
        CarSheet moved = SHEET.with(List.of(new SetupChange("brake_bias_front", usual, usual + 6.0)));
        SetupStanding since = SetupStanding.against(
                SHEET, moved, Optional.of(new Drive(4L).laps(3).predictor(moved)));
        Turn back = Promising.of(moved, "brake_bias_front", -4, 0.1).turn();
        Turn on = Promising.of(moved, "brake_bias_front", 4, 0.1).turn();
        assertThat(BrakesOff.refusal(back, pushing(Phase.MID), since)).isEmpty();
        assertThat(BrakesOff.refusal(on, pushing(Phase.MID), since)).isPresent();
    }
}
