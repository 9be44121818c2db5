package setwright.core.car.tyre.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.tyre.MagicCurve;
import setwright.core.car.tyre.MagicFormula1987;

/**
 * Source: E. Bakker, L. Nyborg, H. B. Pacejka, "Tyre modelling for use in vehicle dynamics studies", SAE 870421, 1987:
 * coefficient table as quoted by several independent copies; forces computed from it by a separate script.
 */
final class MagicFormula1987AgainstPublishedTest {
    private static final MagicFormula1987 TYRE = new MagicFormula1987();
    private static final double UPRIGHT = 0.0;
    private static final double ANY_PRESSURE = 1.0;
    private static final double[] SIDE_DEG = {1, 2, 4, 6, 10, 15};
    private static final double[] BRAKE_PER_CENT = {1, 2, 5, 10, 20, 50, 100};
    private static final double[] MOMENT_DEG = {1, 2, 3, 5, 10, 15};

    /** A tenth of a newton, a hundredth of a per cent: the last printed digit. */
    private static Offset<Double> printed(double value) {
        return within(Math.max(0.1, 1.0e-4 * Math.abs(value)));
    }

    @ParameterizedTest
    @CsvSource({
        "2, 0.28197, 1933.6, -0.0010,  708.78,  9.35, 0.9668,  676.3 1197.1 1722.5 1885.9 1932.8 1905.9",
        "4, 0.21414, 3690.4, -0.7090, 1027.33,  9.35, 0.9226, 1009.4 1911.1 3096.6 3553.5 3688.3 3622.3",
        "6, 0.15707, 5270.4, -1.4170, 1076.15, 10.82, 0.8784, 1072.0 2110.4 3833.1 4794.4 5264.6 5206.7",
        "8, 0.11859, 6673.6, -2.1250, 1028.83, 12.78, 0.8342, 1029.9 2061.0 4011.2 5464.5 6576.2 6646.8"
    })
    void sideForce(
            double loadKn,
            double b,
            double d,
            double e,
            double stiffness,
            double peakDeg,
            double friction,
            String forcesN) {
        double loadN = 1000.0 * loadKn;
        agrees(TYRE.lateralCurve(loadN, UPRIGHT), b, d, e);
        assertThat(TYRE.lateralCurve(loadN, UPRIGHT).centreSlope()).isCloseTo(stiffness, within(0.01));
        assertThat(TYRE.lateralPeak(loadN, UPRIGHT, ANY_PRESSURE)).isCloseTo(d, printed(d));
        assertThat(TYRE.lateralPeak(loadN, UPRIGHT, ANY_PRESSURE) / loadN).isCloseTo(friction, within(5.0e-5));
        double peakSlip = TYRE.peakSlipAngle(loadN, UPRIGHT, ANY_PRESSURE);
        assertThat(Math.toDegrees(peakSlip)).isCloseTo(peakDeg, within(0.0051));
        assertThat(TYRE.lateral(peakSlip, loadN, UPRIGHT, ANY_PRESSURE)).isCloseTo(d, printed(d));
        double[] forces = numbers(forcesN);
        for (int i = 0; i < forces.length; i++) {
            double slip = Math.toRadians(SIDE_DEG[i]);
            assertThat(TYRE.lateral(slip, loadN, UPRIGHT, ANY_PRESSURE)).isCloseTo(forces[i], printed(forces[i]));
            assertThat(TYRE.lateral(-slip, loadN, UPRIGHT, ANY_PRESSURE)).isCloseTo(-forces[i], printed(forces[i]));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "2, 0.15588, 2202.8, 0.5740,  566.56, 11.86, 1.1014,  553.5 1037.5 1878.1 2191.8 2121.4 1779.0 1530.8",
        "4, 0.18434, 4235.2, 0.6140, 1288.16, 10.35, 1.0588, 1246.6 2281.8 3823.7 4234.4 4014.8 3354.2 2898.6",
        "6, 0.20641, 6097.2, 0.6060, 2076.60,  9.18, 1.0162, 1993.8 3580.8 5687.1 6090.6 5667.0 4691.8 4071.7",
        "8, 0.22323, 7788.8, 0.5500, 2868.85,  8.14, 0.9736, 2738.5 4852.9 7429.8 7736.3 7027.2 5746.1 5023.3"
    })
    void brakeForce(
            double loadKn,
            double b,
            double d,
            double e,
            double stiffness,
            double peakPerCent,
            double friction,
            String forcesN) {
        double loadN = 1000.0 * loadKn;
        agrees(TYRE.longitudinalCurve(loadN), b, d, e);
        assertThat(TYRE.longitudinalCurve(loadN).centreSlope()).isCloseTo(stiffness, within(0.01));
        assertThat(TYRE.longitudinalPeak(loadN, UPRIGHT, ANY_PRESSURE) / loadN).isCloseTo(friction, within(5.0e-5));
        double peakSlip = TYRE.peakSlipRatio(loadN, UPRIGHT, ANY_PRESSURE);
        assertThat(100.0 * peakSlip).isCloseTo(peakPerCent, within(0.0051));
        assertThat(TYRE.longitudinal(peakSlip, loadN, UPRIGHT, ANY_PRESSURE)).isCloseTo(d, printed(d));
        double[] forces = numbers(forcesN);
        for (int i = 0; i < forces.length; i++) {
            double slip = BRAKE_PER_CENT[i] / 100.0;
            assertThat(TYRE.longitudinal(-slip, loadN, UPRIGHT, ANY_PRESSURE))
                    .isCloseTo(-forces[i], printed(forces[i]));
            assertThat(TYRE.longitudinal(slip, loadN, UPRIGHT, ANY_PRESSURE)).isCloseTo(forces[i], printed(forces[i]));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "2, 0.27937,  -15.44, -3.0340,  -15.4, 2.12, -10.0  -15.4  -12.8  -3.2   4.7  6.6",
        "4, 0.20738,  -52.64, -2.5880,  -52.6, 2.93, -25.6  -45.8  -52.6 -33.3   5.7 16.9",
        "6, 0.16082, -111.60, -2.7020, -111.6, 3.75, -42.6  -80.7 -105.8 -99.1 -10.7 23.8",
        "8, 0.12660, -192.32, -3.3760, -192.3, 4.60, -58.2 -114.0 -160.6 -190.4 -54.4 22.9"
    })
    void aligningTorque(double loadKn, double b, double d, double e, double peak, double peakDeg, String momentsNm) {
        double loadN = 1000.0 * loadKn;
        MagicCurve curve = TYRE.aligningCurve(loadN, UPRIGHT);
        agrees(curve, b, d, e);
        assertThat(curve.peakValue()).isCloseTo(peak, within(0.1));
        assertThat(curve.peakSlip()).isCloseTo(peakDeg, within(0.0051));
        double[] moments = numbers(momentsNm);
        for (int i = 0; i < moments.length; i++) {
            assertThat(TYRE.aligning(Math.toRadians(MOMENT_DEG[i]), loadN, UPRIGHT))
                    .isCloseTo(moments[i], within(0.1));
        }
    }

