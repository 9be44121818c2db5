package setwright.core.car.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.complex.Complex;

/**
 * The linear single-track car at constant speed, in closed form: what a non-linear car must come down to in gentle driving.
 * <pre>
 * m v (beta' + r) = F_f + F_r,   I_z r' = a F_f - b F_r
 * F_f = C_f (delta - beta - a r / v),   F_r = C_r (b r / v - beta)
 * </pre>
 * Left turn positive, slip angles with the sign of their force. Valid for small angles, linear tyres (below about 4 m/s2 on
 * a road car) and no load transfer.
 *
 * <p>Source: the equations are those of any textbook (W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics, SAE
 * 1995, ch. 5; H. B. Pacejka, Tire and Vehicle Dynamics, ch. 1; both from memory); every formula below follows from them.
 *
 * @param massKg                 m, kg, &gt; 0
 * @param yawInertiaKgM2         I_z about the centre of gravity, kg m2, &gt; 0
 * @param frontArmM              a, centre of gravity to front axle, m, &gt; 0
 * @param rearArmM               b, centre of gravity to rear axle, m, &gt; 0
 * @param frontStiffnessNPerRad  C_f, both front tyres together, N/rad, &gt; 0
 * @param rearStiffnessNPerRad   C_r, both rear tyres together, N/rad, &gt; 0
 */
