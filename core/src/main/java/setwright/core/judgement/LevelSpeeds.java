package setwright.core.judgement;

import java.util.List;
import java.util.Optional;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceBelief.Estimate;
import setwright.core.standing.SetupStanding;

/** Tells at which speeds the level of a phase counts where the car is reckoned: in all corners, or at one end only. */
final class LevelSpeeds {
    /** One end of the speeds with less than this share of the other's is not part of the problem (our choice). */
    private static final double ONE_END = 0.4;

    private final List<CornerPass> passes;
    private final BalanceBelief belief;
    private final SetupStanding standing;

    LevelSpeeds(List<CornerPass> passes, BalanceBelief belief, SetupStanding standing) {
        this.passes = passes;
        this.belief = belief;
        this.standing = standing;
    }

    /** Returns whether the level of a phase grows with the square of the speed; empty with too few corners to tell. */
    Optional<SpeedDependence> dependence(Phase phase) {
        return belief.at(phase, SpeedRange.ALL)
                .flatMap(level -> SpeedSlope.of(passes, standing, phase, level))
                .map(SpeedSlope::dependence);
    }

    /** Returns them: all corners, unless one end shows much less than the other, or the slope over v² says why. */
    SpeedRange of(Phase phase) {
        Optional<Estimate> low = belief.at(phase, SpeedRange.LOW);
        Optional<Estimate> high = belief.at(phase, SpeedRange.HIGH);
        SpeedRange range = SpeedRange.ALL;
        if (low.isPresent() && high.isPresent()) {
            double slow = low.get().meanRad();
            double fast = high.get().meanRad();
            boolean fastMore = Math.abs(fast) > Math.abs(slow);
            // an end where the tyres are worked less shows less of the same fault
            double share = Math.max(
                    share(slow, fast),
                    share(belief.atTheLimit(phase, SpeedRange.LOW), belief.atTheLimit(phase, SpeedRange.HIGH)));
            range = share >= ONE_END ? SpeedRange.ALL : fastMore ? SpeedRange.HIGH : SpeedRange.LOW;
        }
        SpeedDependence.Kind kind = dependence(phase).map(SpeedDependence::kind).orElse(SpeedDependence.Kind.OPEN);
        if (kind == SpeedDependence.Kind.AERODYNAMIC && goesAlong(phase, high)) {
            range = SpeedRange.HIGH;
        } else if (kind == SpeedDependence.Kind.MECHANICAL && range == SpeedRange.HIGH) {
            range = SpeedRange.ALL;
        }
        return range;
    }

    /** Tells whether the fast corners show what the whole phase shows. */
    private boolean goesAlong(Phase phase, Optional<Estimate> high) {
        return high.isPresent()
                && belief.at(phase, SpeedRange.ALL)
                        .filter(all -> all.meanRad() * high.get().meanRad() > 0.0)
                        .isPresent();
    }

    /** The smaller of two over the larger; negative when they go different ways. */
    private static double share(double one, double other) {
        return Math.abs(one) > Math.abs(other) ? other / one : one / other;
    }
}
