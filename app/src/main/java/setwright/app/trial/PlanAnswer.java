package setwright.app.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.evidence.Answer;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.ItemRange;
import setwright.core.car.setup.SetupDifference;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.trial.PlannedTrial;
import setwright.core.trial.PlannedTrial.Expected;
import setwright.core.trial.TrialTarget;

/**
 * How a change is to be tried.
 *
 * @param answer    the laps judged
 * @param changes   what is to be changed; empty when nothing is
 * @param together  why several items belong together; empty for one
 * @param expected  of the change; empty when it is not known
 * @param plans     with what they would show; empty with too few laps
 * @param opened    the trial that was opened for it in a logbook
 */
public record PlanAnswer(
        Answer answer,
        List<SetupDifference> changes,
        Optional<String> together,
        Optional<Expected> expected,
        List<PlannedTrial> plans,
        Optional<Opened> opened) {
    /**
     * A trial in a logbook.
     *
     * @param number  of the trial
     * @param order   of its runs, such as {@code ABA}
     * @param laps    of each run
     */
    public record Opened(long number, String order, int laps) {}

    public PlanAnswer {
        changes = List.copyOf(changes);
        plans = List.copyOf(plans);
    }

    /** Plans the trial of what is proposed; where nothing is, of any change. */
    public static PlanAnswer of(Answer answer, Proposal proposal) {
        Optional<Candidate> chosen = proposal.chosen();
        return of(
                answer,
                chosen.map(candidate -> List.of(change(candidate))).orElse(List.of()),
                Optional.empty(),
                chosen.map(candidate -> new Expected(
                        candidate.prediction().lapTimeS().central(),
                        OptionalDouble.of(candidate.target().central()))));
    }

    /** Plans the trial of a change. */
    public static PlanAnswer of(
            Answer answer, List<SetupDifference> changes, Optional<String> together, Optional<Expected> expected) {
        return new PlanAnswer(
                answer,
                changes,
                together,
                expected,
                PlannedTrial.of(answer.diagnosis(), TrialTarget.of(answer.diagnosis()), expected),
                Optional.empty());
    }

    /** Returns the same with the trial that was opened for it. */
    public PlanAnswer opened(Opened trial) {
        return new PlanAnswer(answer, changes, together, expected, plans, Optional.of(trial));
    }

    private static SetupDifference change(Candidate candidate) {
        SetupItem item = candidate.turn().item();
        return new SetupDifference(
                item.name(),
                ItemRange.plain(item.value()),
                ItemRange.plain(candidate.turn().to()),
                item.unit());
    }
}
