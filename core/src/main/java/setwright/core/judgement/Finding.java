package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import setwright.core.handling.Phase;
import setwright.core.replay.Effect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

/**
 * One problem that repeats.
 *
 * @param phase         where in the corner
 * @param speed         in which corners it counts
 * @param balance       which axle gives up first
 * @param trigger       the most probable input that sets it off
 * @param triggers      probability of each trigger, adding up to 1
 * @param cause         the car or the driver
 * @param corners       corner numbers that show it, ascending
 * @param lapShare      share of the judged laps through these corners that show it, 0..1
 * @param lapWide       whether it holds round the lap rather than in one corner
 * @param probability   that it is real, 0..1
 * @param sizeRad       mean excess balance angle, rad, &gt;= 0
 * @param sizeLowRad    lower end of its 95 % interval, rad
 * @param sizeHighRad   upper end, rad
 * @param price         what it costs a lap
 * @param dependence    how it changes with speed; empty where too few corners tell
 * @param why           the chain of reasons, one plain sentence each, with its figures
 */
public record Finding(
        Phase phase,
        SpeedRange speed,
        BalanceSign balance,
        Trigger trigger,
        Map<Trigger, Double> triggers,
        Cause cause,
        List<Integer> corners,
        double lapShare,
        boolean lapWide,
        double probability,
        double sizeRad,
        double sizeLowRad,
        double sizeHighRad,
        Price price,
        Optional<SpeedDependence> dependence,
        List<String> why) {
    public Finding {
        triggers = Map.copyOf(triggers);
        corners = List.copyOf(corners);
        why = List.copyOf(why);
    }

    /** A problem of which nothing is known of how it changes with speed. */
    public Finding(
            Phase phase,
            SpeedRange speed,
            BalanceSign balance,
            Trigger trigger,
            Map<Trigger, Double> triggers,
            Cause cause,
            List<Integer> corners,
            double lapShare,
            boolean lapWide,
            double probability,
            double sizeRad,
            double sizeLowRad,
            double sizeHighRad,
            Price price,
            List<String> why) {
        this(
                phase,
                speed,
                balance,
                trigger,
                triggers,
                cause,
                corners,
                lapShare,
                lapWide,
                probability,
                sizeRad,
                sizeLowRad,
                sizeHighRad,
                price,
                Optional.empty(),
                why);
    }

    /** Returns the phase and corners where it counts, for what a replay or a setup says of them. */
    public Pool pool() {
        return speed.pool(phase);
    }

    /** Returns what a change does to the balance there; in all corners where the laps have none of these speeds. */
    public Optional<Effect> moved(Prediction change) {
        return change.moved(pool());
    }

    /** Tells whether another is about the same movements of the car, whoever makes them. */
    boolean isSamePattern(Finding other) {
        return phase == other.phase
                && speed == other.speed
                && balance == other.balance
                && corners.equals(other.corners)
                && sizeRad == other.sizeRad
                && probability == other.probability;
    }

    /** Returns the same problem as the driver's doing, with one more reason. */
    Finding ofTheDriver(String reason) {
        return with(Cause.DRIVER, price, reason);
    }

    /** Returns the same problem at another price, with one more reason. */
    Finding costing(Price other, String reason) {
        return with(cause, other, reason);
    }

    private Finding with(Cause otherCause, Price otherPrice, String reason) {
        List<String> reasons = new ArrayList<>(why);
        reasons.add(reason);
        return new Finding(
                phase,
                speed,
                balance,
                trigger,
                triggers,
                otherCause,
                corners,
                lapShare,
                lapWide,
                probability,
                sizeRad,
                sizeLowRad,
                sizeHighRad,
                otherPrice,
                dependence,
                reasons);
    }

    /** Who or what makes it. */
    public enum Cause {
        CAR("car"),
        DRIVER("driver");

        private final String words;

        Cause(String words) {
            this.words = words;
        }

        /** Returns the word a person reads; also the value in JSON. */
        public String words() {
            return words;
        }
    }

    /**
     * Time lost a lap.
     *
     * @param seconds  best estimate, s; below zero where the laps are quicker than in the baseline all the same
     * @param low      lower end of the 90 % interval, s
     * @param high     upper end, s
     */
    public record Price(double seconds, double low, double high) {
        /** Tells whether the laps are quicker in spite of it, beyond chance. */
        public boolean isGain() {
            return high < 0.0;
        }

        /** Tells whether the laps do not show that it costs anything, nor that they gain. */
        public boolean isNoLoss() {
            return seconds < 0.0 && !isGain();
        }

        /** Returns it as {@code 0.52 s a lap (0.31 to 0.73)}. */
        String words() {
            if (isGain()) {
                return String.format(
                        Locale.ROOT,
                        "the laps are %.2f s quicker than in the baseline all the same (%.2f to %.2f)",
                        -seconds,
                        -high,
                        -low);
            }
            return isNoLoss()
                    ? String.format(Locale.ROOT, "no loss of time that shows (%.2f to %.2f)", low, high)
                    : String.format(Locale.ROOT, "%.2f s a lap (%.2f to %.2f)", seconds, low, high);
        }
    }
}
