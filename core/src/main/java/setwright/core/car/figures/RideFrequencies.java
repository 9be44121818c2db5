package setwright.core.car.figures;

import setwright.core.car.Downforce;

/**
 * Ride frequencies of cars that work; common practice with a margin. Outside, a unit or a motion ratio is more likely wrong than the
 * car, and nobody goes there on purpose.
 */
public final class RideFrequencies {
    /** Hz. */
    public static final double LOWEST_HZ = 1.0;

    private RideFrequencies() {}

    /** Returns the highest, Hz: the more downforce, the less a car may move. */
    public static double highestHz(Downforce downforce) {
        return switch (downforce) {
            case NONE -> 4.0;
            case MODERATE -> 5.0;
            case STRONG -> 8.0;
        };
    }
}