    /** The same paper's fits at each load (its Table 1, values from memory); the set reproduces forces to 2 %. */
    @ParameterizedTest
    @CsvSource({"2, 1936, 2193", "4, 3650, 4236", "6, 5237, 6090", "8, 6677, 7711"})
    void peaksAgreeWithTheFitsAtEachLoad(double loadKn, double sideN, double brakeN) {
        double loadN = 1000.0 * loadKn;
        assertThat(TYRE.lateralPeak(loadN, UPRIGHT, ANY_PRESSURE)).isCloseTo(sideN, within(0.02 * sideN));
        assertThat(TYRE.longitudinalPeak(loadN, UPRIGHT, ANY_PRESSURE)).isCloseTo(brakeN, within(0.02 * brakeN));
    }

    /** Camber of the table at 4 kN and 5 degrees, leaning toward the force. */
    @Test
    void camberShiftsAndSoftens() {
        double leaning = Math.toRadians(-5.0);
        MagicCurve upright = TYRE.lateralCurve(4000.0, UPRIGHT);
        MagicCurve inclined = TYRE.lateralCurve(4000.0, leaning);
        assertThat(inclined.horizontalShift()).isCloseTo(0.14, within(1.0e-12));
        assertThat(inclined.verticalShift()).isCloseTo(296.0, within(1.0e-9));
        assertThat(inclined.stiffness()).isCloseTo(0.89 * upright.stiffness(), within(1.0e-12));
        assertThat(TYRE.lateral(-0.05, 4000.0, -leaning, ANY_PRESSURE))
                .isEqualTo(-TYRE.lateral(0.05, 4000.0, leaning, ANY_PRESSURE));
        double peakSlip = TYRE.peakSlipAngle(4000.0, leaning, ANY_PRESSURE);
        assertThat(TYRE.lateral(peakSlip, 4000.0, leaning, ANY_PRESSURE))
                .isCloseTo(TYRE.lateralPeak(4000.0, leaning, ANY_PRESSURE), within(1.0e-6));
    }

    /** Two wheels of 4 kN in the mean: the axle loses {@code 2 * 22.1 * dF^2} N of peak, dF in kN. */
    @ParameterizedTest
    @CsvSource({"0, 7380.8, 2054.67", "1, 7336.6, 1987.92", "2, 7204.0, 1784.93"})
    void loadTransferCostsPeakAndStiffness(double transferKn, double peakN, double stiffnessNPerDeg) {
        double inner = 1000.0 * (4.0 - transferKn);
        double outer = 1000.0 * (4.0 + transferKn);
        assertThat(TYRE.lateralPeak(inner, UPRIGHT, ANY_PRESSURE) + TYRE.lateralPeak(outer, UPRIGHT, ANY_PRESSURE))
                .isCloseTo(peakN, within(0.1));
        assertThat(TYRE.lateralCurve(inner, UPRIGHT).centreSlope()
                        + TYRE.lateralCurve(outer, UPRIGHT).centreSlope())
                .isCloseTo(stiffnessNPerDeg, within(0.1));
    }

    private static void agrees(MagicCurve curve, double b, double d, double e) {
        assertThat(curve.stiffness()).isCloseTo(b, within(5.1e-6));
        assertThat(curve.peak()).isCloseTo(d, within(0.0501));
        assertThat(curve.curvature()).isCloseTo(e, within(5.0e-5));
    }

    private static double[] numbers(String text) {
        return java.util.Arrays.stream(text.trim().split(" +"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
