package setwright.core.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import setwright.core.handling.Phase;
import setwright.core.recording.Channel;
import setwright.core.replay.CornerEffect;
import setwright.core.replay.Effect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/*
 * Design note. A replay keeps the driver's line and speed profile but for its margin; a driver answers a change. How, two simulations in
 * which drivers learn each car anew do not agree on: in one he gives a front that gives in less to do, and half of what the replay says is
 * seen (2,900 changes of seven cars), in the other, whose drivers lean on what they feel, all of it, and of wings and ride heights twice that
 * (31 proposals of the truth bench's tuning seeds). Which of them is more like a driver nobody knows. So what lies between is told, and the
 * interval holds both (docs/prediction.md, section 4). Trials tell of this driver (LearntEffects).
 */

/** What is left of a replayed change of balance in the laps of a driver who answers it. */
final class BalanceAnswer {
    /** Share of a replayed change that is seen. */
    private static final double SHARE = 0.7;
    /** Standard deviation of true changes that are less than that, as a share of it. */
    private static final double SHORT = 1.0;
    /** The same of those that are more. */
    private static final double BEYOND = 2.0;
    /** What a replay cannot see, rad: where it promises nothing, true changes scatter by so much beyond their noise. */
    private static final double UNSEEN_RAD = Math.toRadians(0.02);
    /** One clear sign in twelve is the other way round, however sure the replay is. */
    private static final double SIGN_HOLDS = 0.92;

    private BalanceAnswer() {}

    /** Returns what is seen of a replayed change, rad. */
    static double seen(double replayedRad) {
        return SHARE * replayedRad;
    }

    /** Returns the replayed change of which so much is seen, rad. */
    static double behind(double seenRad) {
        return seenRad / SHARE;
    }

    /**
     * Returns a replayed prediction as it would have been had it promised what was learnt since.
     *
     * @param learnt  with the driver's answer in it
     */
    static Prediction behind(Prediction replayed, Prediction learnt) {
        List<PhaseEffect> phases = new ArrayList<>();
        for (int i = 0; i < replayed.phases().size(); i++) {
            PhaseEffect before = replayed.phases().get(i);
            Effect now = learnt.phases().get(i).balance();
            boolean same = to(before).balance().equals(now);
            phases.add(
                    same
                            ? before
                            : new PhaseEffect(
                                    before.phase(),
                                    before.speedClass(),
                                    Effect.normal(behind(now.central()), now.deviation() / SHARE)));
        }
        return new Prediction(
                replayed.changes(),
                replayed.corners(),
                phases,
                replayed.lapTimeS(),
                replayed.selectivity(),
                replayed.lap(),
                replayed.reasons(),
                replayed.doubts());
    }

    /** Returns a replayed change of balance with the driver's answer. */
    static Effect to(Effect replayed) {
        double central = seen(replayed.central());
        if (Double.isNaN(central)) {
            return replayed;
        }
        Effect less = about(central, SHORT, replayed);
        Effect more = about(central, BEYOND, replayed);
        double positive = SIGN_HOLDS * replayed.probabilityPositive()
                + (1.0 - SIGN_HOLDS) * (1.0 - replayed.probabilityPositive());
        return central < 0.0
                ? new Effect(central, more.low(), less.high(), positive)
                : new Effect(central, less.low(), more.high(), positive);
    }

    private static Effect about(double central, double spread, Effect replayed) {
        double doubt = Math.hypot(spread * central, UNSEEN_RAD);
        return Effect.normal(central, Math.hypot(doubt, SHARE * replayed.deviation()));
    }

    /** Returns the same for each phase of a corner. */
    static Map<Phase, Effect> to(CornerEffect corner) {
        Map<Phase, Effect> answered = new HashMap<>();
        corner.balance().forEach((phase, effect) -> answered.put(phase, to(effect)));
        return answered;
    }

    /** Returns the same for a phase of several corners. */
    static PhaseEffect to(PhaseEffect pooled) {
        return new PhaseEffect(pooled.phase(), pooled.speedClass(), to(pooled.balance()));
    }

    /** Returns the same along a lap: the middle, and the ends of the interval. */
    static Curves to(Channel balance, Channel low, Channel high) {
        int count = balance.size();
        double[] middle = new double[count];
        double[] lower = new double[count];
        double[] upper = new double[count];
        for (int i = 0; i < count; i++) {
            Effect answered = to(new Effect(balance.get(i), low.get(i), high.get(i), 0.5));
            middle[i] = answered.central();
            lower[i] = answered.low();
            upper[i] = answered.high();
        }
        return new Curves(Channel.of(middle), Channel.of(lower), Channel.of(upper));
    }

    /** Balance along a lap, rad. */
    record Curves(Channel balance, Channel low, Channel high) {}
}
