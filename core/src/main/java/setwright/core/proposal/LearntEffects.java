package setwright.core.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import setwright.core.car.SetupChange;
import setwright.core.numerics.NormalBelief;
import setwright.core.replay.Effect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

/*
 * Design note. The replay's interval is the prior; each measured effect of the same item, brought to the size asked for, is a datum:
 * normal with known variance (Gelman et al., Bayesian Data Analysis, 3rd edition, section 2.5). What was measured on one day does not
 * hold to the digit on another, and a step is not half of two steps: both are added to its variance. Corners and curves over the lap stay
 * as the replay has them; only pooled figures were ever measured.
 */

/** What was learnt about a car from changes that were tried: draws predictions toward it. */
public final class LearntEffects {
    private static final LearntEffects NONE = new LearntEffects(List.of());
    /** Standard deviation of an effect from one day to another, as a share of itself (our choice: tyres, circuit and temperature differ). */
    private static final double OTHER_DAY = 0.2;
    /** The same for a size twice or half as large: most items act in proportion only nearly (our choice). */
    private static final double OTHER_SIZE = 0.2;
    /**
     * A replay that seems sure may still be off by this share of itself: its draws vary what is not known of the car, not what the model
     * leaves out (our choice).
     */
    private static final double MODEL = 0.25;

    private final List<MeasuredEffect> measured;

    private LearntEffects(List<MeasuredEffect> measured) {
        this.measured = List.copyOf(measured);
    }

    /** Returns what is known of a car on which nothing was tried. */
    public static LearntEffects none() {
        return NONE;
    }

    /** Returns what tried changes tell. */
    public static LearntEffects of(List<MeasuredEffect> measured) {
        return new LearntEffects(measured);
    }

    /**
     * Draws a prediction toward what was measured.
     *
     * @return the same where nothing of the kind was measured, or where several items are turned together
     */
    public Prediction update(Prediction prediction) {
        if (!tellOf(prediction)) {
            return prediction;
        }
        SetupChange change = prediction.changes().get(0);
        List<String> learnt = new ArrayList<>();
        List<PhaseEffect> phases = new ArrayList<>();
        for (PhaseEffect phase : prediction.phases()) {
            Effect updated = update(change, Optional.of(new Pool(phase.phase(), phase.speedClass())), phase.balance());
            phases.add(new PhaseEffect(phase.phase(), phase.speedClass(), updated));
            if (!updated.equals(phase.balance())) {
                learnt.add(words(
                        place(phase),
                        phase.balance().times(Math.toDegrees(1.0)),
                        updated.times(Math.toDegrees(1.0)),
                        "deg"));
            }
        }
        Effect time = update(change, Optional.empty(), prediction.lapTimeS());
        if (!time.equals(prediction.lapTimeS())) {
            learnt.add(words("lap time", prediction.lapTimeS(), time, "s"));
        }
        List<String> reasons = new ArrayList<>(prediction.reasons());
        if (!learnt.isEmpty()) {
            reasons.add("learnt from " + change.item() + " being tried on this car: " + String.join("; ", learnt));
        }
        return new Prediction(
                prediction.changes(),
                prediction.corners(),
                phases,
                time,
                prediction.selectivity(),
                prediction.lap(),
                reasons,
                prediction.doubts());
    }

    /**
     * Returns by how much quicker a lap becomes than predicted once what was measured is counted, s; 0 where nothing was.
     *
     * @param answer  puts the driver's answer into a replayed prediction
     */
    double quickerS(Prediction replayed, UnaryOperator<Prediction> answer) {
        if (!tellOf(replayed)) {
            return 0.0;
        }
        Prediction answered = answer.apply(replayed);
        return answered.lapTimeS().central() - update(answered).lapTimeS().central();
    }

    private boolean tellOf(Prediction prediction) {
        return prediction.changes().size() == 1
                && measured.stream()
                        .anyMatch(effect -> effect.change()
                                .item()
                                .equals(prediction.changes().get(0).item()));
    }

    private Effect update(SetupChange change, Optional<Pool> pool, Effect predicted) {
        NormalBelief belief = belief(predicted);
        boolean any = false;
        for (MeasuredEffect effect : measured) {
            if (effect.change().item().equals(change.item()) && effect.pool().equals(pool)) {
                double times = effect.times(change);
                double value = times * effect.value();
                double size = Math.abs(Math.log(Math.abs(times)) / Math.log(2.0));
                double error = Math.hypot(times * effect.error(), Math.hypot(OTHER_DAY, OTHER_SIZE * size) * value);
                belief = belief.given(value, error);
                any = true;
            }
        }
        return any ? Effect.normal(belief.mean(), belief.deviation()) : predicted;
    }

    /** A replay in which an item does nothing at all does not know it. */
    private static NormalBelief belief(Effect predicted) {
        double deviation = Math.hypot(predicted.deviation(), MODEL * predicted.central());
        return deviation > 0.0 ? new NormalBelief(predicted.central(), deviation) : NormalBelief.nothing();
    }

    private static String place(PhaseEffect effect) {
        return effect.phase().words()
                + effect.speedClass()
                        .map(speed -> ", " + speed.words() + " speed")
                        .orElse("");
    }

    private static String words(String what, Effect before, Effect after, String unit) {
        return String.format(
                Locale.ROOT,
                "%s %+.2f %s where the replay alone says %+.2f",
                what,
                after.central(),
                unit,
                before.central());
    }
}
