package setwright.core.limit;

import setwright.core.car.sums.Gravity;

/**
 * The simplest envelope: a point on a friction circle that grows with downforce, with drag and a constant power. All wheels brake and
 * drive.
 *
 * <p>{@code m a <= mu (m g + c_z v^2)} for the tyres' force, of which drag is a part when the speed is held (textbook model; D. Casanova,
 * "On minimum time vehicle manoeuvring", PhD thesis, Cranfield 2000, calls it the point mass).
 *
 * @param massKg         kg, &gt; 0
 * @param friction       of the tyres, &gt; 0
 * @param powerW         at the wheels, W; may be infinite
 * @param dragFactor     drag over speed squared, N s²/m²
 * @param liftFactor     downforce over speed squared, N s²/m²
 * @param rollingShare   rolling resistance over weight
 */
public record PointMassEnvelope(
        double massKg, double friction, double powerW, double dragFactor, double liftFactor, double rollingShare)
        implements GripEnvelope {
    private static final double FASTEST = 150.0;
    private static final int BISECTIONS = 60;

    /** A car without rolling resistance. */
    public PointMassEnvelope(double massKg, double friction, double powerW, double dragFactor, double liftFactor) {
        this(massKg, friction, powerW, dragFactor, liftFactor, 0.0);
    }

    /** {@inheritDoc} Where power and drag set none, 150 m/s. */
    @Override
    public double topSpeedMps() {
        double low = 0.0;
        double high = FASTEST;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (resistanceN(middle) * middle <= powerW) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Override
    public double corneringMps2(double speedMps) {
        double drag = resistanceN(speedMps) / massKg;
        double grip = gripMps2(speedMps);
        return Math.sqrt(Math.max(grip * grip - drag * drag, 0.0));
    }

    @Override
    public double brakingMps2(double speedMps, double lateralMps2) {
        return -left(speedMps, lateralMps2) - resistanceN(speedMps) / massKg;
    }

    @Override
    public double tractionMps2(double speedMps, double lateralMps2) {
        return left(speedMps, lateralMps2) - resistanceN(speedMps) / massKg;
    }

    @Override
    public double powerMps2(double speedMps, double lateralMps2) {
        return (powerW / Math.max(speedMps, 0.1) - resistanceN(speedMps)) / massKg;
    }

    @Override
    public CarState at(double speedMps, double forwardMps2, double lateralMps2) {
        double drag = dragFactor * speedMps * speedMps;
        double rolling = rollingShare * massKg * Gravity.STANDARD_MPS2;
        double tyres = massKg * forwardMps2 + drag + rolling;
        double grip = gripMps2(speedMps);
        double along = Math.min(Math.abs(tyres) / massKg / grip, 1.0);
        double most = grip * Math.sqrt(1.0 - along * along);
        return new CarState(
                0.0,
                0.0,
                most > 0.0 ? Math.min(lateralMps2 / most, 1.0) : 1.0,
                LimitedBy.ALL_TYRES,
                0,
                Math.max(tyres, 0.0),
                Math.max(-tyres, 0.0),
                drag,
                rolling,
                0.0);
    }

    /** Acceleration that the tyres can give in any direction. */
    private double gripMps2(double speedMps) {
        return friction * (Gravity.STANDARD_MPS2 + liftFactor * speedMps * speedMps / massKg);
    }

    private double left(double speedMps, double lateralMps2) {
        double grip = gripMps2(speedMps);
        return Math.sqrt(Math.max(grip * grip - lateralMps2 * lateralMps2, 0.0));
    }

    private double resistanceN(double speedMps) {
        return dragFactor * speedMps * speedMps + rollingShare * massKg * Gravity.STANDARD_MPS2;
    }
}
