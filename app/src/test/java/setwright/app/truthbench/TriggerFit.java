package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import setwright.core.judgement.Trigger;
import setwright.core.judgement.TriggerEvidence.Witness;

/** Fits how much a witness counts: greatest likelihood with a ridge of unit spread about 1, the witness taken at its word. */
final class TriggerFit {
    private static final double MOST = 5.0;
    private static final double TOLERANCE = 1.0e-6;
    private static final int EVALUATIONS = 200;

    private TriggerFit() {}

    /** Returns the cases in which a witness speaks. */
    static List<TriggerCase> heard(List<TriggerCase> cases, Witness witness) {
        return cases.stream()
                .filter(each -> each.evidence().shares().containsKey(witness))
                .toList();
    }

    /** Returns the weight of a witness heard alone. */
    static double weight(List<TriggerCase> cases, Witness witness) {
        return new BrentOptimizer(TOLERANCE, TOLERANCE)
                .optimize(
                        new UnivariateObjectiveFunction(weight -> logPosterior(cases, witness, weight)),
                        GoalType.MAXIMIZE,
                        new SearchInterval(0.0, MOST),
                        new MaxEval(EVALUATIONS))
                .getPoint();
    }

    private static double logPosterior(List<TriggerCase> cases, Witness witness, double weight) {
        double sum = -0.5 * (weight - 1.0) * (weight - 1.0);
        for (TriggerCase each : cases) {
            sum += Math.log(
                    each.evidence().probabilities(Map.of(witness, weight)).getOrDefault(each.truth(), 0.0));
        }
        return sum;
    }

    /** Returns how sure each case is told by a fit on the others, and whether the mechanism's trigger is named. */
    static List<Stated> crossValidated(List<TriggerCase> cases, Witness witness) {
        List<Stated> named = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            TriggerCase each = cases.get(i);
            List<TriggerCase> others = new ArrayList<>(cases);
            others.remove(i);
            Map<Trigger, Double> answer = each.evidence().probabilities(Map.of(witness, weight(others, witness)));
            Map.Entry<Trigger, Double> first =
                    answer.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow();
            named.add(new Stated(first.getValue(), first.getKey() == each.truth()));
        }
        return named;
    }
}
