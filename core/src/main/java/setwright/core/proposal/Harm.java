package setwright.core.proposal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Candidate.PoolGain;
import setwright.core.proposal.Refusal.Figure;
import setwright.core.proposal.Refusal.Kind;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;

/** A phase elsewhere that gets worse by more than the target gets better. */
final class Harm {
    private static final double SHOWN_S = 0.0005;
    private static final double SHOWN_DEG = 0.005;

    private Harm() {}

    /**
     * Returns why a change is not to be made; empty when it helps more than it harms anywhere.
     *
     * @param gains       of the change
     * @param prediction  of the change, as it is shown
     * @param target      the finding that it is for
     */
    static Optional<Refusal> of(List<PoolGain> gains, Prediction prediction, Finding target) {
        double gained = gains.stream()
                .filter(gain -> in(target, gain))
                .mapToDouble(PoolGain::gainS)
                .sum();
        return gains.stream()
                .filter(gain -> !in(target, gain) && -gain.gainS() > Math.max(gained, 0.0))
                .min(Comparator.comparingDouble(PoolGain::gainS))
                .map(gain -> refusal(gain, gained, prediction));
    }

    private static Refusal refusal(PoolGain harmed, double gained, Prediction prediction) {
        double moved = Math.toDegrees(prediction
                .balance(harmed.pool().phase(), harmed.pool().speedClass())
                .map(Effect::central)
                .orElse(Double.NaN));
        String place = Refusal.text(
                "%s in %s-speed corners",
                harmed.pool().phase().place(),
                harmed.pool().speedClass().map(SpeedClass::words).orElse("all"));
        String gains = gained >= SHOWN_S ? Refusal.text("%.3f s", gained) : "nothing that shows";
        String words = -harmed.gainS() < SHOWN_S || Math.abs(moved) < SHOWN_DEG
                ? Refusal.text("the target gains %s, and the balance %s gets a little worse", gains, place)
                : Refusal.text(
                        "it would upset the balance %s%s: by balance alone that costs %.3f s a lap, and the target gains %s",
                        place,
                        Double.isFinite(moved)
                                ? Refusal.text(
                                        " by %.2f deg toward %s",
                                        Math.abs(moved), moved > 0.0 ? "understeer" : "oversteer")
                                : "",
                        -harmed.gainS(),
                        gains);
        return Refusal.at(
                harmed.pool(),
                Kind.HARM,
                words,
                new Figure("harm_balance_deg", moved),
                new Figure("harm_s", -harmed.gainS()),
                new Figure("target_gain_s", gained));
    }

    private static boolean in(Finding target, PoolGain gain) {
        return gain.pool().phase() == target.phase()
                && gain.pool().speedClass().filter(target.speed()::takes).isPresent();
    }
}
