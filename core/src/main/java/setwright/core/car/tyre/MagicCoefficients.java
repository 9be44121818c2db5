package setwright.core.car.tyre;

/**
 * What makes a {@link MagicCurve} of a load: coefficients a1 to a13 of the 1987 paper, for one of its three curves.
 *
 * <p>With load in kN and inclination in degrees:
 * <pre>
 * D = a1 F^2 + a2 F,  E = (a6 F^2 + a7 F + a8) / (1 - a13 |gamma|)
 * BCD = a3 sin(a4 atan(a5 F))        lateral force
 * BCD = (a3 F^2 + a4 F) exp(-a5 F)   longitudinal force, aligning moment
 * S_h = a9 gamma,  S_v = (a10 F^2 + a11 F) gamma,  B lowered by the share a12 |gamma|
 * </pre>
 *
 * @param shape     C
 * @param rise      which of the two forms of BCD
 * @param a1        and so on: the paper's numbers
 */
record MagicCoefficients(
        double shape,
        Rise rise,
        double a1,
        double a2,
        double a3,
        double a4,
        double a5,
        double a6,
        double a7,
        double a8,
        double a9,
        double a10,
        double a11,
        double a12,
        double a13) {

    enum Rise {
        LATERAL,
        LONGITUDINAL
    }

    /** Table of the paper, side force: N over degrees. */
    static final MagicCoefficients SIDE_FORCE = new MagicCoefficients(
            1.30, Rise.LATERAL, -22.1, 1011, 1078, 1.82, 0.208, 0.000, -0.354, 0.707, 0.028, 0.000, 14.8, 0.022, 0.000);

    /** Table of the paper, self-aligning torque: N m over degrees. */
    static final MagicCoefficients ALIGNING_TORQUE = new MagicCoefficients(
            2.40,
            Rise.LONGITUDINAL,
            -2.72,
            -2.28,
            -1.86,
            -2.73,
            0.110,
            -0.070,
            0.643,
            -4.04,
            0.015,
            -0.066,
            0.945,
            0.030,
            0.070);

    /** Table of the paper, brake force: N over per cent of slip. */
    static final MagicCoefficients BRAKE_FORCE = new MagicCoefficients(
            1.65, Rise.LONGITUDINAL, -21.3, 1144, 49.6, 226, 0.069, -0.006, 0.056, 0.486, 0, 0, 0, 0, 0);

    /**
     * Returns the curve at a load and inclination.
     *
     * @param loadKn          kN; without load the curve is zero
     * @param inclinationDeg  degrees, positive where the camber thrust is positive
     */
    MagicCurve at(double loadKn, double inclinationDeg) {
        if (!(loadKn > 0.0)) {
            return MagicCurve.NOTHING;
        }
        double lean = Math.abs(inclinationDeg);
        double peak = (a1 * loadKn + a2) * loadKn;
        double rise = rise(loadKn);
        double curvature = ((a6 * loadKn + a7) * loadKn + a8) / (1.0 - a13 * lean);
        return new MagicCurve(
                rise / (shape * peak) * (1.0 - a12 * lean),
                shape,
                peak,
                curvature,
                a9 * inclinationDeg,
                (a10 * loadKn + a11) * loadKn * inclinationDeg);
    }

    private double rise(double loadKn) {
        return switch (rise) {
            case LATERAL -> a3 * Math.sin(a4 * Math.atan(a5 * loadKn));
            case LONGITUDINAL -> (a3 * loadKn + a4) * loadKn * Math.exp(-a5 * loadKn);
        };
    }
}
