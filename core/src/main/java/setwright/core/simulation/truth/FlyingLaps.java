package setwright.core.simulation.truth;

import java.util.ArrayList;
import java.util.List;
import setwright.core.numerics.Robust;

/** Which laps of a stint count: the out lap never, and none with a mistake. */
public final class FlyingLaps {
    /** A lap that loses more than this share, and more than {@link #DEVIATIONS}, holds a mistake (common practice). */
    private static final double MISTAKE_SHARE = 0.02;

    private static final double DEVIATIONS = 4.0;

    private FlyingLaps() {}

    /**
     * Returns the indices of the flying laps without a mistake, ascending.
     *
     * @param lapsS  times of all laps, the out lap first, s
     */
    public static List<Integer> clean(List<Double> lapsS) {
        if (lapsS.size() < 2) {
            return List.of();
        }
        double[] flying =
                lapsS.stream().skip(1).mapToDouble(Double::doubleValue).toArray();
        double median = Robust.median(flying);
        double deviation = Robust.scaledMad(flying);
        double most = Math.max(MISTAKE_SHARE * median, DEVIATIONS * deviation);
        List<Integer> clean = new ArrayList<>();
        for (int i = 0; i < flying.length; i++) {
            if (flying[i] - median <= most) {
                clean.add(i + 1);
            }
        }
        return clean;
    }
}
