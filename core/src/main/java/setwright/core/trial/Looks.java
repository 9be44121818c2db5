package setwright.core.trial;

import org.hipparchus.distribution.continuous.NormalDistribution;

/*
 * Design note. Whoever looks at a trial after every run finds a difference by chance far more often than once in twenty times. The error is
 * spent as the trial goes on, after O'Brien and Fleming's pattern (Lan and DeMets, Biometrika 70, 1983): little early, most at the end. Each look
 * gets what is spent since the one before, as if they had nothing in common, which errs to the safe side.
 */

/**
 * Which look at a trial this is.
 *
 * @param look   counted from 1
 * @param of     how many were planned, at least {@code look}
 */
public record Looks(int look, int of) {
    /** The error that all looks together may make. */
    static final double LEVEL = 0.05;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    public Looks {
        if (look < 1 || of < look) {
            throw new IllegalArgumentException("look " + look + " of " + of);
        }
    }

    /** Returns the only look at a trial, when it is over. */
    public static Looks once() {
        return new Looks(1, 1);
    }

    /** Returns the two-sided level of this look. */
    public double level() {
        return spent(look / (double) of) - (look == 1 ? 0.0 : spent((look - 1.0) / of));
    }

    private static double spent(double share) {
        return 2.0
                - 2.0
                        * NORMAL.cumulativeProbability(
                                NORMAL.inverseCumulativeProbability(1.0 - 0.5 * LEVEL) / Math.sqrt(share));
    }
}
