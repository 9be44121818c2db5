package setwright.core.judgement;

import java.util.Collection;

/**
 * Time lost a lap, with its 95 % interval.
 *
 * @param seconds  best estimate, s
 * @param low      lower end, s
 * @param high     upper end, s
 */
public record LostTime(double seconds, double low, double high) {

    /** Returns the sum of independent costs: deviations add by their squares. */
    public static LostTime sum(Collection<LostTime> parts) {
        double seconds = 0.0;
        double below = 0.0;
        double above = 0.0;
        for (LostTime part : parts) {
            seconds += part.seconds;
            below += Math.pow(part.seconds - part.low, 2);
            above += Math.pow(part.high - part.seconds, 2);
        }
        return new LostTime(seconds, seconds - Math.sqrt(below), seconds + Math.sqrt(above));
    }
}
