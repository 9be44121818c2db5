package setwright.core.judgement;

import java.util.List;
import java.util.Random;

/** Levels of balance and what they may be, all together: normal, with the doubt that they have in common. */
final class JointLevels {
    /** Share of the doubt that slow and fast corners have in common where each place is measured: the reference is that of both (our choice). */
    private static final double COMMON = 0.5;
    /** What is drawn for each phase: what is common, what is of slow corners and what is of fast ones. */
    private static final int OF_A_PHASE = 3;

    private final List<BelievedLevel> levels;
    private final double[][] root;

    private JointLevels(List<BelievedLevel> levels, double[][] root) {
        this.levels = List.copyOf(levels);
        this.root = root;
    }

    /**
     * Returns levels whose covariance is known.
     *
     * @param root  one row for each level: a matrix that gives the covariance when multiplied by its transpose, rad
     */
    static JointLevels of(List<BelievedLevel> levels, double[][] root) {
        return new JointLevels(levels, root);
    }

    /** Returns levels that were measured each by itself: those of one phase go together in part, and all corners go with the ends. */
    static JointLevels measured(List<BelievedLevel> levels) {
        double common = Math.sqrt(COMMON);
        double own = Math.sqrt(1.0 - COMMON);
        double both = Math.sqrt(2.0 + 2.0 * COMMON);
        double[][] root = new double[levels.size()][OF_A_PHASE * BalanceBelief.PHASES.size()];
        for (int i = 0; i < root.length; i++) {
            BelievedLevel level = levels.get(i);
            int at = OF_A_PHASE * BalanceBelief.PHASES.indexOf(level.phase());
            boolean slow = level.speed() != SpeedRange.HIGH;
            boolean fast = level.speed() != SpeedRange.LOW;
            double size = level.deviationRad() / (slow && fast ? both : 1.0);
            root[i][at] = size * common * (slow && fast ? 2.0 : 1.0);
            root[i][at + 1] = slow ? size * own : 0.0;
            root[i][at + 2] = fast ? size * own : 0.0;
        }
        return new JointLevels(levels, root);
    }

    /** Returns the levels. */
    List<BelievedLevel> levels() {
        return levels;
    }

    /** Returns what they may be, rad, in their order. */
    double[] draw(Random random) {
        double[] off = new double[root.length == 0 ? 0 : root[0].length];
        for (int k = 0; k < off.length; k++) {
            off[k] = random.nextGaussian();
        }
        double[] rad = new double[root.length];
        for (int i = 0; i < rad.length; i++) {
            rad[i] = levels.get(i).meanRad();
            for (int k = 0; k < off.length; k++) {
                rad[i] += root[i][k] * off[k];
            }
        }
        return rad;
    }
}
