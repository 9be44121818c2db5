package setwright.app.scoreboard;

import java.util.Optional;
import setwright.core.replay.Effect;

/**
 * One true effect of a change of setup beside the predicted one.
 *
 * @param change      what was turned
 * @param where       cell of the balance table, or the lap
 * @param truth       deg, or s for the lap
 * @param clearAbove  size beyond which the true effect is clear of its noise, in the same unit
 * @param answer      as predicted, in the same unit; empty when nothing is said
 */
record ChangeEffect(Truth.Change change, String where, double truth, double clearAbove, Optional<Effect> answer) {

    boolean clear() {
        return Math.abs(truth) > clearAbove;
    }

    /** Tells whether the answer has the true sign; an answer of exactly nothing has none. */
    boolean right() {
        return answer.filter(effect -> effect.central() * truth > 0.0).isPresent();
    }

    /** Tells whether the answer claims to know the sign. */
    boolean claimed() {
        return answer.filter(effect -> effect.signSure() && effect.central() != 0.0)
                .isPresent();
    }

    /** Returns how bad a wrong sign is: how clear the truth is, times how sure the answer was. */
    double weight() {
        return Math.abs(truth)
                / clearAbove
                * answer.map(Effect::probabilityOfSign).orElse(0.5);
    }

    Count count() {
        return Count.of(right());
    }
}
