package setwright.app.demo;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;

/**
 * The change that helps a finding most, weighed as the method asks: what it does to the target, times how sure that is, less what it
 * moves elsewhere. A change that surely makes the lap slower is none.
 *
 * @param prediction  of the change
 * @param target      predicted change of the target's balance, rad, understeer positive
 */
public record ChangeChoice(Prediction prediction, Effect target) {
    /** A degree moved where nothing was wrong weighs this much of one that was wanted (own choice). */
    private static final double HARM = 0.3;

    /** Returns the best first; empty when none moves the target as wanted. */
    static List<ChangeChoice> rank(List<Prediction> predictions, Finding finding) {
        double wanted = Target.of(finding).wanted();
        return predictions.stream()
                .filter(prediction -> !surelySlower(prediction))
                .map(prediction -> finding.moved(prediction).map(effect -> new ChangeChoice(prediction, effect)))
                .flatMap(Optional::stream)
                .filter(choice -> choice.score(finding, wanted) > 0.0)
                .sorted(Comparator.comparingDouble((ChangeChoice choice) -> -choice.score(finding, wanted)))
                .toList();
    }

    private static boolean surelySlower(Prediction prediction) {
        return prediction.lapTimeS().signSure() && prediction.lapTimeS().central() > 0.0;
    }

    private double score(Finding finding, double wanted) {
        double moved = wanted * target.central() * target.probabilityOfSign();
        double elsewhere = 0.0;
        for (Phase phase : Phase.values()) {
            if (phase != finding.phase()) {
                elsewhere += prediction
                        .balance(phase, Optional.empty())
                        .map(effect -> Math.abs(effect.central()))
                        .orElse(0.0);
            }
        }
        return moved - HARM * elsewhere / (Phase.values().length - 1);
    }
}
