package setwright.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import setwright.core.numerics.MixedFit;
import setwright.core.numerics.MixedModel;

/*
 * Design note. Laps of one run are no replicates of a setup: tyres, fuel, track and driver differ from run to run, so that the run is random.
 * A trial has two to five runs, too few to tell that scatter from; what is known of it beforehand counts as a few runs more. Without it two
 * runs could not be judged at all, or would be judged as if nothing but the setup had changed. Within a run one slope over its laps stands for
 * fuel and tyres; where setups alternate, a slope over the runs stands for what the day does. What else is known of the runs is in Surroundings.
 */

/** Estimates what a change did from runs with and without it. */
final class TrialModel {
    /** What is known of the scatter between runs is worth as many runs (our choice). */
    static final double KNOWN_FREEDOM = 4.0;

    private static final int CHANGE = 1;
    private static final int IN_RUN = 2;
    private static final int ORDER = 3;

    private final List<TrialRun> runs;
    private final TrialPlan plan;
    private final FuelEffect fuel;
    private final Surroundings surroundings;
    private final boolean order;
    private final int columns;

    TrialModel(List<TrialRun> runs, FuelEffect fuel) {
        this.runs = runs;
        this.plan = new TrialPlan(runs.stream().map(TrialRun::changed).toList());
        this.fuel = fuel;
        this.surroundings = Surroundings.of(runs, plan, fuel);
        this.order = plan.takesOutTheDay();
        this.columns = IN_RUN + 1 + (order ? 1 : 0) + (surroundings.temperature() ? 1 : 0);
    }

    /** Returns what is taken out besides, and what is not, in plain sentences. */
    List<String> surroundings() {
        return surroundings.words();
    }

    /** Returns the order of the runs. */
    TrialPlan plan() {
        return plan;
    }

    /**
     * What was estimated of one figure.
     *
     * @param change  with the change less without
     * @param day     what the day does from the first run to the last; empty where it cannot be told from the change
     * @param fit     behind both
     */
    record Estimated(TrialEffect change, Optional<TrialEffect> day, MixedFit fit) {
        /** Returns the same with another source of error of the change, a standard deviation. */
        Estimated lessSure(double deviation) {
            return new Estimated(change.lessSure(deviation), day, fit);
        }
    }

    /**
     * Estimates the time of a lap or of a part of it, with the fuel on board taken out; what is not known of that counts as error of the change.
     *
     * @param timeS            of a lap's part, or of all of it, s
     * @param knownDeviation   what is known of its scatter between runs, s
     * @return empty as for {@link #of}
     */
    Optional<Estimated> ofTime(ToDoubleFunction<TrialLap> timeS, double knownDeviation) {
        Optional<Estimated> found =
                of((run, lap) -> OptionalDouble.of(fuel.partS(run, lap, timeS.applyAsDouble(lap))), knownDeviation);
        if (!fuel.known() || found.isEmpty()) {
            return found;
        }
        return of((run, lap) -> OptionalDouble.of(fuel.dearerPartS(run, lap, timeS.applyAsDouble(lap))), knownDeviation)
                .map(dearer -> found.get()
                        .lessSure(dearer.change().value() - found.get().change().value()));
    }

    /**
     * Estimates.
     *
     * @param figure           of a lap; laps without it are left out
     * @param knownDeviation   what is known of its scatter between runs
     * @return empty with too few laps, or where one of the setups has none
     */
    Optional<Estimated> of(BiFunction<TrialRun, TrialLap, OptionalDouble> figure, double knownDeviation) {
        List<double[]> rows = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        List<Integer> groups = new ArrayList<>();
        boolean[] seen = new boolean[2];
        int group = -1;
        for (int r = 0; r < runs.size(); r++) {
            TrialRun run = runs.get(r);
            List<TrialLap> laps = run.laps().stream()
                    .filter(lap -> figure.apply(run, lap).isPresent())
                    .toList();
            if (laps.isEmpty()) {
                continue;
            }
            group++;
            seen[run.changed() ? 1 : 0] = true;
            double middle = laps.stream().mapToInt(TrialLap::number).average().orElse(0.0);
            for (TrialLap lap : laps) {
                double[] row = new double[columns];
                row[0] = 1.0;
                row[CHANGE] = run.changed() ? 1.0 : 0.0;
                row[IN_RUN] = surroundings.inRun(run, lap, middle);
                if (order) {
                    row[ORDER] = r / (runs.size() - 1.0);
                }
                if (surroundings.temperature()) {
                    row[columns - 1] = surroundings.excessKelvin(run);
                }
                rows.add(row);
                values.add(figure.apply(run, lap).getAsDouble());
                groups.add(group);
            }
        }
        boolean enough = seen[0] && seen[1] && values.size() > columns + 1 && group + 1 == runs.size();
        if (!enough) {
            return Optional.empty();
        }
        MixedFit fit = MixedModel.fit(
                rows.toArray(double[][]::new),
                values.stream().mapToDouble(Double::doubleValue).toArray(),
                groups.stream().mapToInt(Integer::intValue).toArray(),
                Optional.of(new MixedModel.Known(knownDeviation, KNOWN_FREEDOM)));
        return Optional.of(new Estimated(
                TrialEffect.of(fit.contrast(weights(CHANGE))),
                order ? Optional.of(TrialEffect.of(fit.contrast(weights(ORDER)))) : Optional.empty(),
                fit));
    }

    private double[] weights(int wanted) {
        double[] weights = new double[columns];
        weights[wanted] = 1.0;
        return weights;
    }
}
