package setwright.core.judgement;

import setwright.core.standing.TimeCost;

/*
 * Design note. What the driver makes of another car is known far worse than what the car itself loses. Simulated drivers who learn the
 * same car with and without a fault differ by up to several seconds, because they lose heart in some corners; where the rear lets go
 * first that costs more than the car does, where the front does it may even gain. So the interval holds what was left between
 * estimate and truth in nine tenths of the tuning cases (the residuals themselves, without a model of them, as in J. Lei et al., J. Am.
 * Stat. Assoc. 113 (2018) 1094, value from memory), in units of what one per cent of grip is worth on these laps. A size that is worth no
 * change counts in proportion, so that no problem costs nothing.
 */

/** The price of a problem: what the car itself loses, and an interval that holds what the driver makes of it. */
final class TimePrice {
    /** What is left, in units of one per cent of grip: 5 % and 95 % quantile over the tuning cases. */
    private static final double OVERSTEER_LOW = -1.0;

    private static final double OVERSTEER_HIGH = 19.5;
    private static final double UNDERSTEER_LOW = -14.5;
    private static final double UNDERSTEER_HIGH = 7.0;

    private TimePrice() {}

    /**
     * Prices a problem.
     *
     * @param car      what the car itself loses a lap, s
     * @param unitS    what one per cent of grip is worth a lap, s
     * @param sign     of the problem
     * @param sizeRad  of the problem, rad, &gt;= 0
     */
    static Finding.Price of(TimeCost car, double unitS, BalanceSign sign, double sizeRad) {
        double whole = charged(sizeRad);
        double seconds = whole * Math.max(0.0, car.meanS());
        double driver = whole * unitS;
        boolean loose = sign == BalanceSign.OVERSTEER;
        return new Finding.Price(
                seconds,
                seconds + driver * (loose ? OVERSTEER_LOW : UNDERSTEER_LOW),
                seconds + driver * (loose ? OVERSTEER_HIGH : UNDERSTEER_HIGH));
    }

    /** Share of a loss that a problem of some size can be charged with: one that is worth no change counts in proportion. */
    static double charged(double sizeRad) {
        return Math.min(1.0, sizeRad / Yardstick.LEAST_RAD);
    }

    /**
     * Averages two independent estimates by precision.
     *
     * @return the other when one knows nothing
     */
    static TimeCost both(TimeCost one, TimeCost other) {
        double first = 1.0 / (one.deviationS() * one.deviationS());
        double second = 1.0 / (other.deviationS() * other.deviationS());
        if (Double.isInfinite(first)) {
            return one;
        }
        if (Double.isInfinite(second)) {
            return other;
        }
        return new TimeCost(
                (first * one.meanS() + second * other.meanS()) / (first + second), 1.0 / Math.sqrt(first + second));
    }
}
