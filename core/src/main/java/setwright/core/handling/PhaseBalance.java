package setwright.core.handling;

/**
 * Balance of the car in one phase of one pass.
 *
 * @param phase          which phase
 * @param fromM          where it began, m along the reference line, unwrapped
 * @param toM            where it ended, m
 * @param timeS          time spent in it, s
 * @param balanceRad     slip angle front minus rear, weighted with lateral acceleration, rad; positive: understeer; NaN
 *                       when the car hardly corners in this phase
 * @param referenceRad   what it is held against, rad: what a balanced car of the same dimensions shows in the same motion, or
 *                       another car; NaN likewise
 * @param referenceDoubtRad  how far that may be off because the other car was driven otherwise, rad, &gt;= 0
 * @param frontUse       front axle slip as a share of its peak, 0..; NaN when it cannot be told
 * @param rearUse        rear axle slip as a share of its peak, 0..; NaN when it cannot be told
 * @param lateralMps2    mean lateral acceleration toward the inside of the corner, m/s²
 * @param speedMps       mean speed, m/s
 */
public record PhaseBalance(
        Phase phase,
        double fromM,
        double toM,
        double timeS,
        double balanceRad,
        double referenceRad,
        double referenceDoubtRad,
        double frontUse,
        double rearUse,
        double lateralMps2,
        double speedMps) {

    /** Returns how much more the front slips than it should, rad; positive: understeer. */
    public double excessRad() {
        return balanceRad - referenceRad;
    }

    /**
     * Returns the same balance against another reference.
     *
     * @param otherRad  what another car showed, rad
     * @param doubtRad  how far that may be off because it was driven otherwise, rad
     */
    public PhaseBalance against(double otherRad, double doubtRad) {
        return new PhaseBalance(
                phase, fromM, toM, timeS, balanceRad, otherRad, doubtRad, frontUse, rearUse, lateralMps2, speedMps);
    }
}
