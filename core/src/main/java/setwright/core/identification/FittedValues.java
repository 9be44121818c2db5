package setwright.core.identification;

import static setwright.core.car.model.Parameter.*;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import setwright.core.car.CarSheet;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.LinearUndersteer;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.model.Parameter;
import setwright.core.car.sums.Gravity;
import setwright.core.numerics.Robust;

/** Says in the units people use what is believed of a car before and after its laps. */
final class FittedValues {
    private static final int DRAWS = 400;
    private static final long SEED = 7L;
    /** The laps told a quantity when they took half of its variance or more. */
    private static final double TOLD = 0.7;

    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    private final List<FittedValue> values = new ArrayList<>();
    private final List<CarModel> before;
    private final List<CarModel> after;
    private final double[][] drawsBefore;
    private final double[][] drawsAfter;

    private FittedValues(CarSheet sheet, CarBelief prior, CarBelief posterior) {
        CarAssembler assembler = new CarAssembler(sheet);
        drawsBefore = prior.draw(DRAWS, SEED);
        drawsAfter = posterior.draw(DRAWS, SEED);
        before = Arrays.stream(drawsBefore).map(assembler::build).toList();
        after = Arrays.stream(drawsAfter).map(assembler::build).toList();
    }

    static List<FittedValue> of(CarSheet sheet, CarBelief prior, CarBelief posterior, boolean wings) {
        FittedValues out = new FittedValues(sheet, prior, posterior);
        out.add(
                "engine_power",
                "engine power",
                "kW",
                FittedValues::powerKw,
                "acceleration at full throttle on straights",
                "needs straights at full throttle");
        out.add(
                "drag_area",
                "drag area",
                "m²",
                car -> car.aero().dragM2(),
                "the fall of the acceleration with speed at full throttle",
                "needs full throttle over a wide range of speeds, or coasting in neutral on a straight");
        if (wings) {
            out.add(
                    "lift_front",
                    "downforce area, front",
                    "m²",
                    car -> car.aero().liftFrontM2(),
                    "grip and balance against speed",
                    "needs fast and slow corners at the limit");
            out.add(
                    "lift_rear",
                    "downforce area, rear",
                    "m²",
                    car -> car.aero().liftRearM2(),
                    "grip and balance against speed",
                    "needs fast and slow corners at the limit");
            out.add(
                    "lift_front_share",
                    "front share of the downforce",
                    "%",
                    car -> 100.0
                            * car.aero().liftFrontM2()
                            / (car.aero().liftFrontM2() + car.aero().liftRearM2()),
                    "the change of balance from slow to fast corners",
                    "needs slow and fast corners at the limit");
        }
        out.add(
                "grip",
                "lateral friction",
                "",
                car -> car.front().tyre().lateralFriction(),
                "the accelerations in corners that are not flat out",
                "needs corners at the limit");
        out.addParameter(
                GRIP_SPLIT,
                "grip_front_over_rear",
                "friction, front over rear",
                "%",
                value -> 100.0 * (Math.exp(value) - 1.0),
                "the rise of the balance angle toward the limit",
                "needs corners at the limit in every phase");
        out.addParameter(
                GRIP_ALONG,
                "grip_along_over_sideways",
                "friction, along over sideways",
                "",
                Math::exp,
                "braking beside cornering",
                "needs braking and cornering at the limit");
        out.addParameter(
                LOAD_SENSITIVITY,
                "load_sensitivity",
                "friction lost at double load",
                "%",
                value -> 100.0 * value,
                "balance against load transfer and downforce",
                "needs laps at two bar or spring settings");
        out.add(
                "peak_slip_front",
                "slip angle at the peak, front",
                "deg",
                car -> Math.toDegrees(car.front().tyre().peakSlipAngle()),
                "balance angles near the limit",
                "needs the car's sideslip (optical sensor or two antennas)");
        out.add(
                "peak_slip_rear",
                "slip angle at the peak, rear",
                "deg",
                car -> Math.toDegrees(car.rear().tyre().peakSlipAngle()),
                "balance angles near the limit",
                "needs the car's sideslip (optical sensor or two antennas)");
        out.addParameter(
                PEAK_SLIP_SPLIT,
                "peak_slip_front_over_rear",
                "slip at the peak, front over rear",
                "%",
                value -> 100.0 * (Math.exp(value) - 1.0),
                "the balance angle at low and middle lateral acceleration",
                "needs gentle cornering");
        out.add(
                "brake_share",
                "front share of the brakes",
                "%",
                car -> 100.0 * car.brakes().frontShare(),
                "the slip of the wheels under braking",
                "needs wheel speeds of both axles and clear braking in a straight line");
        out.addParameter(
                ROLL_SPLIT,
                "roll_split",
                "front roll stiffness, correction",
                "%",
                value -> 100.0 * (Math.exp(value) - 1.0),
                "balance against lateral acceleration",
                "needs laps at two bar settings");
        out.addParameter(
                LOCKING,
                "locking",
                "differential, correction",
                "%",
                value -> 100.0 * (Math.exp(value) - 1.0),
                "balance on the overrun and on the throttle",
                "needs laps at two settings of the differential");
        out.addParameter(
                DAMPING,
                "damping",
                "damping, correction",
                "%",
                value -> 100.0 * (Math.exp(value) - 1.0),
                "balance while the car rolls and pitches",
                "needs damper figures on the sheet");
        out.bestCambersAndPressures(sheet);
        return out.values;
    }

