package setwright.core.simulation.truth;

import java.util.List;

/**
 * What a fault really costs: mean flying lap with it less mean flying lap without.
 *
 * @param seconds  a lap, s; negative when the faulty car is quicker
 * @param errorS   its standard error from the scatter of the laps, s
 */
public record TruePrice(double seconds, double errorS) {

    /**
     * Compares two stints of the same driver with the same random numbers.
     *
     * @param faultyS    lap times, the out lap first, s
     * @param balancedS  lap times, the out lap first, s
     */
    public static TruePrice of(List<Double> faultyS, List<Double> balancedS) {
        List<Integer> both = FlyingLaps.clean(faultyS).stream()
                .filter(FlyingLaps.clean(balancedS)::contains)
                .toList();
        // the same lap of both was driven in the same mood: pairs tell more than means
        Moments differences = Moments.of(both.stream()
                .mapToDouble(lap -> faultyS.get(lap) - balancedS.get(lap))
                .toArray());
        return new TruePrice(differences.mean(), differences.error());
    }
}
