package setwright.intake;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;

/*
 * Design note. One wild reading of a logger must not decide a verdict. Two tests, both far outside what a car does: a
 * reading beyond what is physically possible, and, for the speed, a reading that leaps from its neighbours and back. What
 * fails becomes a gap and is told to the user; nothing is put in its place here.
 */

/** Takes readings out that no car can have made. */
final class Spikes {
    /** Fastest on a road course, with a wide margin (common practice: below 110 m/s). */
    private static final double FASTEST_MPS = 150.0;
    /** Ten g: no car corners, brakes or is driven harder without a crash. */
    private static final double HARDEST_MPS2 = 98.0;
    /** A spin turns a car about once a second. */
    private static final double QUICKEST_RAD_PER_S = 12.0;
    /** Two and a half turns of a steering wheel either way. */
    private static final double MOST_WHEEL_RAD = 16.0;

    private static final double MOST_ROAD_WHEEL_RAD = 1.2;
    /** Between neighbours half a window apart even the hardest braking at 10 Hz changes the speed by less. */
    private static final double LEAP_MPS = 15.0;

    private static final int HALF_WINDOW = 2;

    private Spikes() {}

    /**
     * Returns the samples with impossible ones turned into gaps.
     *
     * @param remarks  gets one sentence when anything was taken out
     */
    static double[] removed(Quantity quantity, double[] samples, List<String> remarks) {
        OptionalDouble bound = bound(quantity);
        if (bound.isEmpty()) {
            return samples;
        }
        double[] kept = samples.clone();
        int count = 0;
        double worst = 0.0;
        for (int i = 0; i < samples.length; i++) {
            boolean beyond = Math.abs(samples[i]) > bound.getAsDouble();
            boolean impossible = beyond || (quantity == Quantity.SPEED && leaps(samples, i));
            if (impossible) {
                kept[i] = Double.NaN;
                worst = Math.abs(samples[i]) > Math.abs(worst) ? samples[i] : worst;
                count++;
            }
        }
        // most of a channel beyond the bound is not a spike but a wrong unit, which is for the channel map to settle
        if (count == 0 || count > samples.length / 10) {
            return samples;
        }
        remarks.add(String.format(
                Locale.ROOT,
                "The %s has %d reading%s that no car can make (such as %.4g %s): left out.",
                quantity.words(),
                count,
                count == 1 ? "" : "s",
                worst,
                quantity.siUnit()));
        return kept;
    }

    private static boolean leaps(double[] samples, int i) {
        if (i < HALF_WINDOW || i + HALF_WINDOW >= samples.length) {
            return false;
        }
        boolean near =
                Math.abs(samples[i] - samples[i - 1]) <= LEAP_MPS && Math.abs(samples[i] - samples[i + 1]) <= LEAP_MPS;
        if (near) {
            return false; // three of five lie together, and with them the median
        }
        double[] window = new double[2 * HALF_WINDOW + 1];
        System.arraycopy(samples, i - HALF_WINDOW, window, 0, window.length);
        return Math.abs(samples[i] - Robust.median(window)) > LEAP_MPS;
    }

    private static OptionalDouble bound(Quantity quantity) {
        return switch (quantity) {
            case SPEED -> OptionalDouble.of(FASTEST_MPS);
            case LATERAL_ACCELERATION, LONGITUDINAL_ACCELERATION -> OptionalDouble.of(HARDEST_MPS2);
            case YAW_RATE -> OptionalDouble.of(QUICKEST_RAD_PER_S);
            case STEERING_WHEEL_ANGLE -> OptionalDouble.of(MOST_WHEEL_RAD);
            case ROAD_WHEEL_ANGLE -> OptionalDouble.of(MOST_ROAD_WHEEL_RAD);
            default -> OptionalDouble.empty();
        };
    }
}