public record SingleTrack(
        double massKg,
        double yawInertiaKgM2,
        double frontArmM,
        double rearArmM,
        double frontStiffnessNPerRad,
        double rearStiffnessNPerRad) {

    /** @throws IllegalArgumentException if a value is not positive and finite */
    public SingleTrack {
        check("mass, kg", massKg);
        check("yaw inertia, kg m2", yawInertiaKgM2);
        check("distance from centre of gravity to front axle, m", frontArmM);
        check("distance from centre of gravity to rear axle, m", rearArmM);
        check("front axle's cornering stiffness, N/rad", frontStiffnessNPerRad);
        check("rear axle's cornering stiffness, N/rad", rearStiffnessNPerRad);
    }

    private static void check(String what, double value) {
        if (!(value > 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be above 0 and finite, got " + value);
        }
    }

    /** Returns L, m. */
    public double wheelbaseM() {
        return frontArmM + rearArmM;
    }

    /** Returns {@code K = (m / L)(b / C_f - a / C_r)}, rad per m/s2 of lateral acceleration; positive understeers. */
    public double understeerGradient() {
        return massKg / wheelbaseM() * (rearArmM / frontStiffnessNPerRad - frontArmM / rearStiffnessNPerRad);
    }

    /** Returns {@code A = K / L}, s2/m2: steady steer is {@code (L / R)(1 + A v^2)}. */
    public double stabilityFactor() {
        return understeerGradient() / wheelbaseM();
    }

    /** Returns the speed of greatest yaw gain, {@code sqrt(L / K)}, m/s; none for a car that does not understeer. */
    public OptionalDouble characteristicSpeedMps() {
        double gradient = understeerGradient();
        return gradient > 0.0 ? OptionalDouble.of(Math.sqrt(wheelbaseM() / gradient)) : OptionalDouble.empty();
    }

    /** Returns the speed above which the car is unstable, {@code sqrt(-L / K)}, m/s; none unless it oversteers. */
    public OptionalDouble criticalSpeedMps() {
        double gradient = understeerGradient();
        return gradient < 0.0 ? OptionalDouble.of(Math.sqrt(-wheelbaseM() / gradient)) : OptionalDouble.empty();
    }

    /** Returns steady yaw rate over road-wheel angle, 1/s: {@code v / (L + K v^2)}; negative above the critical speed. */
    public double yawGain(double speedMps) {
        return speedMps / effectiveLength(speedMps);
    }

    /** Returns steady lateral acceleration over road-wheel angle, m/s2 per rad. */
    public double lateralGain(double speedMps) {
        return speedMps * yawGain(speedMps);
    }

    /** Returns steady sideslip angle over road-wheel angle, rad/rad. */
    public double sideslipGain(double speedMps) {
        double rearSlip = frontArmM * massKg * speedMps * speedMps / (wheelbaseM() * rearStiffnessNPerRad);
        return (rearArmM - rearSlip) / effectiveLength(speedMps);
    }

    /** Returns the steady road-wheel angle on a circle, rad: {@code L / R + K v^2 / R}. */
    public double steerAngle(double radiusM, double speedMps) {
        return effectiveLength(speedMps) / radiusM;
    }

    /** Returns the steady sideslip angle on a circle, rad, positive when the nose points out of the turn. */
    public double sideslip(double radiusM, double speedMps) {
        return sideslipGain(speedMps) * steerAngle(radiusM, speedMps);
    }

    /** Returns the speed at which the sideslip angle changes sign, m/s. */
    public double speedWithoutSideslipMps() {
        return Math.sqrt(rearArmM * wheelbaseM() * rearStiffnessNPerRad / (frontArmM * massKg));
    }

    /** Returns how far behind the front axle a side force moves the car without turning it, m. */
    public double neutralSteerPointM() {
        return rearStiffnessNPerRad * wheelbaseM() / (frontStiffnessNPerRad + rearStiffnessNPerRad);
    }

    /** Returns how far the neutral steer point is behind the centre of gravity, over the wheelbase; positive understeers. */
    public double staticMargin() {
        return (neutralSteerPointM() - frontArmM) / wheelbaseM();
    }

    /**
     * Returns the square of the natural frequency, rad2/s2; negative above the critical speed.
     *
     * @param speedMps  m/s, &gt; 0
     */
    public double naturalFrequencySquared(double speedMps) {
        return frontStiffnessNPerRad
                * rearStiffnessNPerRad
                * wheelbaseM()
                * effectiveLength(speedMps)
                / (massKg * yawInertiaKgM2 * speedMps * speedMps);
    }

    /** Returns {@code zeta w_n}, how fast free motion dies, 1/s; positive at any speed. */
    public double decayRate(double speedMps) {
        double sideways = (frontStiffnessNPerRad + rearStiffnessNPerRad) / massKg;
        double turning = (frontArmM * frontArmM * frontStiffnessNPerRad + rearArmM * rearArmM * rearStiffnessNPerRad)
                / yawInertiaKgM2;
        return 0.5 * (sideways + turning) / speedMps;
    }

    /** Returns the natural frequency w_n, rad/s; none at or above the critical speed. */
    public OptionalDouble naturalFrequency(double speedMps) {
        double square = naturalFrequencySquared(speedMps);
        return square > 0.0 ? OptionalDouble.of(Math.sqrt(square)) : OptionalDouble.empty();
    }

    /** Returns the damping ratio zeta; none at or above the critical speed. */
    public OptionalDouble dampingRatio(double speedMps) {
        double square = naturalFrequencySquared(speedMps);
        return square > 0.0 ? OptionalDouble.of(decayRate(speedMps) / Math.sqrt(square)) : OptionalDouble.empty();
    }

    /** Returns the lead time of the yaw rate's answer to steer, {@code T_r = m a v / (C_r L)}, s. */
    public double yawLeadTimeS(double speedMps) {
        return massKg * frontArmM * speedMps / (rearStiffnessNPerRad * wheelbaseM());
    }

    /** Returns the two eigenvalues, 1/s: the one with the greater real part, then with the positive imaginary part, first. */
    public List<Complex> eigenvalues(double speedMps) {
        double decay = decayRate(speedMps);
        double inside = decay * decay - naturalFrequencySquared(speedMps);
        double root = Math.sqrt(Math.abs(inside));
        return inside >= 0.0
                ? List.of(new Complex(root - decay), new Complex(-root - decay))
                : List.of(new Complex(-decay, root), new Complex(-decay, -root));
    }

    /** Returns the yaw rate after a step of one rad of road-wheel angle; none at or above the critical speed. */
    public Optional<StepResponse> yawRateStep(double speedMps) {
        double square = naturalFrequencySquared(speedMps);
        return square > 0.0
                ? Optional.of(new StepResponse(
                        yawGain(speedMps), Math.sqrt(square), decayRate(speedMps), yawLeadTimeS(speedMps)))
                : Optional.empty();
    }

    /**
     * Returns the front axle's lateral force that a motion needs, N: {@code (m b a_y + I_z r') / L}. Holds for any tyre.
     *
     * @param lateralAcceleration  at the centre of gravity, m/s2
     * @param yawAcceleration      r', rad/s2
     */
    public double frontForceN(double lateralAcceleration, double yawAcceleration) {
        return (massKg * rearArmM * lateralAcceleration + yawInertiaKgM2 * yawAcceleration) / wheelbaseM();
    }

    /** Returns the rear axle's lateral force that a motion needs, N: {@code (m a a_y - I_z r') / L}. */
    public double rearForceN(double lateralAcceleration, double yawAcceleration) {
        return (massKg * frontArmM * lateralAcceleration - yawInertiaKgM2 * yawAcceleration) / wheelbaseM();
    }

    /** Returns front minus rear slip angle that a motion needs, rad: the balance, turn-in's yaw acceleration included. */
    public double slipDifference(double lateralAcceleration, double yawAcceleration) {
        return frontForceN(lateralAcceleration, yawAcceleration) / frontStiffnessNPerRad
                - rearForceN(lateralAcceleration, yawAcceleration) / rearStiffnessNPerRad;
    }

    private double effectiveLength(double speedMps) {
        return wheelbaseM() + understeerGradient() * speedMps * speedMps;
    }
}
