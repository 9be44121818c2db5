package setwright.app.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupDifference;
import setwright.core.trial.RunConditions;
import setwright.intake.problem.InputProblem;

/**
 * What was changed between runs.
 *
 * @param changes  against the setup of the first run
 * @param changed  for each run, whether it had them
 */
public record TrialChanges(List<SetupDifference> changes, List<Boolean> changed) {
    public TrialChanges {
        changes = List.copyOf(changes);
        changed = List.copyOf(changed);
    }

    /** Returns which run comes first without the change: the laps that it was made after. */
    public int firstWithout() {
        return changed.indexOf(false);
    }

    /**
     * The setup of a run.
     *
     * @param where  it is from, for messages
     * @param car    the sheet with that setup
     */
    public record RunSetup(String where, CarSheet car) {
        /** Returns what the sheet tells of the run besides the setup: the fuel at its start, unless that is assumed. */
        public RunConditions conditions() {
            return new RunConditions(
                    car.assumes("fuel_start_kg") ? OptionalDouble.empty() : OptionalDouble.of(car.fuelStartKg()),
                    OptionalInt.empty(),
                    OptionalDouble.empty());
        }
    }

    /**
     * Reads from the setups what was changed, and in which runs.
     *
     * @param runs      in the order in which they were driven
     * @param together  why several items were changed at once; empty when only one may have been
     * @throws InputProblem when there is no change, a third setup, or more than one item changed without a reason
     */
    public static TrialChanges of(List<RunSetup> runs, Optional<String> together) {
        List<Boolean> changed = new ArrayList<>();
        List<SetupDifference> changes = List.of();
        for (RunSetup run : runs) {
            List<SetupDifference> here = SetupDifference.between(runs.get(0).car(), run.car());
            changed.add(!here.isEmpty());
            if (!here.isEmpty() && !changes.isEmpty() && !here.equals(changes)) {
                throw InputProblem.in(run.where())
                        .expected("the first setup or the one that is tried")
                        .found("a third one: " + words(here))
                        .advice("Judge two setups at a time.")
                        .problem();
            }
            changes = here.isEmpty() ? changes : here;
        }
        if (changes.isEmpty()) {
            throw InputProblem.in(runs.get(runs.size() - 1).where())
                    .expected("a setup that differs from that of the first run")
                    .found("the same values throughout")
                    .advice("Give each run the car sheet that it was driven with.")
                    .problem();
        }
        oneOrTogether(runs.get(changed.indexOf(true)).where(), changes, together);
        return new TrialChanges(changes, changed);
    }

    /**
     * Refuses several changes at once that nobody says belong together.
     *
     * @param where  the second setup is from
     */
    public static void oneOrTogether(String where, List<SetupDifference> changes, Optional<String> together) {
        if (changes.size() > 1 && together.isEmpty()) {
            throw InputProblem.in(where)
                    .expected("one changed item")
                    .found(changes.size() + ": " + words(changes))
                    .advice(
                            "Of several changes nobody can say which one did it. Change one at a time; where the car or the"
                                    + " rules force these together, say why with --together.")
                    .problem();
        }
    }

    /** Returns changes in words, without units. */
    public static String words(List<SetupDifference> changes) {
        return changes.stream()
                .map(change -> change.item() + " " + change.from() + " to " + change.to())
                .collect(Collectors.joining(", "));
    }
}
