package setwright.core.judgement;

import setwright.core.car.BalancedCar;
import setwright.core.car.TyreCurve;

/**
 * What one typical setup change does, to hold scatter against.
 *
 * <p>A tenth of the roll stiffness moved from one axle to the other (a bar from soft to hard, about) shifts the balance
 * angle by 0.56 degrees at nine tenths of the limit: four-wheel steady state with the tyre set of Bakker, Nyborg and
 * Pacejka (SAE 870421, 1987).
 */
public final class Yardstick {
    /** Change of the balance angle, rad. */
    static final double BALANCE_RAD = Math.toRadians(0.56);

    /** An axle at its limit works at about this share of its peak slip when the driver uses 95 % of its force. */
    private static final double LIMIT_SLIP_SHARE = TyreCurve.slipShare(0.95);

    private Yardstick() {}

    /**
     * Returns the share of a phase's time that a balance angle off by this much costs: one axle is at its limit, the
     * other slips less by the angle and so leaves force unused; the two carry about half the car each, and cornering
     * speed goes with the root of the lateral force.
     *
     * @param excessRad  size of the imbalance, rad, &gt;= 0
     */
    public static double timeShare(double excessRad) {
        double lazy = Math.max(0.0, LIMIT_SLIP_SHARE - excessRad / BalancedCar.USUAL_PEAK_SLIP_RAD);
        double unused = 1.0 - TyreCurve.forceShare(lazy) / TyreCurve.forceShare(LIMIT_SLIP_SHARE);
        return 0.5 * 0.5 * unused;
    }
}
