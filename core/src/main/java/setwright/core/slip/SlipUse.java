package setwright.core.slip;

import setwright.core.car.model.MountedTyre;

/**
 * Slip over that of the peak, along and across together: the slip at which the curve, shared between both directions as the slips
 * are (similarity method, Pacejka, Tire and Vehicle Dynamics, ch. 4, value from memory), gives the longitudinal share.
 */
final class SlipUse {
    private static final double FARTHEST = 3.0;
    private static final int HALVINGS = 16;
    private static final double NOTHING = 0.02;

    private SlipUse() {}

    /**
     * Returns the use.
     *
     * @param across  slip angle over that of the peak, &gt;= 0
     * @param along   longitudinal force over the greatest one, 0..1
     */
    static double of(MountedTyre curve, double across, double along) {
        if (along < NOTHING || across >= FARTHEST) {
            return across;
        }
        double low = across;
        double high = FARTHEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            double share = across / middle;
            boolean enough = curve.share(middle) * Math.sqrt(Math.max(0.0, 1.0 - share * share)) > along;
            low = enough ? low : middle;
            high = enough ? middle : high;
        }
        return low;
    }
}
