package setwright.core.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import setwright.core.handling.Phase;
import setwright.core.judgement.Yardstick;
import setwright.core.recording.Channel;
import setwright.core.replay.CornerEffect;
import setwright.core.replay.Effect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/*
 * Design note. A replay keeps the driver's line and speed profile but for its margin. A driver who feels the front give in gives it
 * less to do, and does so the more the larger the change: of a tenth of a degree that the replay promises about half is seen in
 * the laps that he then drives, of half a degree a third. Share and size are the least absolute errors of 2,900 true changes of balance of
 * seven cars made by another simulation, in which a driver learns each car anew (docs/prediction.md, section 4). Leaving each car out
 * in turn the share lies between 0.55 and 0.7 and the size between 0.35 and 0.56 degrees.
 */

/** What is left of a replayed change of balance in the laps of a driver who answers it. */
final class BalanceAnswer {
    /** Share of a small change that is seen. */
    private static final double SHARE = 0.6;
    /** Size of a replayed change of which only half as much is seen, rad. */
    private static final double SIZE_RAD = Yardstick.BALANCE_RAD;
    /** Standard deviation of true changes about it, as a share of it. */
    private static final double SPREAD = 0.8;
    /** What a replay cannot see, rad: where it promises nothing, true changes scatter by so much beyond their noise. */
    private static final double UNSEEN_RAD = Math.toRadians(0.02);
    /** One clear sign in twelve is the other way round, however sure the replay is. */
    private static final double SIGN_HOLDS = 0.92;

    /** Replayed changes beyond so many sizes are not told apart: nine tenths of the most is seen of them. */
    private static final double LARGEST = 9.0;

    private BalanceAnswer() {}

    /** Returns what is seen of a replayed change, rad. */
    static double seen(double replayedRad) {
        return SHARE * replayedRad / (1.0 + Math.abs(replayedRad) / SIZE_RAD);
    }

    /** Returns the replayed change of which so much is seen, rad; of what is larger than any is, the largest that is told apart. */
    static double behind(double seenRad) {
        double size = Math.abs(seenRad);
        double most = LARGEST * SIZE_RAD;
        double replayed = size < seen(most) ? size / (SHARE - size / SIZE_RAD) : most;
        return Math.copySign(replayed, seenRad);
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
        double left = central == 0.0 ? SHARE : central / replayed.central();
        double doubt = Math.hypot(SPREAD * central, UNSEEN_RAD);
        if (Double.isNaN(central)) {
            return replayed;
        }
        Effect about = Effect.normal(central, Math.hypot(doubt, left * replayed.deviation()));
        double positive = SIGN_HOLDS * replayed.probabilityPositive()
                + (1.0 - SIGN_HOLDS) * (1.0 - replayed.probabilityPositive());
        return new Effect(central, about.low(), about.high(), positive);
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
