package setwright.fleet.summary;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/*
 * Design note. Recordings of one driver resemble each other, so a thousand of ten drivers tell hardly more than ten. The drivers are the
 * sample: the ratio of two sums over drivers, with the variance of a ratio estimator (W. G. Cochran, Sampling Techniques, chapter 6, value
 * from memory) and Student's t over drivers less one. Where all drivers are alike that interval shrinks to nothing; for a share it
 * is then never narrower than what independent recordings would give (E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209, value from memory).
 */

/** Sums over drivers, from which shares and means with intervals follow. */
final class Clusters {
    /**
     * With fewer drivers, not even their unanimity tells a thing from a coin that is tossed: six heads in a row have a probability of
     * two times 1/64 below one in twenty, five have 1/16.
     */
    static final int FEWEST = 6;

    private static final double TAIL = 0.975;
    private static final double NORMAL_TAIL = new NormalDistribution().inverseCumulativeProbability(TAIL);

    private final List<Double> parts = new ArrayList<>();
    private final List<Double> wholes = new ArrayList<>();
    private double part;
    private double whole;

    /**
     * Adds a driver.
     *
     * @param sum  what was seen of him: a number of recordings, or seconds
     * @param of   in how many recordings, &gt; 0
     */
    void add(double sum, double of) {
        parts.add(sum);
        wholes.add(of);
        part += sum;
        whole += of;
    }

    /** Returns the share of recordings. */
    Figure share() {
        Figure ratio = mean();
        if (ratio.tooFew()) {
            return ratio;
        }
        double share = part / whole;
        double square = NORMAL_TAIL * NORMAL_TAIL;
        double middle = (share + square / (2.0 * whole)) / (1.0 + square / whole);
        double half = NORMAL_TAIL
                / (1.0 + square / whole)
                * Math.sqrt(share * (1.0 - share) / whole + square / (4.0 * whole * whole));
        return Figure.of(
                share,
                Math.max(0.0, Math.min(ratio.low().orElseThrow(), middle - half)),
                Math.min(1.0, Math.max(ratio.high().orElseThrow(), middle + half)));
    }

    /** Returns the mean over recordings. */
    Figure mean() {
        int drivers = parts.size();
        double ratio = part / whole;
        if (drivers < FEWEST) {
            return Figure.tooFew(ratio);
        }
        double squares = 0.0;
        for (int i = 0; i < drivers; i++) {
            double rest = parts.get(i) - ratio * wholes.get(i);
            squares += rest * rest;
        }
        double deviation = Math.sqrt(drivers / (drivers - 1.0) * squares) / whole;
        double half = new TDistribution(drivers - 1.0).inverseCumulativeProbability(TAIL) * deviation;
        return Figure.of(ratio, ratio - half, ratio + half);
    }
}
