package setwright.core.slip;

import java.util.List;

/**
 * Wheels that locked or spun in the judged laps, and what could be seen of such at all.
 *
 * @param locksSeen   whether locks could be seen: it takes a speed of every wheel
 * @param spinSeen    whether wheelspin could be seen: wheel speeds, or engine speed with the gear
 * @param insideSeen  whether spin of one wheel could be told from spin of both: it takes wheel speeds
 * @param events      in driving order
 */
public record WheelEvidence(boolean locksSeen, boolean spinSeen, boolean insideSeen, List<WheelEvent> events) {
    public WheelEvidence {
        events = List.copyOf(events);
    }
}
