package setwright.core.judgement.driving;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.LostTime;

/**
 * Where the driver's time lies.
 *
 * @param corners  one entry per judged corner, in order
 * @param lap      what every corner driven as in the better quarter of his own laps would gain a lap; empty with too few laps
 * @param first    places to work on first, most time first, at most three
 */
public record DrivingReview(List<AtCorner> corners, Optional<LostTime> lap, List<Place> first) {
    public DrivingReview {
        corners = List.copyOf(corners);
        first = List.copyOf(first);
    }

    /** Returns the entry of a corner, when it has been judged. */
    public Optional<AtCorner> at(int corner) {
        return corners.stream().filter(entry -> entry.corner() == corner).findFirst();
    }

    /**
     * One corner.
     *
     * @param corner              number
     * @param passes              judged passes
     * @param smallestBalanceRad  smallest change of balance that could be told here, rad; infinite with too few passes
     * @param smallestTimeS       smallest change of corner time, s; likewise
     * @param typicalTimeS        what one typical setup change makes here, s
     * @param lapsNeeded          laps from which on that change could be told in balance and time; empty beyond a hundred
     * @param spread              what driving it as in the better quarter of the laps would gain; empty with too few passes
     * @param event               the event that scatters most against this driver's other corners; empty when none can be compared
     */
    public record AtCorner(
            int corner,
            int passes,
            double smallestBalanceRad,
            double smallestTimeS,
            double typicalTimeS,
            OptionalInt lapsNeeded,
            Optional<LostTime> spread,
            Optional<MovingEvent> event) {}

    /**
     * A place to work on.
     *
     * @param corner  number
     * @param cost    what the laps show that it is worth
     * @param event   that moves there; empty when none stands out
     * @param faults  that show there
     */
    public record Place(int corner, LostTime cost, Optional<MovingEvent> event, List<DrivingFault> faults) {
        public Place {
            faults = List.copyOf(faults);
        }
    }
}
