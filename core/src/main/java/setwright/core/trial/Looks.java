package setwright.core.trial;

import org.hipparchus.distribution.continuous.NormalDistribution;

/*
 * Design note. Whoever looks at a trial after every run finds a difference by chance far more often than once in twenty times. The error is
 * spent as the trial goes on, after O'Brien and Fleming's pattern (Lan and DeMets, Biometrika 70, 1983): little early, most at the end. Each look
 * gets what is spent since the one before, as if they had nothing in common, which errs to the safe side.
 */

/**
 * How much of a trial was seen when it was judged before, and now.
 *
 * @param before  share of the planned runs at the last look, 0..1; 0 at the first one
 * @param now     at this one, at least {@code before}; the same when nothing is left to be spent
 */
public record Looks(double before, double now) {
    /** The error that all looks together may make. */
    static final double LEVEL = 0.05;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    public Looks {
        if (!(before >= 0.0 && now >= before && now <= 1.0 && now > 0.0)) {
            throw new IllegalArgumentException("a look from " + before + " to " + now + " of a trial");
        }
    }

    /** Returns the only look at a trial, when it is over. */
    public static Looks once() {
        return new Looks(0.0, 1.0);
    }

    /**
     * Returns one of several looks that are spread evenly.
     *
     * @param look  counted from 1
     * @param of    how many were planned, at least {@code look}
     */
    public static Looks of(int look, int of) {
        return new Looks((look - 1.0) / of, look / (double) of);
    }

    /** Returns the two-sided level of this look; 0 when nothing is left to be spent. */
    public double level() {
        return spent(now) - spent(before);
    }

    private static double spent(double share) {
        return share == 0.0
                ? 0.0
                : 2.0
                        - 2.0
                                * NORMAL.cumulativeProbability(
                                        NORMAL.inverseCumulativeProbability(1.0 - 0.5 * LEVEL) / Math.sqrt(share));
    }
}