    private void bestCambersAndPressures(CarSheet sheet) {
        for (boolean front : new boolean[] {true, false}) {
            String end = front ? "front" : "rear";
            if (sheet.item(end + "_camber").isPresent()) {
                add(
                        "camber_best_" + end,
                        "best camber, " + end,
                        "deg",
                        car -> Math.toDegrees(tyre(car, front).tyre().camber().bestInclination()),
                        "grip",
                        "needs laps at two cambers, or tyre temperatures across the tread");
            }
            sheet.item(end + "_tyre_pressure")
                    .ifPresent(item -> add(
                            "pressure_best_" + end,
                            "best pressure, " + end,
                            item.unit(),
                            car -> item.value() / tyre(car, front).pressure(),
                            "grip",
                            "needs laps at two pressures, or tyre temperatures across the tread"));
        }
    }

    private static MountedTyre tyre(CarModel car, boolean front) {
        return front ? car.front() : car.rear();
    }

    private static double powerKw(CarModel car) {
        double most = 0.0;
        for (double speed = 10.0; speed < 120.0; speed += 1.0) {
            most = Math.max(most, car.powertrain().driveN(speed) * speed);
        }
        return 1.0e-3 * most / car.powertrain().efficiency();
    }

    private void add(String key, String words, String unit, ToDoubleFunction<CarModel> of, String told, String untold) {
        put(
                key,
                words,
                unit,
                before.stream().mapToDouble(of).toArray(),
                after.stream().mapToDouble(of).toArray(),
                told,
                untold);
    }

    private void addParameter(
            Parameter parameter,
            String key,
            String words,
            String unit,
            ToDoubleFunction<Double> of,
            String told,
            String untold) {
        put(key, words, unit, values(drawsBefore, parameter, of), values(drawsAfter, parameter, of), told, untold);
    }

    private static double[] values(double[][] draws, Parameter parameter, ToDoubleFunction<Double> of) {
        return Arrays.stream(draws)
                .mapToDouble(draw -> of.applyAsDouble(draw[parameter.index()]))
                .toArray();
    }

    private void put(
            String key, String words, String unit, double[] assumed, double[] found, String told, String untold) {
        double widthBefore = Robust.quantile(assumed, HIGH) - Robust.quantile(assumed, LOW);
        double widthAfter = Robust.quantile(found, HIGH) - Robust.quantile(found, LOW);
        boolean isTold = widthAfter < TOLD * widthBefore;
        values.add(new FittedValue(
                key,
                words,
                unit,
                Robust.median(assumed),
                Robust.quantile(assumed, LOW),
                Robust.quantile(assumed, HIGH),
                Robust.median(found),
                Robust.quantile(found, LOW),
                Robust.quantile(found, HIGH),
                isTold,
                isTold ? "told by " + told : untold));
    }

    /** Returns what is assumed of the understeer gradient, rad/(m/s²), low, middle and high. */
    static double[] assumedUndersteer(CarSheet sheet, CarBelief prior) {
        CarAssembler assembler = new CarAssembler(sheet);
        double[] gradients = Arrays.stream(prior.draw(DRAWS, SEED))
                .mapToDouble(draw -> LinearUndersteer.of(assembler.build(draw)))
                .toArray();
        return new double[] {Robust.quantile(gradients, LOW), Robust.median(gradients), Robust.quantile(gradients, HIGH)
        };
    }

    /** Standard acceleration of free fall, for figures per g. */
    static double perG(double perMps2) {
        return Math.toDegrees(perMps2) * Gravity.STANDARD_MPS2;
    }
}
