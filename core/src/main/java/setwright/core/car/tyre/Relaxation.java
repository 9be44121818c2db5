package setwright.core.car.tyre;

/**
 * The distance a tyre needs to build up its force: {@code sigma dF/ds + F = F_steady}, exact for a steady force that holds
 * over each step.
 *
 * <p>Source: H. B. Pacejka, Tire and Vehicle Dynamics, first-order relaxation, from memory. It serves for the slip angle
 * as well as for the force.
 *
 * @param lengthM  relaxation length sigma, m, &gt; 0; 0.3 to 0.7 for car tyres (common practice, from memory)
 */
public record Relaxation(double lengthM) {

    /** @throws IllegalArgumentException if the length is not within 0.001..10 m */
    public Relaxation {
        Range.check("relaxation length of a tyre, m", lengthM, 1.0e-3, 10.0);
    }

    /** Returns the time constant at a speed in m/s, s. */
    public double timeConstantS(double speedMps) {
        return lengthM / speedMps;
    }

    /**
     * Returns the value after rolling on.
     *
     * @param now        value before, in any unit
     * @param steady     value it tends to
     * @param distanceM  distance rolled, m, &gt;= 0
     */
    public double after(double now, double steady, double distanceM) {
        return steady + (now - steady) * Math.exp(-distanceM / lengthM);
    }
}
