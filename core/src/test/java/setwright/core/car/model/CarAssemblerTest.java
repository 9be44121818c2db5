package setwright.core.car.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.car.drive.Powertrain;

final class CarAssemblerTest {
    private static final double ROUNDING = 1.0e-9;

    private final CarSheet sheet = Sheets.adjustable();
    private final CarAssembler assembler = new CarAssembler(sheet);
    private final double[] middle = CarPrior.of(sheet).middle();

    /** Which figures of the car an item moves; a name that ends in a dot stands for all below it. */
    @ParameterizedTest
    @CsvSource({
        "front_spring, body.front.",
        "rear_spring, body.rear.",
        "front_bar, body.front.barNPerM",
        "rear_bar, body.rear.barNPerM",
        "front_bump, body.front.damper.bumpSlow body.front.damper.bumpFast",
        "front_rebound, body.front.damper.reboundSlow body.front.damper.reboundFast",
        "rear_bump_low, body.rear.damper.bumpSlow",
        "rear_bump_high, body.rear.damper.bumpFast",
        "rear_rebound_low, body.rear.damper.reboundSlow",
        "rear_rebound_high, body.rear.damper.reboundFast",
        "front_bump_stop_gap, body.front.bumpStopGapM",
        "rear_bump_stop_gap, body.rear.bumpStopGapM",
        "front_ride_height, raisedFrontM body.heightM body.front.rollCentreHeightM",
        "rear_ride_height, raisedRearM body.heightM body.rear.rollCentreHeightM",
        "front_wing, aero.liftFrontM2 aero.dragM2",
        "rear_wing, aero.liftRearM2 aero.dragM2",
        "front_tyre_pressure, front.",
        "rear_tyre_pressure, rear.",
        "front_camber, front.",
        "rear_camber, rear.",
        "front_toe, toeFrontRad",
        "rear_toe, toeRearRad",
        "brake_bias_front, brakes.frontShare",
        "diff_preload, differential.preloadNm",
        "diff_power_lock, differential.powerLock",
        "diff_coast_lock, differential.coastLock",
        "final_drive, powertrain.",
        "gear_3, powertrain."
    })
    void eachItemMovesItsOwnPartAndNothingElse(String item, String expected) {
        Map<String, Double> before = figures(assembler.build(middle));
        Map<String, Double> after = figures(turned(item, 2));
        List<String> moved = before.keySet().stream()
                .filter(name -> Double.compare(before.get(name), after.get(name)) != 0)
                .toList();
        String[] names = expected.split(" ");
        assertThat(moved).allMatch(name -> Arrays.stream(names).anyMatch(own -> belongs(name, own)), expected);
        assertThat(names).allMatch(own -> moved.stream().anyMatch(name -> belongs(name, own)), "among " + moved);
    }

    @Test
    void aBarStepAddsItsRateAndOnlyRollFeelsIt() {
        var before = assembler.build(middle).body().front();
        var after = turned("front_bar", 2).body().front();
        assertThat(after.barNPerM() - before.barNPerM()).isCloseTo(2.0 * 4.0e3, within(1.0e-6));
        assertThat(after.rideRate()).isEqualTo(before.rideRate());
        assertThat(after.rollRate()).isGreaterThan(before.rollRate());
    }

    @Test
    void aSpringActsAtTheWheelWithTheSquareOfTheMotionRatio() {
        assertThat(assembler.build(middle).body().front().springNPerM()).isCloseTo(120.0e3 * 0.9 * 0.9, within(1.0e-6));
        assertThat(assembler.build(middle).body().rear().springNPerM()).isCloseTo(140.0e3 * 0.8 * 0.8, within(1.0e-6));
    }

    @Test
    void moreWingPressesMoreAndDragsMore() {
        CarModel before = assembler.build(middle);
        CarModel after = turned("rear_wing", 2);
        assertThat(after.aero().liftRearM2()).isGreaterThan(before.aero().liftRearM2());
        assertThat(after.aero().dragM2()).isGreaterThan(before.aero().dragM2());
    }

    @Test
    void fuelAndBallastAddTheirMassWhereTheyLie() {
        CarModel before = assembler.build(middle);
        assertThat(turned("fuel", 2).body().massKg()).isCloseTo(before.body().massKg() + 2.0, within(ROUNDING));
        CarModel ballasted = turned("ballast", 2);
        double mass = before.body().massKg();
        assertThat(ballasted.body().massKg()).isCloseTo(mass + 10.0, within(ROUNDING));
        // at the front axle: the moment about it stays
        assertThat(ballasted.body().toFrontM() * (mass + 10.0))
                .isCloseTo(before.body().toFrontM() * mass, within(1.0e-6));
        assertThat(ballasted.body().wheelbaseM()).isCloseTo(before.body().wheelbaseM(), within(ROUNDING));
    }

    private CarModel turned(String name, int steps) {
        SetupItem item = sheet.item(name).orElseThrow();
        return assembler.build(
                sheet.with(List.of(new SetupChange(name, item.value(), item.value() + steps * item.step()))), middle);
    }

    private static boolean belongs(String name, String own) {
        return own.endsWith(".") ? name.startsWith(own) : name.equals(own);
    }

    private static Map<String, Double> figures(CarModel car) {
        Map<String, Double> figures = new TreeMap<>();
        collect("", car, figures);
        return figures;
    }

    private static void collect(String name, Object value, Map<String, Double> figures) {
        if (value instanceof Double number) {
            figures.put(name, number);
        } else if (value instanceof Powertrain train) {
            for (double speed = 2.5; speed < 70.0; speed += 2.5) {
                figures.put(name + ".driveN at " + speed, train.driveN(speed));
            }
        } else if (value instanceof MountedTyre tyre) {
            figures.put(name + ".inclination", tyre.inclination());
            figures.put(name + ".pressure", tyre.pressure());
            for (double load = 500.0; load < 8000.0; load += 500.0) {
                figures.put(name + ".lateralPeak at " + load, tyre.lateralPeak(load));
                figures.put(name + ".alongPeak at " + load, tyre.alongPeak(load));
                figures.put(name + ".peakSlip at " + load, tyre.peakSlip(load));
            }
        } else if (value instanceof Record record) {
            for (RecordComponent part : record.getClass().getRecordComponents()) {
                try {
                    String inner = name.isEmpty() ? part.getName() : name + "." + part.getName();
                    collect(inner, part.getAccessor().invoke(record), figures);
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(e);
                }
            }
        }
    }
}
