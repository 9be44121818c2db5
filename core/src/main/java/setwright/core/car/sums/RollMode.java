package setwright.core.car.sums;

/**
 * The body's free roll: {@code I phi'' + c phi' + (K - m_s g d) phi = 0}.
 *
 * <p><b>Source:</b> the equation of motion above, a damped oscillator.
 *
 * @param inertia       of the body about the roll axis, kg m2, &gt; 0
 * @param damping       N m s/rad, &gt;= 0
 * @param netStiffness  roll stiffness less {@code m_s g d}, N m/rad, &gt; 0
 */
public record RollMode(double inertia, double damping, double netStiffness) {
    public RollMode {
        Require.positive("roll inertia", inertia, "kg m2");
        Require.notNegative("roll damping", damping, "N m s/rad");
        Require.positive("net roll stiffness", netStiffness, "N m/rad");
    }

    /** Returns the undamped angular frequency, rad/s. */
    public double angularFrequency() {
        return Math.sqrt(netStiffness / inertia);
    }

    /** Returns the damping ratio: 1 is critical. */
    public double dampingRatio() {
        return damping / (2.0 * Math.sqrt(netStiffness * inertia));
    }
}
