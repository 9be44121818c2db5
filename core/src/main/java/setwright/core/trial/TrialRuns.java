package setwright.core.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Sectors;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Diagnosis;
import setwright.core.replay.Pool;

/*
 * Design note. The balance angle itself is compared, not its excess over a reference: the reference is fitted to each recording and would
 * take part of the change with it. Each corner counts against its own mean over all runs, so that a corner which a lap lacks moves
 * nothing.
 */

/** Takes from diagnosed runs what is compared, lap by lap. */
public final class TrialRuns {
    private static final List<Phase> PHASES = List.of(Phase.ENTRY, Phase.MID, Phase.EXIT);

    private final Map<Place, Double> means;
    private final Optional<TrialTarget> target;

    private record Place(int corner, Phase phase) {}

    /**
     * A run as it was diagnosed.
     *
     * @param name       as people call it
     * @param changed    whether the change was on the car
     * @param conditions  what else is known
     * @param massKg      of the car with driver, without fuel, kg; NaN where it is not known
     * @param diagnosis  with the circuit of the first run
     */
    public record Diagnosed(
            String name, boolean changed, RunConditions conditions, double massKg, Diagnosis diagnosis) {
        /** A run of which nothing else is known. */
        public Diagnosed(String name, boolean changed, Diagnosis diagnosis) {
            this(name, changed, RunConditions.unknown(), Double.NaN, diagnosis);
        }
    }

    private TrialRuns(Map<Place, Double> means, Optional<TrialTarget> target) {
        this.means = means;
        this.target = target;
    }

    /** Returns the runs, in the same order. */
    public static List<TrialRun> of(List<Diagnosed> runs, Optional<TrialTarget> target) {
        TrialRuns all = new TrialRuns(means(runs), target);
        return runs.stream().map(all::run).toList();
    }

    private static Map<Place, Double> means(List<Diagnosed> runs) {
        Map<Place, List<Double>> seen = new HashMap<>();
        for (Diagnosed run : runs) {
            for (CornerPass pass : run.diagnosis().passes()) {
                for (Phase phase : PHASES) {
                    balance(pass, phase)
                            .ifPresent(found -> seen.computeIfAbsent(
                                            new Place(pass.corner(), phase), place -> new ArrayList<>())
                                    .add(found.balanceRad()));
                }
            }
        }
        Map<Place, Double> means = new HashMap<>();
        seen.forEach((place, values) -> means.put(
                place,
                values.stream().mapToDouble(Double::doubleValue).average().orElseThrow()));
        return means;
    }

    private static Optional<PhaseBalance> balance(CornerPass pass, Phase phase) {
        return pass.phase(phase).filter(found -> Double.isFinite(found.balanceRad()));
    }

    private TrialRun run(Diagnosed run) {
        List<TrialLap> laps = new ArrayList<>();
        Optional<Sectors> sectors = Sectors.of(run.diagnosis().stint().circuit());
        for (Lap lap : run.diagnosis().stint().goodLaps()) {
            List<CornerPass> passes = run.diagnosis().passes().stream()
                    .filter(pass -> pass.lap() == lap.number())
                    .toList();
            Map<Pool, Double> balance = new HashMap<>();
            for (Phase phase : PHASES) {
                mean(passes, phase, pass -> true).ifPresent(value -> balance.put(Pool.all(phase), value));
                for (SpeedClass speed : SpeedClass.values()) {
                    mean(passes, phase, pass -> pass.speedClass() == speed)
                            .ifPresent(value -> balance.put(Pool.of(phase, speed), value));
                }
            }
            laps.add(new TrialLap(
                    lap.number(),
                    lap.timeS(),
                    sectors.map(parts -> parts.timesS(run.diagnosis().stint(), lap))
                            .orElse(List.of()),
                    run.diagnosis().stint().fuelKg(lap),
                    balance,
                    target.map(wanted -> mean(
                                    passes,
                                    wanted.phase(),
                                    pass -> wanted.corners().contains(pass.corner())))
                            .orElse(OptionalDouble.empty())));
        }
        return new TrialRun(run.name(), run.changed(), run.conditions(), run.massKg(), laps);
    }

    /** Weighted with time, as the corners' own means are not. */
    private OptionalDouble mean(List<CornerPass> passes, Phase phase, Predicate<CornerPass> wanted) {
        double sum = 0.0;
        double weights = 0.0;
        for (CornerPass pass : passes) {
            Optional<PhaseBalance> found = wanted.test(pass) ? balance(pass, phase) : Optional.empty();
            if (found.isPresent()) {
                double usual = means.getOrDefault(new Place(pass.corner(), phase), 0.0);
                sum += found.get().timeS() * (found.get().balanceRad() - usual);
                weights += found.get().timeS();
            }
        }
        return weights > 0.0 ? OptionalDouble.of(sum / weights) : OptionalDouble.empty();
    }
}
