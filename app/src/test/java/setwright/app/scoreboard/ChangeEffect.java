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
    /** What is clear lies beyond so many standard deviations of the noise. */
    static final double STANDARD_DEVIATIONS = 2.0;
    /** Within so many, either way, lie four fifths of a normal distribution. */
    private static final double FOUR_FIFTHS = 1.28;

    boolean clear() {
        return Math.abs(truth) > clearAbove;
    }

    /** Returns the middle of the answer; NaN without one. */
    double central() {
        return answer.map(Effect::central).orElse(Double.NaN);
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

    /** Tells whether the true effect lies within the answer's interval, as well as its own noise lets that be seen. */
    boolean inside() {
        return answer.filter(effect -> {
                    double reach = truth > effect.central()
                            ? effect.high() - effect.central()
                            : effect.central() - effect.low();
                    double noise = FOUR_FIFTHS * clearAbove / STANDARD_DEVIATIONS;
                    return Math.abs(truth - effect.central()) <= Math.hypot(reach, noise);
                })
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
