package setwright.core.simulation.truth;

import java.util.Map;
import java.util.Optional;
import setwright.core.circuit.Corner;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;

/**
 * Where the phases of a corner lie, from the driver's usual events.
 *
 * @param corner     of the circuit
 * @param speed      class by the mean lowest speed
 * @param lowestMps  mean lowest speed, m/s
 * @param phases     those that there are
 * @param events     where the driver usually did what
 */
public record CornerPhases(
        Corner corner, SpeedClass speed, double lowestMps, Map<Phase, Span> phases, CornerPhases.Events events) {
    public CornerPhases {
        phases = Map.copyOf(phases);
    }

    /** Returns where a phase lies. */
    public Optional<Span> span(Phase phase) {
        return Optional.ofNullable(phases.get(phase));
    }

    /**
     * A stretch of the lap.
     *
     * @param fromM  m, negative before the start line
     * @param toM    m
     */
    public record Span(double fromM, double toM) {}

    /**
     * Medians over the laps, m; NaN when most laps have no such event.
     */
    public record Events(double brakeOn, double turnIn, double brakeOff, double pickUp, double straight) {}
}
