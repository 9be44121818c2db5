package setwright.core.proposal;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Candidate.PoolGain;

/** A phase elsewhere that gets worse by more than the target gets better. */
final class Harm {
    private Harm() {}

    /**
     * Returns why a change is not to be made; empty when it helps more than it harms anywhere.
     *
     * @param gains   of the change
     * @param target  the finding that it is for
     */
    static Optional<String> of(List<PoolGain> gains, Finding target) {
        double gained = gains.stream()
                .filter(gain -> in(target, gain))
                .mapToDouble(PoolGain::gainS)
                .sum();
        return gains.stream()
                .filter(gain -> !in(target, gain) && -gain.gainS() > Math.max(gained, 0.0))
                .min(Comparator.comparingDouble(PoolGain::gainS))
                .map(gain -> String.format(
                        Locale.ROOT,
                        "it would upset the balance %s in %s corners more than it helps",
                        gain.pool().phase().place(),
                        gain.pool().speedClass().map(SpeedClass::words).orElse("all")));
    }

    private static boolean in(Finding target, PoolGain gain) {
        return gain.pool().phase() == target.phase()
                && gain.pool().speedClass().filter(target.speed()::takes).isPresent();
    }
}
