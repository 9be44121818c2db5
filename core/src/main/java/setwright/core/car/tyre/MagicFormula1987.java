package setwright.core.car.tyre;

/**
 * The passenger-car tyre published with the first Magic Formula, from its coefficients.
 *
 * <p>Source: E. Bakker, L. Nyborg, H. B. Pacejka, "Tyre modelling for use in vehicle dynamics studies", SAE 870421, 1987,
 * coefficient table; values from several copies that agree, not from the print itself. It is what the project's tyres and
 * cars are measured against, not a racing tyre.
 *
 * <p>Valid for loads of 2 to 8 kN, which it was fitted to, and inclinations to about 10 degrees (0.17 rad). The brake force
 * curve serves for driving too, mirrored. Pressure does nothing: the paper has none.
 */
public final class MagicFormula1987 implements Tyre {
    private static final double NEWTONS_PER_KILONEWTON = 1000.0;
    private static final double PER_CENT = 100.0;

    /** Camber lowers B and raises 1/(1 - a13 gamma) without bound; the paper's own range is far inside. */
    private static final double GREATEST_INCLINATION_DEG = 12.0;

    /** Returns side force in N over slip angle in degrees. */
    public MagicCurve lateralCurve(double loadN, double inclination) {
        return MagicCoefficients.SIDE_FORCE.at(loadN / NEWTONS_PER_KILONEWTON, thrusting(inclination));
    }

    /** Returns longitudinal force in N over slip ratio in per cent. */
    public MagicCurve longitudinalCurve(double loadN) {
        return MagicCoefficients.BRAKE_FORCE.at(loadN / NEWTONS_PER_KILONEWTON, 0.0);
    }

    /** Returns aligning moment in N m over slip angle in degrees; negative turns the wheel back. */
    public MagicCurve aligningCurve(double loadN, double inclination) {
        return MagicCoefficients.ALIGNING_TORQUE.at(loadN / NEWTONS_PER_KILONEWTON, thrusting(inclination));
    }

    /**
     * Returns the aligning moment without longitudinal slip, N m; negative turns the wheel toward less slip when the slip
     * angle is positive.
     *
     * @param slipAngle  rad
     */
    public double aligning(double slipAngle, double loadN, double inclination) {
        return aligningCurve(loadN, inclination).value(Math.toDegrees(slipAngle));
    }

    @Override
    public double lateral(double slipAngle, double loadN, double inclination, double pressure) {
        return lateralCurve(loadN, inclination).value(Math.toDegrees(slipAngle));
    }

    @Override
    public double longitudinal(double slipRatio, double loadN, double inclination, double pressure) {
        return longitudinalCurve(loadN).value(PER_CENT * slipRatio);
    }

    @Override
    public double lateralPeak(double loadN, double inclination, double pressure) {
        return lateralCurve(loadN, inclination).peakValue();
    }

    @Override
    public double longitudinalPeak(double loadN, double inclination, double pressure) {
        return longitudinalCurve(loadN).peakValue();
    }

    @Override
    public double peakSlipAngle(double loadN, double inclination, double pressure) {
        return Math.toRadians(lateralCurve(loadN, inclination).peakSlip());
    }

    @Override
    public double peakSlipRatio(double loadN, double inclination, double pressure) {
        return longitudinalCurve(loadN).peakSlip() / PER_CENT;
    }

    /** The paper's camber is positive where its thrust is: leaning toward a positive force. */
    private static double thrusting(double inclination) {
        double degrees = -Math.toDegrees(inclination);
        return Math.max(-GREATEST_INCLINATION_DEG, Math.min(GREATEST_INCLINATION_DEG, degrees));
    }
}
