package setwright.core.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The gearing against the engine's limiter.
 *
 * @param onLimiter     true: on the limiter in top gear before the brakes; false: never near it
 * @param topGear       number
 * @param highestShare  greatest engine speed in top gear over the limit
 * @param places        where the limiter was held, the longest first; empty when never near
 * @param limitMps      road speed at the limiter as geared
 * @param newLimitMps   road speed at the limiter with the move; empty without one
 * @param laps          that show it
 * @param corners       that the straights lead to
 * @param move          of the final drive
 */
public record GearingAdvice(
        boolean onLimiter,
        int topGear,
        double highestShare,
        List<Place> places,
        double limitMps,
        OptionalDouble newLimitMps,
        List<Integer> laps,
        List<Integer> corners,
        Optional<Move> move)
        implements Advice {
    public GearingAdvice {
        places = List.copyOf(places);
        laps = List.copyOf(laps);
        corners = List.copyOf(corners);
    }

    /**
     * One straight.
     *
     * @param corner    that it leads to
     * @param stationM  where the limiter is met, median, m along the reference line
     * @param seconds   held in a lap, median, s
     * @param laps      number that show it
     */
    public record Place(int corner, double stationM, double seconds, int laps) {}

    @Override
    public Topic topic() {
        return Topic.GEARING;
    }
}
