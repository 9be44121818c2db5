package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * All cases judged.
 *
 * @param stints  in the order of the cases
 */
record Score(List<OfStint> stints) {
    private static final List<Rule> RULES = List.of(
            new LapRule(),
            new ChannelRule(),
            new CalibrationRule(),
            new CornerRule(),
            new VerdictRule(),
            new ProblemRule(),
            new ChangeRule());

    /**
     * One recording judged.
     *
     * @param run      what came out of the chain
     * @param rows     truth beside answer
     * @param balance  measured beside true balance
     * @param changes  predicted beside true effects of changes of setup
     */
    record OfStint(StintRun run, List<Row> rows, BalanceComparison balance, ChangeComparison changes) {
        /** Returns what this stint adds to a total; nothing where it is not counted. */
        Count count(Measure measure) {
            return rows.stream()
                    .filter(row -> row.counts().containsKey(measure))
                    .map(row -> row.counts().get(measure))
                    .reduce(new Count(0, 0), Count::plus);
        }
    }

    /**
     * Runs and judges cases.
     *
     * @param progress  is told the name of each recording before it is run
     */
    static Score of(List<PracticeCase> cases, Consumer<String> progress) {
        List<OfStint> stints = new ArrayList<>();
        for (PracticeCase practice : cases) {
            for (Truth.Stint stint : practice.truth().stints()) {
                progress.accept(practice.name() + " " + stint.file());
                stints.add(judged(StintRun.of(practice, stint)));
            }
        }
        return new Score(stints);
    }

    private static OfStint judged(StintRun run) {
        List<Row> rows = new ArrayList<>();
        RULES.forEach(rule -> rows.addAll(rule.judge(run)));
        return new OfStint(run, rows, BalanceComparison.of(run), ChangeComparison.of(run));
    }

    /** Returns the stints whose changes of setup were predicted and whose truth is known. */
    List<ChangeComparison> predictedChanges() {
        return stints.stream()
                .map(OfStint::changes)
                .filter(changes -> changes.predicted() && !changes.lapTime().isEmpty())
                .toList();
    }

    /** Returns the sum of each measure that these cases give a chance to; the others are left out rather than zero. */
    Map<Measure, Count> totals() {
        Map<Measure, Count> totals = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            Count total = stints.stream().map(stint -> stint.count(measure)).reduce(new Count(0, 0), Count::plus);
            if (total.of() > 0) {
                totals.put(measure, total);
            }
        }
        return totals;
    }
}
