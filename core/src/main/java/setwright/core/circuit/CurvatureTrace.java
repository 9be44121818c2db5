package setwright.core.circuit;

/** Curvature over travelled distance, from rate of turn and speed: what repeats from lap to lap without any position. */
final class CurvatureTrace {
    private CurvatureTrace() {}

    /**
     * Returns the mean curvature, 1/m, of equal cells of distance.
     *
     * @param motion   for the distances
     * @param heading  of each sample, rad, from {@link #headings}
     * @param fromM    distance at which the first cell begins
     * @param cellM    length of a cell
     * @param cells    how many
     */
    static double[] cells(Motion motion, double[] heading, double fromM, double cellM, int cells) {
        double[] curvature = new double[cells];
        double before = headingAt(motion, heading, fromM);
        for (int i = 0; i < cells; i++) {
            double after = headingAt(motion, heading, fromM + (i + 1) * cellM);
            curvature[i] = (after - before) / cellM;
            before = after;
        }
        return curvature;
    }

    /** Integrated rate of turn, rad; standing still turns nothing. */
    static double[] headings(Motion motion, double[] turnRate) {
        double[] heading = new double[motion.size()];
        for (int i = 1; i < heading.length; i++) {
            boolean moves = motion.speed(i) >= 1.0;
            heading[i] = heading[i - 1] + (moves ? 0.5 * (turnRate[i - 1] + turnRate[i]) * motion.stepS() : 0.0);
        }
        return heading;
    }

    private static double headingAt(Motion motion, double[] heading, double distanceM) {
        return Gaps.between(heading, motion.sampleAt(distanceM));
    }
}
