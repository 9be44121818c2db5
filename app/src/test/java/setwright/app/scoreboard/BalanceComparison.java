package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import setwright.app.scoreboard.Agreement.Pair;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Diagnosis;

/**
 * Measured balance beside the true one, in degrees, positive for understeer. It tells apart what the angle itself and what
 * the reference it is held against add to a wrong answer.
 *
 * @param name   of the stint
 * @param cells  rows of the table phase by speed class: truth, answer, for each class in turn
 * @param pairs  for the agreements
 */
record BalanceComparison(String name, List<List<String>> cells, Map<View, List<Pair>> pairs) {
    static final List<String> SPEED_CLASSES = List.of("low", "medium", "high");

    /** What is laid beside what. */
    enum View {
        CELLS("excess by phase and speed class"),
        CELLS_AS_DRIVEN("the same, truth over the recorded laps"),
        CORNERS("excess by phase and corner"),
        ANGLE("balance angle itself by phase and corner");

        private final String words;

        View(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    static BalanceComparison of(StintRun run) {
        Map<View, List<Pair>> pairs = new EnumMap<>(View.class);
        for (View view : View.values()) {
            pairs.put(view, new ArrayList<>());
        }
        CornerMatch match = run.cornerMatch();
        List<List<String>> cells = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            cells.add(cells(run, match, phase, pairs));
            if (isFirst(run)) {
                corners(run, match, phase, pairs);
            }
        }
        return new BalanceComparison(run.name(), cells, pairs);
    }

    private static List<String> cells(StintRun run, CornerMatch match, Phase phase, Map<View, List<Pair>> pairs) {
        List<String> row = new ArrayList<>(List.of(phase.words()));
        for (String speed : SPEED_CLASSES) {
            Optional<Double> real = trueCell(run, speed, phase.words());
            double found = mean(
                    run,
                    match,
                    phase,
                    PhaseBalance::excessRad,
                    corner -> corner.speedClass().equals(speed));
            row.add(real.map(Agreement::figure).orElse("-"));
            row.add(Agreement.figure(found));
            add(pairs, View.CELLS, real, found);
            add(pairs, View.CELLS_AS_DRIVEN, recordedCell(run, speed, phase.words()), found);
        }
        return row;
    }

    private static void corners(StintRun run, CornerMatch match, Phase phase, Map<View, List<Pair>> pairs) {
        for (Truth.Corner real : run.practice().truth().corners()) {
            double excess = mean(run, match, phase, PhaseBalance::excessRad, real::equals);
            double angle = mean(run, match, phase, PhaseBalance::balanceRad, real::equals);
            add(pairs, View.CORNERS, cell(real.deltaVsBalancedDeg(), phase.words()), excess);
            add(pairs, View.ANGLE, cell(real.frontMinusRearSlipDeg(), phase.words()), angle);
        }
    }

    /** Truth by corner and as driven is given for the first stint only. */
    private static boolean isFirst(StintRun run) {
        return run.practice().truth().stints().indexOf(run.truth()) == 0;
    }

    private static Optional<Double> trueCell(StintRun run, String speed, String phase) {
        Truth truth = run.practice().truth();
        Optional<Double> first = cell(truth.balanceDeltaVsBalancedDeg(), speed, phase);
        if (truth.isBackToBack() && !isFirst(run)) {
            Optional<Double> change = cell(truth.backToBack().balanceDeltaSecondMinusFirstDeg(), speed, phase);
            return first.flatMap(value -> change.map(more -> value + more));
        }
        return first;
    }

    private static Optional<Double> recordedCell(StintRun run, String speed, String phase) {
        return isFirst(run)
                ? cell(run.practice().truth().recordedBalanceDeltaVsBalancedDeg(), speed, phase)
                : Optional.empty();
    }

    private static Optional<Double> cell(Map<String, Map<String, Double>> table, String speed, String phase) {
        return Optional.ofNullable(table).map(cells -> cells.get(speed)).flatMap(cells -> cell(cells, phase));
    }

    private static Optional<Double> cell(Map<String, Double> cells, String phase) {
        return Optional.ofNullable(cells).map(values -> values.get(phase));
    }

    private static void add(Map<View, List<Pair>> pairs, View view, Optional<Double> truth, double answer) {
        if (truth.isPresent() && !Double.isNaN(answer)) {
            pairs.get(view).add(new Pair(truth.get(), answer));
        }
    }

    /** Mean over all passes through some true corners, weighted with lateral load and time as the truth is, deg. */
    private static double mean(
            StintRun run,
            CornerMatch match,
            Phase phase,
            ToDoubleFunction<PhaseBalance> angleRad,
            Predicate<Truth.Corner> wanted) {
        double sum = 0.0;
        double weights = 0.0;
        for (CornerPass pass : run.diagnosis().map(Diagnosis::passes).orElse(List.of())) {
            Optional<PhaseBalance> balance = pass.phase(phase);
            if (balance.isPresent() && match.real(pass.corner()).filter(wanted).isPresent()) {
                double angle = angleRad.applyAsDouble(balance.get());
                double weight =
                        Math.abs(balance.get().lateralMps2()) * balance.get().timeS();
                if (Double.isFinite(angle * weight)) {
                    sum += angle * weight;
                    weights += weight;
                }
            }
        }
        return weights > 0.0 ? Math.toDegrees(sum / weights) : Double.NaN;
    }
}
