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
    public static final double BALANCE_RAD = Math.toRadians(0.56);

    /** A balance that is off by less, or an effect that is smaller, is not worth a change: a quarter of what a typical one does, rad. */
    public static final double LEAST_RAD = 0.25 * BALANCE_RAD;

    /** Lap times of runs with the same setup differ by as much (our choice: no publication was found; common practice speaks of a tenth). */
    public static final double RUN_TIME_SHARE = 0.001;

    /**
     * Lap times of two days differ by as much with the same setup, whatever the driver: rubber, temperature, wind (our choice: no publication
     * was found; common practice speaks of some tenths of a second to a second on a lap of a minute and a half).
     */
    static final double DAY_TIME_SHARE = 0.005;

    /** An axle at its limit works at about this share of its peak slip when the driver uses 95 % of its force. */
    private static final double LIMIT_SLIP_SHARE = TyreCurve.slipShare(0.95);

    private Yardstick() {}

    /**
     * Returns by which share a car could corner harder if both axles reached their limit together: one is at its limit, the other
     * slips less by the angle and so leaves force unused, and half of that would be the first one's.
     *
     * @param excessRad  size of the imbalance, rad, &gt;= 0
     */
    static double gripShare(double excessRad) {
        double lazy = Math.max(0.0, LIMIT_SLIP_SHARE - excessRad / BalancedCar.USUAL_PEAK_SLIP_RAD);
        double unused = 1.0 - TyreCurve.forceShare(lazy) / TyreCurve.forceShare(LIMIT_SLIP_SHARE);
        return 0.5 * unused;
    }

    /** Returns the share of a phase's time that a balance angle off by this much costs: cornering speed goes with the root of grip. */
    public static double timeShare(double excessRad) {
        return 0.5 * gripShare(excessRad);
    }
}
