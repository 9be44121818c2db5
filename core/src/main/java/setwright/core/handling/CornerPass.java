package setwright.core.handling;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One lap through one corner: the row of the evidence table.
 *
 * @param lap             lap number
 * @param corner          corner number
 * @param speedClass      how much the air matters there
 * @param events          where the driver did what
 * @param phases          balance by phase; a phase that did not occur is absent
 * @param hands           what the hands did that the corner alone does not explain, in driving order
 * @param entrySpeedMps   speed at the turn-in, m/s
 * @param lowestSpeedMps  lowest speed in the corner, m/s
 * @param exitSpeedMps    speed at the end of the exit, m/s
 * @param timeS           time from the corner's start to its end, s
 * @param brakeAtTurnIn   brake at turn-in as a share of its peak in this corner, 0..1
 */
public record CornerPass(
        int lap,
        int corner,
        SpeedClass speedClass,
        CornerEvents events,
        Map<Phase, PhaseBalance> phases,
        List<HandsEvent> hands,
        double entrySpeedMps,
        double lowestSpeedMps,
        double exitSpeedMps,
        double timeS,
        double brakeAtTurnIn) {
    public CornerPass {
        phases = Map.copyOf(phases);
        hands = List.copyOf(hands);
    }

    /** Returns the balance in a phase, when the pass had that phase. */
    public Optional<PhaseBalance> phase(Phase phase) {
        return Optional.ofNullable(phases.get(phase));
    }
}
