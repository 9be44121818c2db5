package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.sums.Gravity;

/** Each rail by a change of a small invented car that meets it, and by one that comes back. */
final class GuardRailsTest {
    private static final double FAST_MPS = 60.0;
    private static final CarSheet SHEET = Sheets.adjustable();

    private static CarSheet turned(CarSheet sheet, String item, double to) {
        return sheet.with(
                List.of(new SetupChange(item, sheet.item(item).orElseThrow().value(), to)));
    }

    private static CarModel model(CarSheet sheet) {
        return new CarAssembler(sheet).build(CarPrior.of(sheet).middle());
    }

    /** Why an item of a car is not to be turned. */
    private static List<String> against(CarSheet sheet, double fastestMps, String item, double to) {
        CarSheet changed = turned(sheet, item, to);
        CarModel model =
                new CarAssembler(sheet).build(changed, CarPrior.of(sheet).middle());
        return new GuardRails(sheet, model(sheet), fastestMps, List.of())
                .against(changed, model).stream().map(Refusal::words).toList();
    }

    private static double min(String item) {
        return SHEET.item(item).orElseThrow().min();
    }

    private static double max(String item) {
        return SHEET.item(item).orElseThrow().max();
    }

    @Test
    void theCarMayStayAsItIs() {
        assertThat(new GuardRails(SHEET, model(SHEET), FAST_MPS, List.of()).against(SHEET, model(SHEET)))
                .isEmpty();
    }

    @Test
    void aBrakeThatLocksTheRearFirstIsRefused() {
        assertThat(against(SHEET, FAST_MPS, "brake_bias_front", min("brake_bias_front")))
                .singleElement()
                .asString()
                .contains("rear axle would lock");
    }

    @Test
    void aRideFrequencyBelowAllCarsIsRefusedAndTheWayBackIsFree() {
        CarSheet soft = Sheets.with(List.of(new SetupItem("front_spring", 60.0, "N/mm", 1.0, 200.0, 1.0)));
        assertThat(against(soft, 20.0, "front_spring", 5.0))
                .anyMatch(reason -> reason.startsWith("the front ride frequency would be 0."));
        CarSheet softer = Sheets.with(List.of(new SetupItem("front_spring", 5.0, "N/mm", 1.0, 200.0, 1.0)));
        assertThat(against(softer, 20.0, "front_spring", 4.0)).anyMatch(reason -> reason.contains("ride frequency"));
        assertThat(against(softer, 20.0, "front_spring", 6.0)).noneMatch(reason -> reason.contains("ride frequency"));
    }

    /** Dampers stay as they are when springs are changed: the band is left all the same. */
    @Test
    void aSpringThatItsDampersAreTooMuchForIsRefused() {
        CarSheet nearlyOut = turned(SHEET, "front_rebound", 29.0);
        assertThat(reboundOverCritical(nearlyOut)).isBetween(1.4, 1.5);
        assertThat(against(nearlyOut, FAST_MPS, "front_spring", min("front_spring")))
                .anyMatch(reason ->
                        reason.matches("the front damping in rebound would be 1\\.[5-9].* outside 0.2 to 1.5"));
        assertThat(against(nearlyOut, FAST_MPS, "front_spring", max("front_spring")))
                .noneMatch(reason -> reason.contains("damping"));
    }

    @Test
    void aCarOutsideTheBandMayComeBackAndChangeWhatHasNoPartInIt() {
        CarSheet outside = turned(SHEET, "front_rebound", 30.0);
        assertThat(reboundOverCritical(outside)).isGreaterThan(1.5);
        assertThat(against(outside, FAST_MPS, "front_spring", 115.0)).anyMatch(reason -> reason.contains("damping"));
        assertThat(against(outside, FAST_MPS, "front_spring", 125.0)).isEmpty();
        assertThat(against(outside, FAST_MPS, "front_rebound", 29.0)).isEmpty();
        assertThat(against(outside, FAST_MPS, "front_bar", 3.0)).isEmpty();
        assertThat(against(outside, FAST_MPS, "fuel", 29.0))
                .as("a kilogram less is no step that shows")
                .isEmpty();
    }

    @Test
    void stopsThatAreMetUnderDownforceAreRefusedAndTheWayBackIsFree() {
        assertThat(against(SHEET, FAST_MPS, "front_bump_stop_gap", min("front_bump_stop_gap")))
                .singleElement()
                .asString()
                .matches("at 216 km/h the front would be [0-9]+ mm into its bump stops \\(now .*");
        assertThat(against(SHEET, FAST_MPS, "front_bump_stop_gap", max("front_bump_stop_gap")))
                .isEmpty();
        assertThat(against(SHEET, 20.0, "front_bump_stop_gap", min("front_bump_stop_gap")))
                .as("slow cars are not pressed onto them")
                .isEmpty();
    }

    @Test
    void aCarPressedOntoTheGroundIsNotLowered() {
        double faster = 130.0;
        assertThat(against(SHEET, faster, "front_ride_height", min("front_ride_height")))
                .anyMatch(reason -> reason.matches(
                        "at 468 km/h the front would touch the ground: its springs give way by [0-9]+ mm more"
                                + " than its height \\(now .*"));
        assertThat(against(SHEET, faster, "front_ride_height", max("front_ride_height")))
                .noneMatch(reason -> reason.contains("ground"));
        assertThat(against(SHEET, 20.0, "front_ride_height", min("front_ride_height")))
                .isEmpty();
    }

    /** A second way to the ratio: from the wheel's mass and its spring with the tyre. */
    private static double reboundOverCritical(CarSheet sheet) {
        CarModel model = model(sheet);
        double mass = model.body().staticFrontN() / Gravity.STANDARD_MPS2
                - 0.5 * model.body().front().unsprungMassKg();
        return model.body().front().damper().reboundSlow()
                / (2.0 * Math.sqrt(mass * model.body().front().rideRate()));
    }
}
