package setwright.core.car;

import java.util.Arrays;
import setwright.core.numerics.Robust;

/** Finds the balanced car that shares a recording's behaviour at low lateral acceleration. */
public final class BalancedCarFit {
    private static final double LEAST_INWARD = 1.5;
    /** Below half the limit a tyre is within 8 % of its linear range (see {@link TyreCurve}), and bars and wings hardly act. */
    private static final double HIGHEST_USE = 0.5;

    private static final double HIGHEST_ALONG = 0.35;
    private static final int LEAST_SAMPLES = 50;

    private BalancedCarFit() {}

    /**
     * Fits the slip difference to quiet cornering.
     *
     * @param sheet     of the car
     * @param grip      limit that the laps show
     * @param speed     m/s, one value per judged sample
     * @param inward    lateral acceleration without sign, m/s²
     * @param forward   longitudinal acceleration, m/s²
     * @param tyre      its part that brakes or engine make, m/s²
     * @param yawRise   yaw acceleration into the turn, rad/s²
     * @param balance   measured balance angle, rad
     * @return the fitted car; with too little quiet cornering, one with equal axles
     */
    public static BalancedCar fit(
            CarSheet sheet,
            GripLimit grip,
            double[] speed,
            double[] inward,
            double[] forward,
            double[] tyre,
            double[] yawRise,
            double[] balance) {
        BalancedCar equal = new BalancedCar(sheet, grip, BalancedCar.USUAL_PEAK_SLIP_RAD, 0.0);
        double[] ratio = new double[speed.length];
        int count = 0;
        for (int i = 0; i < speed.length; i++) {
            double limit = grip.at(speed[i]);
            boolean quiet = inward[i] > LEAST_INWARD
                    && inward[i] < HIGHEST_USE * limit
                    && Math.abs(forward[i]) < HIGHEST_ALONG * limit
                    && speed[i] > 12.0
                    && Double.isFinite(yawRise[i])
                    && Double.isFinite(balance[i]);
            if (quiet) {
                BalancedCar.AxleUse use = equal.use(speed[i], inward[i], forward[i], tyre[i], yawRise[i]);
                ratio[count++] = (balance[i] - equal.commonPart(use)) / equal.differencePart(use);
            }
        }
        if (count < LEAST_SAMPLES) {
            return equal;
        }
        double difference = Robust.median(Arrays.copyOf(ratio, count));
        return new BalancedCar(sheet, grip, BalancedCar.USUAL_PEAK_SLIP_RAD, difference);
    }
}
