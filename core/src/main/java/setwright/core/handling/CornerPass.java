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
 * @param turnInTimeS     when the wheel was turned in, s since the start of the recording
 * @param phases          balance by phase; a phase that did not occur is absent
 * @param slides          moments when an axle let go, in driving order
 * @param hands           what the hands did that the corner alone does not explain, in driving order
 * @param habits          what the feet did
 * @param shapes          speed, pedals and line over the corner
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
        double turnInTimeS,
        Map<Phase, PhaseBalance> phases,
        List<Slide> slides,
        List<HandsEvent> hands,
        Habits habits,
        PassShapes shapes,
        double entrySpeedMps,
        double lowestSpeedMps,
        double exitSpeedMps,
        double timeS,
        double brakeAtTurnIn) {
    public CornerPass {
        phases = Map.copyOf(phases);
        slides = List.copyOf(slides);
        hands = List.copyOf(hands);
    }

    /** Returns the balance in a phase, when the pass had that phase. */
    public Optional<PhaseBalance> phase(Phase phase) {
        return Optional.ofNullable(phases.get(phase));
    }

    /** Tells whether an axle let go in a phase. */
    public boolean slides(Slide.Axle axle, Phase phase) {
        return slides.stream().anyMatch(slide -> slide.axle() == axle && slide.phase() == phase);
    }

    CornerPass in(SpeedClass newClass) {
        return copy(newClass, phases, hands);
    }

    /** Returns the same pass with other gestures of the hands. */
    public CornerPass with(List<HandsEvent> newHands) {
        return copy(speedClass, phases, newHands);
    }

    /** Returns the same pass with other balances. */
    public CornerPass with(Map<Phase, PhaseBalance> newPhases) {
        return copy(speedClass, newPhases, hands);
    }

    private CornerPass copy(SpeedClass newClass, Map<Phase, PhaseBalance> newPhases, List<HandsEvent> newHands) {
        return new CornerPass(
                lap,
                corner,
                newClass,
                events,
                turnInTimeS,
                newPhases,
                slides,
                newHands,
                habits,
                shapes,
                entrySpeedMps,
                lowestSpeedMps,
                exitSpeedMps,
                timeS,
                brakeAtTurnIn);
    }
}
