package setwright.core.judgement.driving;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.LostTime;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.SmallestEffect;
import setwright.core.judgement.Yardstick;
import setwright.core.judgement.driving.DrivingReview.AtCorner;
import setwright.core.judgement.driving.DrivingReview.Place;
import setwright.core.numerics.Robust;

/*
 * Design note. What a driver can gain without a better car or a better driver is what he has done already: his better quarter in
 * each corner. The gap from his middle to it is the price of a corner; laps are drawn again with replacement for the interval
 * (Efron's bootstrap, percentiles), for all corners the same laps, so that what hangs together stays together.
 */

/** Leads from a diagnosis to what a coach works on. */
public final class DrivingReviewer {
    /** A quarter of fewer passes than this is one pass. */
    private static final int FEWEST_PASSES = 5;

    private static final double BETTER = 0.25;
    private static final int DRAWS = 400;
    private static final long SEED = 20_261_126L;
    private static final int MOST_LAPS = 100;
    private static final int MOST_PLACES = 3;
    /** Less than this in a corner is below what a loop timer prints, s. */
    private static final double WORTH_NAMING_S = 0.01;

    private DrivingReviewer() {}

    /** Reviews the driving of a diagnosed stint. */
    public static DrivingReview review(Diagnosis diagnosis) {
        Map<Integer, List<CornerPass>> byCorner = diagnosis.passes().stream()
                .collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        Repeatability driving = diagnosis.repeatability();
        List<AtCorner> corners = new ArrayList<>();
        for (Repeatability.AtCorner judged : driving.corners()) {
            corners.add(corner(driving, judged, byCorner.getOrDefault(judged.corner(), List.of())));
        }
        List<Place> first = corners.stream()
                .flatMap(corner -> place(corner, diagnosis.faults()).stream())
                .sorted(Comparator.comparingDouble((Place place) -> place.cost().seconds())
                        .reversed())
                .limit(MOST_PLACES)
                .toList();
        return new DrivingReview(corners, gain(byCorner), first);
    }

    private static AtCorner corner(Repeatability driving, Repeatability.AtCorner judged, List<CornerPass> passes) {
        double typical =
                Robust.median(passes.stream().mapToDouble(CornerPass::timeS).toArray())
                        * Yardstick.timeShare(driving.stepBalanceRad());
        return new AtCorner(
                judged.corner(),
                judged.passes(),
                judged.smallestBalanceRad(),
                judged.smallestTimeS(),
                typical,
                lapsNeeded(judged, driving.stepBalanceRad(), typical),
                gain(Map.of(judged.corner(), passes)),
                EventCost.at(driving, judged, passes));
    }

    private static OptionalInt lapsNeeded(Repeatability.AtCorner judged, double stepRad, double typicalS) {
        double now = SmallestEffect.inDeviations(judged.passes());
        double most = Math.max(judged.smallestBalanceRad() / stepRad, judged.smallestTimeS() / typicalS);
        if (!Double.isFinite(now) || !Double.isFinite(most)) {
            return OptionalInt.empty();
        }
        for (int laps = 2; laps <= MOST_LAPS; laps++) {
            if (SmallestEffect.inDeviations(laps) * most <= now) {
                return OptionalInt.of(laps);
            }
        }
        return OptionalInt.empty();
    }

    /** What the better quarter of these passes gains over their middle, summed over the corners. */
    private static Optional<LostTime> gain(Map<Integer, List<CornerPass>> byCorner) {
        List<Map<Integer, Double>> times = byCorner.values().stream()
                .filter(passes -> passes.size() >= FEWEST_PASSES)
                .map(passes -> passes.stream()
                        .collect(Collectors.toMap(CornerPass::lap, CornerPass::timeS, (a, b) -> a, TreeMap::new)))
                .map(byLap -> (Map<Integer, Double>) byLap)
                .toList();
        if (times.isEmpty()) {
            return Optional.empty();
        }
        int[] laps = times.stream()
                .flatMap(byLap -> byLap.keySet().stream())
                .mapToInt(Integer::intValue)
                .distinct()
                .sorted()
                .toArray();
        SplittableRandom random = new SplittableRandom(SEED);
        double[] draws = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            int[] drawn =
                    random.ints(laps.length, 0, laps.length).map(i -> laps[i]).toArray();
            draws[d] = gain(times, drawn);
        }
        double best = gain(times, laps);
        return Optional.of(new LostTime(
                best, Math.min(best, Robust.quantile(draws, 0.025)), Math.max(best, Robust.quantile(draws, 0.975))));
    }

    private static double gain(List<Map<Integer, Double>> times, int[] laps) {
        double sum = 0.0;
        for (Map<Integer, Double> byLap : times) {
            double[] here = java.util.Arrays.stream(laps)
                    .filter(byLap::containsKey)
                    .mapToDouble(lap -> byLap.getOrDefault(lap, Double.NaN))
                    .toArray();
            double gap = Robust.median(here) - Robust.quantile(here, BETTER);
            sum += Double.isFinite(gap) ? gap : 0.0;
        }
        return sum;
    }

    private static Optional<Place> place(AtCorner corner, List<DrivingFault> faults) {
        List<DrivingFault> here = faults.stream()
                .filter(fault -> fault.corners().contains(corner.corner()))
                .toList();
        return corner.spread()
                .filter(cost -> cost.seconds() >= WORTH_NAMING_S)
                .map(cost -> new Place(corner.corner(), cost, corner.event(), here));
    }
}
