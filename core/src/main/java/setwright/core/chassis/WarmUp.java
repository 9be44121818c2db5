package setwright.core.chassis;

import java.util.List;

/**
 * How tyres come to temperature: {@code T(t) = end - rise exp(-t / tau)}, by the means of laps.
 *
 * @param endK       temperature that they come to, K
 * @param riseK      how much was missing at the start of the first lap, K
 * @param tauS       time in which 63 % of the way is done, s
 * @param tauLowS    lower end of its 95 % interval
 * @param tauHighS   upper end; infinite where the laps do not settle it
 * @param steadyLap  first lap from which less than 2 K are missing
 * @param lapsUntil  laps before it
 * @param laps       used, in driving order, those put aside included
 * @param meansK     of all four tyres in each of them, K
 */
public record WarmUp(
        double endK,
        double riseK,
        double tauS,
        double tauLowS,
        double tauHighS,
        int steadyLap,
        int lapsUntil,
        List<Integer> laps,
        List<Double> meansK) {
    public WarmUp {
        laps = List.copyOf(laps);
        meansK = List.copyOf(meansK);
    }
}
