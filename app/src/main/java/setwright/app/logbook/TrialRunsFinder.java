package setwright.app.logbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupDifference;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.StintRow;
import setwright.logbook.row.TrialAsideRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.VerdictRow;

/** Finds the runs of a trial among the stints of its car, and says of each other one why it does not count. */
final class TrialRunsFinder {
    private static final int FEWEST_LAPS = 2;

    private final Tables tables;
    private final TrialRow trial;
    private final CarSheet before;
    private final Map<Long, String> leftOut;
    private final List<KeptStint> runs = new ArrayList<>();
    private final List<KeptStint> changed = new ArrayList<>();
    private final List<String> aside = new ArrayList<>();

    private TrialRunsFinder(Tables tables, TrialRow trial) {
        this.tables = tables;
        this.trial = trial;
        this.before = Setups.sheet(tables.setups().get(trial.beforeId()));
        this.leftOut = tables.trials().leftOut(trial.id()).stream()
                .collect(Collectors.toMap(TrialAsideRow::stintId, TrialAsideRow::why));
    }

    /**
     * The runs of a trial.
     *
     * @param trial       as planned
     * @param runs        that count, in the order in which they came in
     * @param changed     those of them with the change
     * @param changes     what it is
     * @param aside       why each other stint of the car does not count, in a sentence
     * @param seenBefore  share of the planned runs at the last verdict on other runs
     * @param seen        share of them now, at least that
     */
    record Runs(
            TrialRow trial,
            List<KeptStint> runs,
            List<KeptStint> changed,
            List<SetupDifference> changes,
            List<String> aside,
            double seenBefore,
            double seen) {
        /** Returns their numbers, with commas. */
        String key() {
            return TrialRunsFinder.key(runs);
        }
    }

    static Runs find(Tables tables, TrialRow trial) {
        TrialRunsFinder finder = new TrialRunsFinder(tables, trial);
        for (StintRow row : tables.stints().since(trial.firstStintId(), trial.carId())) {
            finder.sort(row);
        }
        return finder.found();
    }

    /** Returns the runs that a trial's last verdict rests on. */
    static Runs judged(Tables tables, TrialRow trial) {
        List<VerdictRow> verdicts = tables.verdicts().ofTrial(trial.id());
        if (verdicts.isEmpty()) {
            throw new LogbookProblem("trial " + trial.id() + " was never judged.");
        }
        VerdictRow last = verdicts.get(verdicts.size() - 1);
        List<String> numbers = Arrays.asList(last.runs().split(","));
        Runs all = find(tables, trial);
        List<KeptStint> runs = all.runs().stream()
                .filter(run -> numbers.contains(String.valueOf(run.number())))
                .toList();
        if (runs.size() != numbers.size()) {
            throw new LogbookProblem("the runs of trial " + trial.id() + " are not as they were when it was judged.");
        }
        return new Runs(
                trial,
                runs,
                all.changed().stream().filter(runs::contains).toList(),
                all.changes(),
                List.of(),
                verdicts.stream()
                        .filter(verdict -> !verdict.runs().equals(last.runs()))
                        .mapToDouble(VerdictRow::planShare)
                        .max()
                        .orElse(0.0),
                last.planShare());
    }

    private void sort(StintRow row) {
        KeptStint stint = KeptStint.of(tables, row);
        List<SetupDifference> changes = SetupDifference.between(before, Setups.sheet(stint.setup()));
        Optional<String> why = why(stint, changes);
        if (why.isPresent()) {
            aside.add("Stint " + stint.number() + " does not count: " + why.get() + ".");
            return;
        }
        runs.add(stint);
        if (!changes.isEmpty()) {
            changed.add(stint);
        }
    }

    private Optional<String> why(KeptStint stint, List<SetupDifference> changes) {
        if (leftOut.containsKey(stint.number())) {
            return Optional.of("left out, " + leftOut.get(stint.number()));
        }
        if (stint.driver().id() != trial.driverId()) {
            return Optional.of("driven by " + stint.driver().name());
        }
        if (stint.circuit().id() != trial.circuitId()) {
            return Optional.of("driven at " + stint.circuit().name());
        }
        if (!changes.isEmpty() && !TriedChange.is(tables, trial, changes)) {
            return Optional.of("driven with " + TriedChange.words(changes));
        }
        if (stint.stint().goodLaps() < FEWEST_LAPS) {
            return Optional.of("fewer than " + FEWEST_LAPS + " of its laps can be judged");
        }
        return judgedBefore(tables, stint.stint(), changes(), trial.id())
                .map(earlier -> "judged in trial " + earlier.id() + " of the same change");
    }

    private List<SetupDifference> changes() {
        return tables.trials().items(trial.id()).stream()
                .map(item -> new SetupDifference(item.item(), item.fromValue(), item.toValue(), item.unit()))
                .toList();
    }

    /** Returns the earlier trial of the same change in which a stint was judged: its laps would count twice. */
    static Optional<TrialRow> judgedBefore(Tables tables, StintRow stint, List<SetupDifference> changes, long trial) {
        return tables.trials().ofCar(stint.carId()).stream()
                .filter(earlier -> earlier.id() < trial && TriedChange.is(tables, earlier, changes))
                .filter(earlier -> tables.verdicts()
                        .last(earlier.id())
                        .filter(verdict ->
                                Arrays.asList(verdict.runs().split(",")).contains(String.valueOf(stint.id())))
                        .isPresent())
                .findFirst();
    }

    private static String key(List<KeptStint> runs) {
        return runs.stream().map(run -> String.valueOf(run.number())).collect(Collectors.joining(","));
    }

    private Runs found() {
        double planned = trial.plan().length() - 1.0;
        String key = key(runs);
        double last = tables.verdicts().ofTrial(trial.id()).stream()
                .filter(verdict -> !verdict.runs().equals(key))
                .mapToDouble(VerdictRow::planShare)
                .max()
                .orElse(0.0);
        double now = Math.min(1.0, (runs.size() - 1.0) / planned);
        return new Runs(trial, runs, changed, changes(), aside, last, Math.max(last, now));
    }
}
