package setwright.core.limit;

/**
 * What a car can do at each speed: accelerations along and across its path that tyres and engine allow together. Left and right are
 * alike, so that lateral accelerations count without sign. Immutable; threads may share it.
 *
 * <p>Without banks and slopes. A car keeps its speed at zero acceleration along, so that {@link #brakingMps2} is below and {@link
 * #tractionMps2} above zero up to the lateral acceleration {@link #corneringMps2}.
 */
public interface GripEnvelope {

    /** Returns the mass, kg. */
    double massKg();

    /** Returns the speed at which the engine can do no more than hold it, straight ahead, m/s. */
    double topSpeedMps();

    /** Returns the greatest lateral acceleration at constant speed that the tyres allow, m/s². */
    double corneringMps2(double speedMps);

    /**
     * Returns the hardest braking, m/s², negative.
     *
     * @param lateralMps2  m/s², &gt;= 0; beyond the greatest it is taken as that
     */
    double brakingMps2(double speedMps, double lateralMps2);

    /** Returns the hardest acceleration that the tyres allow, m/s². */
    double tractionMps2(double speedMps, double lateralMps2);

    /** Returns the hardest acceleration that the engine allows, against air, rolling and slip angles, m/s²; may be negative. */
    double powerMps2(double speedMps, double lateralMps2);

    /** Returns the hardest acceleration, m/s². */
    default double drivingMps2(double speedMps, double lateralMps2) {
        return Math.min(tractionMps2(speedMps, lateralMps2), powerMps2(speedMps, lateralMps2));
    }

    /**
     * Returns the car at these accelerations; beyond the envelope, at its edge.
     *
     * @param forwardMps2  along the path, m/s²
     * @param lateralMps2  across it, m/s², &gt;= 0
     */
    CarState at(double speedMps, double forwardMps2, double lateralMps2);
}
