package setwright.app.logbook;

import java.util.List;
import java.util.Optional;
import setwright.logbook.Logbook;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.VerdictRow;

/**
 * Where the trial of a car that is under way stands.
 *
 * @param car      that it is tried on
 * @param trial    as planned
 * @param runs     that count, in order
 * @param aside    why other stints of the car do not count, in sentences
 * @param verdict  the last one; empty when it was never judged
 */
public record TrialStatus(
        CarRow car, TrialRow trial, List<Run> runs, List<String> aside, Optional<VerdictRow> verdict) {
    public TrialStatus {
        runs = List.copyOf(runs);
        aside = List.copyOf(aside);
    }

    /**
     * A run that counts.
     *
     * @param stint     its number
     * @param changed   whether it was driven with the change
     * @param goodLaps  laps that can be judged
     */
    public record Run(long stint, boolean changed, int goodLaps) {}

    /** Looks it up; empty when no trial of the car is under way. */
    public static Optional<TrialStatus> of(Logbook logbook, long car) {
        return logbook.look(tables -> tables.trials().open(car).map(trial -> {
            TrialRunsFinder.Runs found = TrialRunsFinder.find(tables, trial);
            return new TrialStatus(
                    tables.cars().get(car),
                    trial,
                    found.runs().stream()
                            .map(run -> new Run(
                                    run.number(),
                                    found.changed().contains(run),
                                    run.stint().goodLaps()))
                            .toList(),
                    found.aside(),
                    tables.verdicts().last(trial.id()));
        }));
    }

    /** Tells whether there is a run with the change and one without. */
    public boolean canBeJudged() {
        return runs.stream().anyMatch(Run::changed) && runs.stream().anyMatch(run -> !run.changed());
    }
}
