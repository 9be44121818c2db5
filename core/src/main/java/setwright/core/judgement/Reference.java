package setwright.core.judgement;

import setwright.core.standing.SetupStanding;

/*
 * Design note. A reckoned car is known to half a degree, so that little is to be expected beside what the sheet shows, or any healthy car
 * would be found ill. Of a car that was measured in good order the laps tell a tenth of a degree, and what went wrong since may stand on no
 * sheet: tyres, damage, the day. Half of a typical setup change is then expected of it, in each place as in all.
 */

/** What balance and setup are held against, and how well that is known. */
enum Reference {
    /**
     * A reckoned car, whose setup is usual for its ranges. A healthy one's front lets go a little before its rear (common practice); tyres of
     * unlike stiffness near their limits and compliance of the steering are common to all corners; what is left from phase to phase and class
     * to class was measured on simulated cars.
     */
    RECKONED(0.4, 0.5, 0.4, 0.15, 0.1),
    /** The same, where the sheet gives no ranges to go by. */
    RECKONED_WITHOUT_RANGES(0.4, 0.5, 0.4, 0.5, 0.1),
    /**
     * The same car in good order. What calibration leaves of a recording is a tenth of a typical setup change, and there are two of them; a
     * driver does not drive two stints alike.
     */
    BASELINE(0.0, 0.08, 0.1, 0.28, 0.28);

    /** What may be wrong with a car of which only the laps speak, rad. */
    static final double UNKNOWN_RAD = RECKONED_WITHOUT_RANGES.unlistedRad;

    private final double healthyRad;
    private final double commonRad;
    private final double cellRad;
    private final double unlistedRad;
    private final double unlistedCellRad;

    /**
     * All in degrees.
     *
     * @param healthy       what a car in good order shows beyond it at the limit
     * @param common        doubt common to all corners at the limit
     * @param cell          doubt of each phase and class of corners besides
     * @param unlisted      what no sheet says may be wrong with a car by so much, common to all corners
     * @param unlistedCell  the same of each phase and class of corners besides
     */
    Reference(double healthy, double common, double cell, double unlisted, double unlistedCell) {
        healthyRad = Math.toRadians(healthy);
        commonRad = Math.toRadians(common);
        cellRad = Math.toRadians(cell);
        unlistedRad = Math.toRadians(unlisted);
        unlistedCellRad = Math.toRadians(unlistedCell);
    }

    /** Returns that of a judgement: setup and laps are held against the same. */
    static Reference of(SetupStanding standing) {
        return switch (standing.yard()) {
            case NONE, SCATTERED -> RECKONED_WITHOUT_RANGES;
            case RANGES -> RECKONED;
            case BASELINE -> BASELINE;
        };
    }

    /** Returns what a car in good order shows beyond it at the limit, rad. */
    double healthyRad() {
        return healthyRad;
    }

    /** Returns the doubt of each phase and class, rad. */
    double cellRad() {
        return cellRad;
    }

    /**
     * Returns the covariance of the doubt in two places, rad².
     *
     * @param shapes  product of the shares of the limit that show there; a calibration is off by as much everywhere
     */
    double commonRad2(double shapes) {
        return commonRad * commonRad * (this == BASELINE ? 1.0 : shapes);
    }

    /**
     * Returns the variance of one place besides, rad².
     *
     * @param errorRad  standard error of its excess over the laps; the baseline's laps scatter as much
     */
    double cellRad2(double errorRad) {
        double laps = this == BASELINE && Double.isFinite(errorRad) ? 2.0 * errorRad * errorRad : 0.0;
        return cellRad * cellRad + laps;
    }

    /** Returns the covariance of what no sheet says in two places, rad². */
    double unlistedRad2(double shapes) {
        return unlistedRad * unlistedRad * shapes;
    }

    /** Returns the variance of what no sheet says in one place besides, rad². */
    double unlistedCellRad2() {
        return unlistedCellRad * unlistedCellRad;
    }
}
