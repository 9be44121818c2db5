package setwright.core.judgement;

import java.util.List;
import java.util.Map;

/**
 * How alike the laps are, and what could be told from them.
 *
 * @param repeatable           whether the driving as a whole is steady enough to judge the car
 * @param lapTimeScatterS      robust standard deviation of the judged laps' times, s
 * @param smallestTimeS        smallest difference of lap time that these laps could show against as many others
 *                             (80 % power, 5 % level), s
 * @param smallestBalanceRad   smallest change of balance that they could show, rad
 * @param stepBalanceRad       what one typical setup change does to the balance, rad: the yardstick
 * @param corners              one entry per corner, in order
 * @param why                  the verdict in one sentence with its figures
 */
public record Repeatability(
        boolean repeatable,
        double lapTimeScatterS,
        double smallestTimeS,
        double smallestBalanceRad,
        double stepBalanceRad,
        List<AtCorner> corners,
        String why) {
    public Repeatability {
        corners = List.copyOf(corners);
    }

    /** Returns the entry of a corner, when it has been judged. */
    public java.util.Optional<AtCorner> at(int corner) {
        return corners.stream().filter(entry -> entry.corner() == corner).findFirst();
    }

    /** What is measured over the laps at a corner. */
    public enum Measure {
        BRAKE_POINT("brake point", "m"),
        TURN_IN("turn-in", "m"),
        BRAKE_OFF("brake release", "m"),
        THROTTLE_PICK_UP("throttle pick-up", "m"),
        LOWEST_SPEED("lowest speed", "km/h"),
        LINE("line", "m"),
        BRAKE_SHAPE("brake shape", "%"),
        THROTTLE_SHAPE("throttle shape", "%");

        private final String words;
        private final String unit;

        Measure(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        /** Returns the words a person reads. */
        public String words() {
            return words;
        }

        /** Returns the unit that scatter is given in. */
        public String unit() {
            return unit;
        }
    }

    /**
     * Repeatability at one corner.
     *
     * @param corner              corner number
     * @param repeatable          whether the car may be judged here
     * @param worst               the measure that scatters most for its kind
     * @param scatter             robust standard deviation of each measure, in the measure's unit; absent when the corner
     *                            has no such event
     * @param passes              number of judged passes
     * @param smallestBalanceRad  smallest change of balance that could be told here, rad
     * @param smallestTimeS       smallest change of corner time that could be told here, s
     * @param why                 why the car may not be judged here, with the figure; empty when it may
     */
    public record AtCorner(
            int corner,
            boolean repeatable,
            Measure worst,
            Map<Measure, Double> scatter,
            int passes,
            double smallestBalanceRad,
            double smallestTimeS,
            String why) {
        public AtCorner {
            scatter = Map.copyOf(scatter);
        }
    }
}
