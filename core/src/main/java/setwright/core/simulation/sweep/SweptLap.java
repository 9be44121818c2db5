package setwright.core.simulation.sweep;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A lap in one setup.
 *
 * @param values      of the swept items, in their order
 * @param timeS       lap time, s
 * @param lowestMps   lowest speed, m/s
 * @param highestMps  highest speed, m/s
 * @param frontShare  share of the lap time for which the front axle limits, 0..1
 * @param rearShare   the rear axle
 * @param engineShare the engine
 * @param corners     in driving order
 */
public record SweptLap(
        List<Double> values,
        double timeS,
        double lowestMps,
        double highestMps,
        double frontShare,
        double rearShare,
        double engineShare,
        List<SweptCorner> corners) {
    public SweptLap {
        values = List.copyOf(values);
        corners = List.copyOf(corners);
    }

    /** Returns the mean balance of these corners, rad; empty when there are none. */
    public OptionalDouble balanceRad(Set<Integer> numbers) {
        return corners.stream()
                .filter(corner -> numbers.contains(corner.number()))
                .mapToDouble(SweptCorner::balanceRad)
                .average();
    }

    /** Returns the mean lowest speed of these corners, m/s; empty when there are none. */
    public OptionalDouble lowestMps(Set<Integer> numbers) {
        return corners.stream()
                .filter(corner -> numbers.contains(corner.number()))
                .mapToDouble(SweptCorner::lowestMps)
                .average();
    }
}
