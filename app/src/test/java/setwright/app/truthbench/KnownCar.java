package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.car.model.CarModel;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.SpeedRange;
import setwright.core.numerics.WeightedMedian;
import setwright.core.replay.DrivenLap;
import setwright.core.replay.LapRun;
import setwright.core.simulation.truth.ProblemLabeller;
import setwright.core.simulation.truth.TrueProblem;

/*
 * Design note. How well could anybody do? This judge is told the true car and the true balanced one, and replays both along the
 * recorded laps; all he does not know is how the driver would have driven the balanced car. Where he is wrong, the label
 * lies in the driver's answer to the fault and not in the fault.
 */

/** What a judge would say who knows everything about the car. */
final class KnownCar {
    /** As little time in a lap says nothing in the truth either, s. */
    private static final double LEAST_S = 0.25;

    private static final List<SpeedRange> SPEEDS = List.of(SpeedRange.ALL, SpeedRange.LOW, SpeedRange.HIGH);

    /** Sums of one phase in one range of speeds, corner by corner: what repeats is the median over the corners. */
    private static final class Sum {
        private final Map<Integer, double[]> corners = new HashMap<>();
        private double weight;
        private double seconds;

        private void add(int corner, double w, double change, double s) {
            double[] here = corners.computeIfAbsent(corner, c -> new double[2]);
            here[0] += w;
            here[1] += w * change;
            weight += w;
            seconds += s;
        }

        private double repeated() {
            WeightedMedian median = new WeightedMedian();
            corners.values().forEach(here -> median.add(here[1] / here[0], here[0]));
            return median.value();
        }
    }

    private KnownCar() {}

    /**
     * Returns what he names: how the two cars differ most when they are driven alike; empty where nothing could be judged.
     *
     * @param diagnosis  from which the laps and their phases are taken
     */
    static Optional<TrueProblem> problem(Driven driven, Diagnosis diagnosis) {
        List<ProblemLabeller.Difference> differences = new ArrayList<>();
        sums(driven, diagnosis).forEach((phase, ranges) -> {
            for (int s = 0; s < SPEEDS.size(); s++) {
                if (ranges[s].seconds >= LEAST_S && ranges[s].weight > 0.0) {
                    differences.add(new ProblemLabeller.Difference(phase, SPEEDS.get(s), ranges[s].repeated(), 0.0));
                }
            }
        });
        return ProblemLabeller.label(differences);
    }

    private static Map<Phase, Sum[]> sums(Driven driven, Diagnosis diagnosis) {
        CarModel faulty = driven.faulty();
        CarModel balanced = driven.balanced();
        HandlingTrace trace = diagnosis.trace();
        double least = DrivenLap.leastLateral(trace);
        List<DrivenLap> laps = DrivenLap.of(diagnosis.stint(), trace, diagnosis.passes());
        Map<Phase, Sum[]> sums = new EnumMap<>(Phase.class);
        for (Phase phase : Phase.values()) {
            sums.put(phase, new Sum[] {new Sum(), new Sum(), new Sum()});
        }
        for (DrivenLap lap : laps) {
            LapRun with = LapRun.of(faulty, lap, least);
            LapRun without = LapRun.of(balanced, lap, least);
            for (int k = 0; k < lap.size(); k++) {
                double change = with.balance(k) - without.balance(k);
                if (lap.phase()[k] >= 0 && Double.isFinite(change)) {
                    Sum[] here = sums.get(Phase.values()[lap.phase()[k]]);
                    SpeedClass speed = speedClass(diagnosis, lap.corner()[k]);
                    double weight = Math.abs(lap.moments().get(k).lateral());
                    for (int s = 0; s < SPEEDS.size(); s++) {
                        Sum sum = here[s];
                        if (SPEEDS.get(s).takes(speed)) {
                            // every other moment is replayed
                            sum.add(lap.corner()[k], weight, change, 2.0 * lap.stepS() / laps.size());
                        }
                    }
                }
            }
        }
        return sums;
    }

    private static SpeedClass speedClass(Diagnosis diagnosis, int index) {
        int number = diagnosis.stint().circuit().corners().get(index).number();
        return diagnosis.passes().stream()
                .filter(pass -> pass.corner() == number)
                .map(CornerPass::speedClass)
                .findFirst()
                .orElse(SpeedClass.MEDIUM);
    }
}
