package setwright.core.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.car.setup.SetupDifference;
import setwright.core.handling.Phase;
import setwright.core.judgement.Drive;
import setwright.core.replay.Pool;
import setwright.core.replay.Predictor;

final class SetupStandingTest {
    private static final CarSheet MIDDLE = middle();
    private static final Pool MID = Pool.all(Phase.MID);

    private static CarSheet middle() {
        CarSheet sheet = Sheets.adjustable();
        return sheet.with(sheet.setup().stream()
                .map(item -> new SetupChange(item.name(), item.value(), item.middle()))
                .toList());
    }

    private static CarSheet turned(String name, double share) {
        SetupItem item = MIDDLE.item(name).orElseThrow();
        return MIDDLE.with(
                List.of(new SetupChange(name, item.value(), item.value() + share * (item.max() - item.min()))));
    }

    private static SetupStanding standing(CarSheet sheet) {
        return SetupStanding.of(sheet, predictor(sheet));
    }

    private static Predictor predictor(CarSheet sheet) {
        return new Drive(4L).laps(3).predictor(sheet);
    }

    @Test
    void aSetupInTheMiddleOfItsRangesSaysNothing() {
        SetupStanding standing = standing(MIDDLE);
        assertThat(standing.isUnknown()).isFalse();
        assertThat(standing.balanceRad(MID)).isCloseTo(0.0, within(1.0e-9));
        assertThat(Math.sqrt(standing.covarianceRad2(MID, MID))).isLessThan(Math.toRadians(0.02));
        assertThat(standing.unusual(MID)).isEmpty();
    }

    /** Common practice: a stiff front bar makes a car push, a stiff rear bar makes it loose. */
    @Test
    void aBarAtTheEndOfItsRangeIsNamedWithItsSign() {
        SetupStanding front = standing(turned("front_bar", 0.5));
        assertThat(front.unusual(MID)).extracting(item -> item.item().name()).containsExactly("front_bar");
        assertThat(front.balanceRad(MID)).isGreaterThan(Math.toRadians(0.015));
        assertThat(front.unusual(MID).get(0).balanceRad(MID))
                .isCloseTo(front.balanceRad(MID), within(0.05 * front.balanceRad(MID)));
        SetupStanding rear = standing(turned("rear_bar", 0.5));
        assertThat(rear.balanceRad(MID)).isLessThan(-Math.toRadians(0.015));
        assertThat(rear.balanceRad(1, Phase.MID)).isNegative();
    }

    @Test
    void againstABaselineOnlyWhatWasChangedCounts() {
        CarSheet good = turned("front_bar", 0.5);
        Predictor predictor = predictor(good);
        SetupStanding same = SetupStanding.against(good, good, Optional.of(predictor));
        assertThat(same.isUnknown()).isFalse();
        assertThat(same.items()).isEmpty();
        assertThat(same.balanceRad(MID)).isZero();

        SetupItem bar = good.item("rear_bar").orElseThrow();
        CarSheet changed = good.with(
                List.of(new SetupChange("rear_bar", bar.value(), bar.value() + 0.25 * (bar.max() - bar.min()))));
        SetupStanding standing = SetupStanding.against(good, changed, Optional.of(predictor(changed)));
        assertThat(standing.items()).extracting(item -> item.item().name()).containsExactly("rear_bar");
        assertThat(standing.items().get(0).usual()).isEqualTo(bar.value());
        assertThat(standing.items().get(0).unusual()).isEqualTo(1.0);
        assertThat(standing.balanceRad(MID)).isNegative();
    }

    @Test
    void whatWasChangedIsListedWhetherAReplayTellsWhatItDoesOrNot() {
        CarSheet good = Sheets.on("red", MIDDLE);
        CarSheet changed = Sheets.on("blue", turned("rear_bar", 0.25));
        SetupStanding told = SetupStanding.against(good, changed, Optional.of(predictor(changed)));
        assertThat(told.changed())
                .extracting(SetupDifference::item)
                .containsExactlyInAnyOrder("front_tyre_compound", "rear_bar");
        assertThat(told.untold()).extracting(SetupDifference::item).containsExactly("front_tyre_compound");

        SetupStanding untold = SetupStanding.against(good, changed, Optional.empty());
        assertThat(untold.items()).isEmpty();
        assertThat(untold.untold()).hasSize(2).isEqualTo(untold.changed());
        assertThat(untold.balanceRad(MID)).isZero();
    }

    @Test
    void gearsDoNotMoveTheBalance() {
        SetupStanding longer = SetupStanding.against(MIDDLE, turned("final_drive", 0.2), Optional.empty());
        assertThat(longer.changed()).hasSize(1);
        assertThat(longer.untold()).isEmpty();
    }

    @Test
    void theCovarianceIsThatOfAnyTwoQuantities() {
        SetupStanding standing = standing(turned("front_bar", 0.22));
        Pool exit = Pool.all(Phase.EXIT);
        double both = standing.covarianceRad2(MID, exit);
        assertThat(both).isEqualTo(standing.covarianceRad2(exit, MID));
        assertThat(both * both)
                .isLessThanOrEqualTo(standing.covarianceRad2(MID, MID) * standing.covarianceRad2(exit, exit));
    }

    @Test
    void rangesThatTheUserDidNotGiveSayNothing() {
        assertThat(SetupStanding.canBeKnown(Sheets.adjustable())).isTrue();
        assertThat(SetupStanding.canBeKnown(Sheets.with(List.of()))).isFalse();
        assertThat(SetupStanding.unknown().balanceRad(MID)).isZero();
    }
}
