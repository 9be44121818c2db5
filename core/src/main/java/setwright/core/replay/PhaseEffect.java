package setwright.core.replay;

import java.util.Optional;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;

/**
 * A change of balance pooled over corners.
 *
 * @param phase       in which phase
 * @param speedClass  in corners of this class; empty for all corners
 * @param balance     change of the balance angle, rad; positive: toward understeer
 */
public record PhaseEffect(Phase phase, Optional<SpeedClass> speedClass, Effect balance) {}
