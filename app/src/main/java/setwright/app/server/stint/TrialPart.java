package setwright.app.server.stint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.logbook.TrialStatus;
import setwright.app.units.Figures;

/**
 * What the page says of the trial of a car.
 *
 * @param open     whether one is under way
 * @param number   of the trial; 0 without one
 * @param car      its name
 * @param answer   in a sentence
 * @param details  further sentences
 * @param plan     its runs in order, driven and still to drive
 * @param ready    whether it can be judged now
 */
public record TrialPart(
        boolean open, long number, String car, String answer, List<String> details, List<Run> plan, boolean ready) {
    public TrialPart {
        details = List.copyOf(details);
        plan = List.copyOf(plan);
    }

    /**
     * A run.
     *
     * @param letter  A without the change, B with it
     * @param words   the stint and its laps, or what is still to be driven
     * @param driven  whether it was
     */
    public record Run(String letter, String words, boolean driven) {}

    static TrialPart of(Optional<TrialStatus> status, String car) {
        if (status.isEmpty()) {
            return new TrialPart(
                    false,
                    0,
                    car,
                    "No trial is under way.",
                    List.of(
                            "Choose a change above and try it: runs without it, with it, and without it again take the day"
                                    + " out."),
                    List.of(),
                    false);
        }
        TrialStatus trial = status.get();
        String told = trial.verdict()
                .map(verdict -> " So far: " + verdict.verdict() + ".")
                .orElse(trial.canBeJudged() ? " It can be judged." : "");
        List<String> details = new ArrayList<>();
        trial.verdict().ifPresent(verdict -> details.add(Figures.sentence(verdict.reason())));
        details.addAll(trial.aside());
        return new TrialPart(
                true,
                trial.trial().id(),
                car,
                "Trial " + trial.trial().id() + ": " + trial.trial().changeWords() + "." + told,
                details,
                plan(trial),
                trial.canBeJudged());
    }

    /** What was driven, then what the plan still has: runs beyond it are shown as well. */
    private static List<Run> plan(TrialStatus trial) {
        List<Run> runs = new ArrayList<>();
        for (TrialStatus.Run run : trial.runs()) {
            runs.add(
                    new Run(run.changed() ? "B" : "A", "stint " + run.stint() + ", " + run.goodLaps() + " laps", true));
        }
        String plan = trial.trial().plan();
        for (int i = runs.size(); i < plan.length(); i++) {
            runs.add(new Run(plan.substring(i, i + 1), trial.trial().lapsARun() + " laps still to drive", false));
        }
        return runs;
    }
}
