package setwright.core.simulation.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import setwright.core.handling.Phase;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.truth.CornerPhases.Span;

/**
 * The true balance of a stint by corner and phase: slip angle front minus rear, turned so that positive is understeer, weighted
 * with the lateral acceleration into the corner and with time.
 */
public final class BalanceTable {
    private final PhaseMap map;
    private final List<Integer> laps;
    private final List<Entry> entries = new ArrayList<>();

    private record Entry(int lap, CornerPhases corner, Phase phase, double weighted, double weight, double timeS) {}

    private BalanceTable(PhaseMap map, List<Integer> laps) {
        this.map = map;
        this.laps = List.copyOf(laps);
    }

    /**
     * A cell of the table.
     *
     * @param balanceRad   mean over the laps, rad
     * @param deviationRad standard deviation over the laps, rad; NaN with one lap
     * @param laps         how many
     * @param timeS        mean time a lap, s
     * @param lateralMps2  mean lateral acceleration into the corner, m/s²
     */
    public record Cell(double balanceRad, double deviationRad, int laps, double timeS, double lateralMps2) {
        /** Returns the standard error of the mean, rad. */
        public double errorRad() {
            return deviationRad / Math.sqrt(laps);
        }
    }

    /**
     * Measures a stint.
     *
     * @param map   of the phases
     * @param laps  indices of the laps that count, 0 is the out lap
     */
    public static BalanceTable of(PhaseMap map, DriveHistory history, List<Integer> laps) {
        BalanceTable table = new BalanceTable(map, laps);
        Distance distance = new Distance(history, map.lengthM());
        for (int lap : laps) {
            for (CornerPhases corner : map.corners()) {
                corner.phases()
                        .forEach((phase, span) -> table.entries.add(
                                entry(history, distance, lap, lap * map.lengthM(), corner, phase, span)));
            }
        }
        return table;
    }

    private static Entry entry(
            DriveHistory history,
            Distance distance,
            int lap,
            double lapStartM,
            CornerPhases corner,
            Phase phase,
            Span span) {
        double side = corner.corner().sign();
        double weighted = 0.0;
        double weights = 0.0;
        int from = distance.sampleAt(lapStartM + span.fromM());
        int to = distance.sampleAt(lapStartM + span.toM());
        for (int k = from; k < to; k++) {
            double inward = Math.max(0.0, side * history.at(Signal.LATERAL_ACCELERATION, k)) * history.stepS();
            weighted += inward * side * (history.at(Signal.SLIP_FRONT, k) - history.at(Signal.SLIP_REAR, k));
            weights += inward;
        }
        return new Entry(lap, corner, phase, weighted, weights, (to - from) * history.stepS());
    }

    /** Returns one phase over some corners together; empty when no lap has it. */
    public Optional<Cell> cell(Phase phase, Predicate<CornerPhases> wanted) {
        List<Double> balances = new ArrayList<>();
        double time = 0.0;
        double weights = 0.0;
        for (int lap : laps) {
            double weighted = 0.0;
            double weight = 0.0;
            for (Entry entry : entries) {
                if (entry.lap() == lap && entry.phase() == phase && wanted.test(entry.corner())) {
                    weighted += entry.weighted();
                    weight += entry.weight();
                    time += entry.timeS();
                }
            }
            if (weight > 0.0) {
                balances.add(weighted / weight);
                weights += weight;
            }
        }
        if (balances.isEmpty()) {
            return Optional.empty();
        }
        Moments moments =
                Moments.of(balances.stream().mapToDouble(Double::doubleValue).toArray());
        return Optional.of(new Cell(
                moments.mean(),
                moments.deviation(),
                moments.count(),
                time / laps.size(),
                weights / Math.max(time, 1.0e-9)));
    }

    /** Returns one phase of one corner. */
    public Optional<Cell> cell(Phase phase, int corner) {
        return cell(phase, candidate -> candidate.corner().number() == corner);
    }

    /** Returns the corners and phases that it follows. */
    public PhaseMap map() {
        return map;
    }
}
