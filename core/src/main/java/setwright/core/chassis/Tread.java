package setwright.core.chassis;

import java.util.List;

/**
 * Temperatures across the tyres, means of laps at steady temperature.
 *
 * @param wheels  in the order of {@link Wheel}; those without all three temperatures are absent
 * @param laps    used
 */
public record Tread(List<OfWheel> wheels, List<Integer> laps) {
    public Tread {
        wheels = List.copyOf(wheels);
        laps = List.copyOf(laps);
    }

    /** What a spread says (common practice). */
    public enum Says {
        NOTHING,
        /** The middle is hotter than the edges: pressure high. */
        PRESSURE_HIGH,
        /** The edges are hotter than the middle: pressure low. */
        PRESSURE_LOW,
        /** The inner edge is much hotter than the outer: much negative camber. */
        CAMBER_MUCH,
        /** The outer edge is hotter than the inner: little negative camber. */
        CAMBER_LITTLE
    }

    /**
     * One tyre.
     *
     * @param wheel      which
     * @param innerK     mean, K
     * @param middleK    mean, K
     * @param outerK     mean, K
     * @param innerOver  inner less outer, K
     * @param middleOver middle less the mean of inner and outer, K
     * @param camber     what inner and outer say
     * @param pressure   what the middle says
     */
    public record OfWheel(
            Wheel wheel,
            double innerK,
            double middleK,
            double outerK,
            LapInterval innerOver,
            LapInterval middleOver,
            Says camber,
            Says pressure) {}
}
