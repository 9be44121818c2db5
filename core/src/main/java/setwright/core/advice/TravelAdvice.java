package setwright.core.advice;

import java.util.List;
import java.util.Optional;

/**
 * An axle that comes to the end of its travel.
 *
 * @param front       the front axle; else the rear
 * @param end         what it meets
 * @param mostM       greatest compression beyond rest that was seen, m
 * @param roomM       compression at which the end is met, m
 * @param secondsLap  time beyond it, s a lap in the mean
 * @param laps        that show it
 * @param corners     that show it
 * @param move        of the ride height, two steps up
 */
public record TravelAdvice(
        boolean front,
        End end,
        double mostM,
        double roomM,
        double secondsLap,
        List<Integer> laps,
        List<Integer> corners,
        Optional<Move> move)
        implements Advice {
    public TravelAdvice {
        laps = List.copyOf(laps);
        corners = List.copyOf(corners);
    }

    /** What the travel ends at. */
    public enum End {
        GROUND,
        BUMP_STOP,
        /** A stop that the sheet does not give: the travel is cut off at the same value time and again. */
        UNKNOWN_STOP
    }

    @Override
    public Topic topic() {
        return Topic.RIDE_HEIGHT;
    }
}
