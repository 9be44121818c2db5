package setwright.intake.calibrate;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import setwright.core.recording.Quantity;

/**
 * Runs all calibrations in the order in which they build on each other: scale, then time, then biases, then the steering zero.
 *
 * <p>A correction is made only when it is clearly larger than its own uncertainty; each is noted with its reason.
 */
public final class Calibrator {
    /** Corrections smaller than so many standard errors are left alone: odds of one in four hundred by chance. */
    static final double CLEAR = 3.0;

    /** What is done to a bench where nothing is wrong. */
    static final Consumer<Bench> NOTHING = bench -> {};

    private Calibrator() {}

    /** Corrects the channels on the bench. */
    public static void run(Bench bench) {
        SpeedScale.apply(bench);
        Alignment.apply(bench);
        YawBias.apply(bench);
        // none of these looks at a channel that another one corrects
        List<Function<Bench, Consumer<Bench>>> looks = List.of(
                AccelerationOffsets::lateral,
                AccelerationOffsets::longitudinal,
                from -> SteeringZero.of(from, Quantity.STEERING_WHEEL_ANGLE),
                from -> SteeringZero.of(from, Quantity.ROAD_WHEEL_ANGLE));
        looks.parallelStream().map(look -> look.apply(bench)).toList().forEach(correction -> correction.accept(bench));
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
