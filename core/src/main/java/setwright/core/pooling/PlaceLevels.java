package setwright.core.pooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.SpeedRange;
import setwright.core.pooling.NormalHierarchy.Estimate;

/*
 * Design note. Drivers are compared on the corners that all of them have, each corner with the same weight for every driver, so that a
 * corner that one of them missed is not taken for a difference between them. What a healthy car shows there is the same for all: it
 * does not blur the comparison. The standard error is that of the passes, and what calibration leaves of each recording.
 */

/** The balance that each stint shows in one place, on the corners that all stints have. */
final class PlaceLevels {
    private static final int FEWEST_PASSES = 3;
    /** What steering zero and yaw-rate bias leave of one recording (our choice: about a tenth of a typical setup change). */
    private static final double CALIBRATION_RAD = Math.toRadians(0.06);

    private PlaceLevels() {}

    /** Returns one estimate for each stint, rad, understeer positive; empty where they have no corner in common. */
    static Optional<List<Estimate>> of(List<Diagnosis> stints, Phase phase, SpeedRange range) {
        List<Map<Integer, List<PhaseBalance>>> tables =
                stints.stream().map(stint -> table(stint, phase, range)).toList();
        Set<Integer> common = new TreeSet<>(tables.get(0).keySet());
        tables.forEach(table -> common.retainAll(table.keySet()));
        Map<Integer, Double> weights = new TreeMap<>();
        for (int corner : common) {
            weights.put(
                    corner,
                    tables.stream()
                            .flatMap(table -> table.getOrDefault(corner, List.of()).stream())
                            .mapToDouble(balance -> Math.abs(balance.lateralMps2()) * balance.timeS())
                            .average()
                            .orElse(0.0));
        }
        double sum = weights.values().stream().mapToDouble(w -> w).sum();
        if (!(sum > 0.0)) {
            return Optional.empty();
        }
        List<Estimate> levels = new ArrayList<>();
        for (Map<Integer, List<PhaseBalance>> table : tables) {
            double mean = 0.0;
            double variance = CALIBRATION_RAD * CALIBRATION_RAD;
            for (Map.Entry<Integer, Double> entry : weights.entrySet()) {
                double[] excess = table.getOrDefault(entry.getKey(), List.of()).stream()
                        .mapToDouble(PhaseBalance::excessRad)
                        .toArray();
                double share = entry.getValue() / sum;
                mean += share * mean(excess);
                variance += share * share * variance(excess) / excess.length;
            }
            levels.add(new Estimate(mean, Math.sqrt(variance)));
        }
        return Optional.of(levels);
    }

    /** Returns the mean excess of each lap, rad. */
    static DoubleStream laps(Diagnosis stint, Phase phase, SpeedRange range) {
        return stint.passes().stream()
                .filter(pass -> range.takes(pass.speedClass()))
                .filter(pass -> pass.phase(phase)
                        .filter(balance -> Double.isFinite(balance.excessRad()))
                        .isPresent())
                .collect(Collectors.groupingBy(
                        CornerPass::lap,
                        TreeMap::new,
                        Collectors.averagingDouble(pass ->
                                pass.phase(phase).map(PhaseBalance::excessRad).orElse(0.0))))
                .values()
                .stream()
                .mapToDouble(excess -> excess);
    }

    private static Map<Integer, List<PhaseBalance>> table(Diagnosis stint, Phase phase, SpeedRange range) {
        Map<Integer, List<PhaseBalance>> table = stint.passes().stream()
                .filter(pass -> range.takes(pass.speedClass()))
                .filter(pass -> pass.phase(phase)
                        .filter(balance -> Double.isFinite(balance.excessRad()))
                        .isPresent())
                .collect(Collectors.groupingBy(
                        CornerPass::corner,
                        TreeMap::new,
                        Collectors.flatMapping(pass -> pass.phase(phase).stream(), Collectors.toList())));
        table.values().removeIf(passes -> passes.size() < FEWEST_PASSES);
        return table;
    }

    private static double mean(double[] values) {
        double sum = 0.0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        double sum = 0.0;
        for (double value : values) {
            sum += (value - mean) * (value - mean);
        }
        return sum / (values.length - 1);
    }
}
