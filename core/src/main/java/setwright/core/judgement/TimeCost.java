package setwright.core.judgement;

import java.util.Collection;

/**
 * Time lost a lap, with its 95 % interval.
 *
 * @param seconds  best estimate, s
 * @param low      lower end, s
 * @param high     upper end, s
 */
public record TimeCost(double seconds, double low, double high) {

    /** Returns the sum of independent costs: deviations add by their squares. */
    public static TimeCost sum(Collection<TimeCost> parts) {
        double seconds = 0.0;
        double below = 0.0;
        double above = 0.0;
        for (TimeCost part : parts) {
            seconds += part.seconds;
            below += Math.pow(part.seconds - part.low, 2);
            above += Math.pow(part.high - part.seconds, 2);
        }
        return new TimeCost(seconds, seconds - Math.sqrt(below), seconds + Math.sqrt(above));
    }
}
