package setwright.core.replay;

import java.util.Map;
import java.util.Optional;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;

/**
 * What a change does in one corner.
 *
 * @param corner      number
 * @param speedClass  how much the air matters there
 * @param balance     change of the balance angle by phase, rad; positive: toward understeer; a phase in which the car hardly
 *                    corners is absent
 * @param timeS       change of the time from the corner's start to the next one's, s; negative: quicker
 */
public record CornerEffect(int corner, SpeedClass speedClass, Map<Phase, Effect> balance, Effect timeS) {
    public CornerEffect {
        balance = Map.copyOf(balance);
    }

    /** Returns the change of balance in a phase, rad. */
    public Optional<Effect> balance(Phase phase) {
        return Optional.ofNullable(balance.get(phase));
    }
}
