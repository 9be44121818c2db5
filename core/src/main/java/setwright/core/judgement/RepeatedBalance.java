package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.hipparchus.stat.StatUtils;
import setwright.core.handling.CornerPass;
import setwright.core.handling.PhaseBalance;
import setwright.core.numerics.Robust;
import setwright.core.numerics.WeightedMedian;
import setwright.core.replay.Pool;

/*
 * Design note. A problem is what repeats. A single corner that the driver takes otherwise than on the other day pulls a mean along and
 * says nothing about the car; the middle over the corners stays where it is, and how far the corners lie apart tells how well it
 * is known. Each corner counts with its lateral acceleration and time, as it does for the lap. Over the laps of a corner the mean counts, which
 * knows most of the few laps that there are; a wild one is in its error.
 */

/**
 * What repeats round the lap of the balance of one phase in some corners: the median over the corners of the mean over the laps.
 *
 * @param rad           beyond the reference, rad; positive: understeer
 * @param errorRad      standard error of it, from how far the corners lie apart, rad, &gt; 0
 * @param otherwiseRad  how far the reference may be off there for being driven otherwise, rad, &gt;= 0
 */
record RepeatedBalance(double rad, double errorRad, double otherwiseRad) {
    /** Fewer laps of a corner have no mean to speak of. */
    private static final int FEWEST_LAPS = 3;
    /** A part of the lap with less time in it says little, s. */
    private static final double LEAST_S = 0.25;
    /** How far corners usually lie apart, rad; counts as much as as many corners do, since two or three corners seldom show their scatter. */
    private static final double USUAL_RAD = Math.toRadians(0.15);

    private static final double USUAL_COUNTS = 3.0;
    /** The other stint's laps scatter as much as these. */
    private static final double STINTS = 2.0;
    /** Variance of the median of normal values over that of their mean, with many of them (a textbook figure). */
    private static final double MEDIAN_OVER_MEAN = 0.5 * Math.PI;

    /** One corner: the mean over its laps, its variance by their scatter, the median of what another way of driving may do, its weight, and the time spent there. */
    private record Here(double excess, double lapsRad2, double otherwise, double weight, double seconds) {}

    /**
     * Returns it.
     *
     * @param pool  the phase, and which corners count
     * @return empty where hardly any time is spent
     */
    static Optional<RepeatedBalance> of(List<CornerPass> passes, Pool pool) {
        List<Here> corners = corners(passes, pool);
        double seconds = corners.stream().mapToDouble(Here::seconds).sum();
        if (seconds < LEAST_S) {
            return Optional.empty();
        }
        double middle = median(corners, Here::excess);
        return Optional.of(new RepeatedBalance(middle, errorRad(corners, middle), median(corners, Here::otherwise)));
    }

    private static double median(List<Here> corners, ToDoubleFunction<Here> value) {
        WeightedMedian median = new WeightedMedian();
        corners.forEach(corner -> median.add(value.applyAsDouble(corner), corner.weight()));
        return median.value();
    }

    private static double errorRad(List<Here> corners, double middle) {
        double own = corners.size() - 1.0;
        double apart = Robust.scaledMad(
                corners.stream().mapToDouble(corner -> corner.excess() - middle).toArray());
        double between = (USUAL_COUNTS * USUAL_RAD * USUAL_RAD + own * apart * apart) / (USUAL_COUNTS + own);
        // corners that agree by chance are known no better than their laps allow
        double squares = corners.stream()
                .mapToDouble(corner -> corner.weight() * corner.weight() * Math.max(between, corner.lapsRad2()))
                .sum();
        double weights = corners.stream().mapToDouble(Here::weight).sum();
        return Math.sqrt(MEDIAN_OVER_MEAN * squares) / weights;
    }

    private static List<Here> corners(List<CornerPass> passes, Pool pool) {
        Map<Integer, List<PhaseBalance>> byCorner = passes.stream()
                .filter(pass -> pool.takes(pass.speedClass()))
                .collect(Collectors.groupingBy(
                        CornerPass::corner,
                        TreeMap::new,
                        Collectors.flatMapping(
                                pass ->
                                        pass
                                                .phase(pool.phase())
                                                .filter(balance -> Double.isFinite(balance.excessRad()))
                                                .stream(),
                                Collectors.toList())));
        List<Here> corners = new ArrayList<>();
        byCorner.values().stream()
                .filter(laps -> laps.size() >= FEWEST_LAPS)
                .forEach(laps -> corners.add(corner(laps)));
        return corners;
    }

    private static Here corner(List<PhaseBalance> laps) {
        double[] excess = laps.stream().mapToDouble(PhaseBalance::excessRad).toArray();
        return new Here(
                StatUtils.mean(excess),
                STINTS * StatUtils.variance(excess) / excess.length,
                Robust.median(laps.stream()
                        .mapToDouble(PhaseBalance::referenceDoubtRad)
                        .toArray()),
                mean(laps, balance -> Math.abs(balance.lateralMps2()) * balance.timeS()),
                mean(laps, PhaseBalance::timeS));
    }

    private static double mean(List<PhaseBalance> laps, ToDoubleFunction<PhaseBalance> value) {
        return laps.stream().mapToDouble(value).average().orElse(0.0);
    }
}
