package setwright.core.proposal;

import java.util.Optional;
import setwright.core.car.SetupChange;
import setwright.core.replay.Pool;

/**
 * What a change did on this car when it was tried back to back.
 *
 * @param change  that was tried, of one item
 * @param pool    phase and class of corners whose balance was measured; empty for the lap time
 * @param value   changed less unchanged, rad or s
 * @param error   its standard error, run-to-run scatter included, rad or s, &gt; 0
 */
public record MeasuredEffect(SetupChange change, Optional<Pool> pool, double value, double error) {
    public MeasuredEffect {
        if (change.from() == change.to()) {
            throw new IllegalArgumentException("nothing was changed: " + change);
        }
        if (!Double.isFinite(value) || !(error > 0.0) || !Double.isFinite(error)) {
            throw new IllegalArgumentException(
                    "a measured effect needs a value and an error above 0, got " + value + " and " + error);
        }
    }

    /** Returns how many times as far another value of the same item goes, with sign; 1 for the same change. */
    double times(SetupChange other) {
        return (other.to() - other.from()) / (change.to() - change.from());
    }
}
