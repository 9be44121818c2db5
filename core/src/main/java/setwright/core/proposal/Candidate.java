package setwright.core.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.handling.Phase;
import setwright.core.replay.Effect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

/**
 * One change with what speaks for and against it.
 *
 * @param turn        the item turned
 * @param prediction  what it would have done on the laps
 * @param target      change of the balance that was found wrong, rad; positive: toward understeer
 * @param towardCure  probability that it moves that balance the right way, 0..1
 * @param gains       expected gain of time by balance alone, for each phase and class of corners
 * @param score       what it is worth, s a lap: what the lap is expected to gain by it, harm elsewhere taken off
 * @param refused     why it is not to be made; empty when nothing speaks against it
 */
public record Candidate(
        Turn turn,
        Prediction prediction,
        Effect target,
        double towardCure,
        List<PoolGain> gains,
        double score,
        List<Refusal> refused) {
    public Candidate {
        gains = List.copyOf(gains);
        refused = List.copyOf(refused);
    }

    /**
     * What a change gains in one phase of one class of corners.
     *
     * @param pool   phase and class
     * @param gainS  expected, s a lap; negative: harm
     */
    public record PoolGain(Pool pool, double gainS) {}

    /** Returns whether nothing speaks against it. */
    public boolean allowed() {
        return refused.isEmpty();
    }

    /** Returns why it is not to be made, one plain sentence each without capital and full stop. */
    public List<String> objections() {
        return refused.stream().map(Refusal::words).toList();
    }

    /** Returns whether it may be made and is worth something. */
    boolean worthMaking() {
        return allowed() && score > 0.0;
    }

    /** Returns it with one more reason why it is not to be made. */
    Candidate refusedToo(Refusal reason) {
        List<Refusal> reasons = new ArrayList<>(refused);
        reasons.add(reason);
        return new Candidate(turn, prediction, target, towardCure, gains, score, reasons);
    }

    /** Returns the share of its whole effect on the balance that falls into a phase of all corners, 0..1; measured, not a label. */
    public Optional<Double> selectivity(Phase phase) {
        for (int i = 0; i < prediction.phases().size(); i++) {
            if (prediction.phases().get(i).phase() == phase
                    && prediction.phases().get(i).speedClass().isEmpty()) {
                return Optional.of(prediction.selectivity().get(i));
            }
        }
        return Optional.empty();
    }
}
