package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.advice.Advice;
import setwright.core.advice.BrakeAdvice;
import setwright.core.advice.TravelAdvice;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;

/** What wheels and travel showed goes before what the model says. */
final class MeasuredEndsTest {
    private static final CarSheet SHEET = Sheets.adjustable();

    private static Advice locks(boolean front) {
        return new BrakeAdvice(front, 9, 1, 0.3, 0.02, List.of(2, 3), List.of(1), Optional.empty());
    }

    private static Advice ends(boolean front, TravelAdvice.End end) {
        return new TravelAdvice(front, end, 0.05, 0.04, 0.42, List.of(4), List.of(), Optional.empty());
    }

    /** Why an item is not to be turned by some steps. */
    private static List<String> against(Advice found, String item, int steps) {
        CarSheet changed = SHEET.with(List.of(SHEET.item(item)
                .map(now -> new SetupChange(item, now.value(), now.value() + steps * now.step()))
                .orElseThrow()));
        return new MeasuredEnds(List.of(found))
                .against(SHEET, changed).stream().map(Refusal::words).toList();
    }

    @Test
    void moreBrakingWhereTheWheelsLockIsRefusedWithTheLaps() {
        assertThat(against(locks(true), "brake_bias_front", 1))
                .containsExactly("the front wheels lock already, 9 times against 1 at the other axle (laps 2, 3)");
        assertThat(against(locks(true), "brake_bias_front", -1)).isEmpty();
        assertThat(against(locks(false), "brake_bias_front", -1)).hasSize(1);
        assertThat(against(locks(false), "brake_bias_front", 1)).isEmpty();
        assertThat(against(locks(true), "front_spring", 1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "GROUND, spring, -1",
        "GROUND, ride_height, -1",
        "GROUND, wing, 1",
        "GROUND, bump_stop_gap, 1",
        "BUMP_STOP, spring, -1",
        "BUMP_STOP, ride_height, -1",
        "BUMP_STOP, wing, 1",
        "BUMP_STOP, bump_stop_gap, -1",
        "UNKNOWN_STOP, spring, -1",
        "UNKNOWN_STOP, bump_stop_gap, -1",
    })
    void whatLeadsFurtherIntoTheEndOfTravelIsRefusedAtThatAxleAndNotTheWayOut(
            TravelAdvice.End end, String item, int steps) {
        assertThat(against(ends(true, end), "front_" + item, steps))
                .singleElement()
                .asString()
                .startsWith("the front ")
                .endsWith("already, 0.42 s a lap by its measured travel (lap 4)");
        assertThat(against(ends(true, end), "front_" + item, -steps)).isEmpty();
        assertThat(against(ends(true, end), "rear_" + item, steps)).isEmpty();
        assertThat(against(ends(false, end), "rear_" + item, steps)).hasSize(1);
    }

    @Test
    void whatDoesNothingInHeaveStaysFree() {
        assertThat(against(ends(true, TravelAdvice.End.GROUND), "front_bar", -1))
                .isEmpty();
        assertThat(against(ends(true, TravelAdvice.End.GROUND), "front_bump", -1))
                .isEmpty();
    }

    /** By the model alone the car has room; the rails know what was measured. */
    @Test
    void theRailsRefuseIt() {
        CarModel present = new CarAssembler(SHEET).build(CarPrior.of(SHEET).middle());
        CarSheet lower = SHEET.with(List.of(new SetupChange("front_ride_height", 50.0, 49.0)));
        CarModel model = new CarAssembler(SHEET).build(lower, CarPrior.of(SHEET).middle());
        assertThat(new GuardRails(SHEET, present, 20.0, List.of()).against(lower, model))
                .isEmpty();
        assertThat(new GuardRails(SHEET, present, 20.0, List.of(ends(true, TravelAdvice.End.GROUND)))
                        .against(lower, model))
                .singleElement()
                .asString()
                .contains("touches the ground already");
    }
}
