package setwright.core.chassis;

import java.util.List;

/**
 * How fast the dampers move, as shares of the time of the judged laps.
 *
 * @param rateHz     samples a second
 * @param windowS    that the derivative of the travel was taken over, s
 * @param bandHz     up to which motion is seen with 0.7 of its size or more
 * @param wheelHop   whether that reaches the hop of the wheels; without it the fast end of the histogram is cut off
 * @param edgesMps   of the bins, ascending; the first and last bin are open beyond the first and last edge
 * @param wheels     in the order of {@link Wheel}
 * @param contrasts  between wheels
 * @param laps       judged
 */
public record DamperMotion(
        double rateHz,
        double windowS,
        double bandHz,
        boolean wheelHop,
        List<Double> edgesMps,
        List<OfWheel> wheels,
        List<Contrast> contrasts,
        List<Integer> laps) {
    public DamperMotion {
        edgesMps = List.copyOf(edgesMps);
        wheels = List.copyOf(wheels);
        contrasts = List.copyOf(contrasts);
        laps = List.copyOf(laps);
    }

    /**
     * One damper. Shares add up to 1.
     *
     * @param wheel        which
     * @param kneeMps      damper speed between low and high, m/s
     * @param kneeOfSheet  whether the sheet says so
     * @param shares       of the bins, in the mean of the laps; one more than edges
     * @param lowBump      share of the time slower than the knee, in bump
     * @param lowRebound   the same in rebound
     * @param highBump     faster than the knee, in bump
     * @param highRebound  the same in rebound
     * @param lean         share of bump less that of rebound: not zero where one way is faster than the other
     * @param highLean     the same of what is faster than the knee
     * @param rmsMps       root of the mean square of the speed, m/s
     */
    public record OfWheel(
            Wheel wheel,
            double kneeMps,
            boolean kneeOfSheet,
            List<Double> shares,
            LapInterval lowBump,
            LapInterval lowRebound,
            LapInterval highBump,
            LapInterval highRebound,
            LapInterval lean,
            LapInterval highLean,
            LapInterval rmsMps) {
        public OfWheel {
            shares = List.copyOf(shares);
        }

        /** Tells whether bump and rebound cannot be told apart: neither in all, nor in what is fast. */
        public boolean symmetric() {
            return !(lean.above(0.0) || lean.below(0.0) || highLean.above(0.0) || highLean.below(0.0));
        }
    }

    /**
     * What one side or end has more than the other, lap by lap.
     *
     * @param what       the two, such as {@code left less right at the front}
     * @param highShare  share faster than the knee, of the first less the second
     * @param rmsMps     root of the mean square of the speed, m/s, likewise
     */
    public record Contrast(String what, LapInterval highShare, LapInterval rmsMps) {}
}
