package setwright.core.replay;

import java.util.Optional;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;

/**
 * Corners taken together.
 *
 * @param phase       the phase of each
 * @param speedClass  corners of this class; empty for all
 */
public record Pool(Phase phase, Optional<SpeedClass> speedClass) {
    /** Returns all corners in a phase. */
    public static Pool all(Phase phase) {
        return new Pool(phase, Optional.empty());
    }

    /** Returns the corners of a class in a phase. */
    public static Pool of(Phase phase, SpeedClass speedClass) {
        return new Pool(phase, Optional.of(speedClass));
    }

    /** Tells whether corners of a class are among them. */
    public boolean takes(SpeedClass other) {
        return speedClass.isEmpty() || speedClass.get() == other;
    }
}
