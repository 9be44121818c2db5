package setwright.intake.calibrate;

import java.util.Locale;

/**
 * Runs all calibrations in the order in which they build on each other: scale, then time, then biases, then the steering zero.
 *
 * <p>A correction is made only when it is clearly larger than its own uncertainty; each is noted with its reason.
 */
public final class Calibrator {
    /** Corrections smaller than so many standard errors are left alone: odds of one in four hundred by chance. */
    static final double CLEAR = 3.0;

    private Calibrator() {}

    /** Corrects the channels on the bench. */
    public static void run(Bench bench) {
        SpeedScale.apply(bench);
        Alignment.apply(bench);
        YawBias.apply(bench);
        AccelerationOffsets.apply(bench);
        SteeringZero.apply(bench);
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
