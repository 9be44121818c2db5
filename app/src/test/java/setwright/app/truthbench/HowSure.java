package setwright.app.truthbench;

import java.util.List;
import java.util.stream.Stream;
import setwright.core.judgement.Finding;

/** Whether the probabilities of the answers mean what they say: first findings of steady drivers. */
final class HowSure {
    private static final double[] FINDINGS = {0.0, 0.65, 0.8, 0.95, 1.0};

    private HowSure() {}

    /**
     * How sure a finding is that the car, or the driver, differs that way at all: right where the true problem, a weak one
     * too, is of the same axle; wrong in cars in good order.
     */
    static Reliability findings(List<Outcome> outcomes) {
        return new Reliability(
                steady(outcomes)
                        .flatMap(outcome -> outcome.top().stream()
                                .map(finding -> new Stated(finding.probability(), ofTheAxle(outcome, finding))))
                        .toList(),
                FINDINGS);
    }

    /** How sure the trigger of a finding of the right axle is, where the histories bear the mechanism's out. */
    static Reliability triggers(List<Outcome> outcomes) {
        return new Reliability(
                steady(outcomes)
                        .filter(outcome -> outcome.signRight() && outcome.triggerSeen())
                        .flatMap(outcome -> outcome.top().stream()
                                .map(finding -> new Stated(
                                        finding.triggers().getOrDefault(finding.trigger(), 0.0),
                                        outcome.triggerRight())))
                        .toList(),
                TriggerCalibration.EDGES);
    }

    private static Stream<Outcome> steady(List<Outcome> outcomes) {
        return outcomes.stream().filter(outcome -> outcome.driving().consistent());
    }

    private static boolean ofTheAxle(Outcome outcome, Finding finding) {
        return outcome.problem()
                .filter(problem -> problem.sign() == finding.balance())
                .isPresent();
    }
}
