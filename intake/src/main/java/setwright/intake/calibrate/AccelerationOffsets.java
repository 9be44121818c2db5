package setwright.intake.calibrate;

import java.util.Arrays;
import java.util.function.Consumer;
import setwright.core.numerics.Robust;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;

/**
 * Zero offsets of the accelerometers: what is left of {@code ay - v r} and {@code ax - dv/dt} where both are small.
 *
 * <p>A sensor that leans with the body reads a few percent too much; that is a slope, and only the intercept is taken out.
 */
final class AccelerationOffsets {
    private static final int FEWEST_SAMPLES = 200;
    private static final double STRAIGHT_MPS2 = 1.5;

    private AccelerationOffsets() {}

    /** Returns how the lateral acceleration is to be corrected. */
    static Consumer<Bench> lateral(Bench bench) {
        if (!bench.has(Quantity.LATERAL_ACCELERATION)
                || !(bench.has(Quantity.YAW_RATE) || bench.path().isPresent())) {
            return Calibrator.NOTHING;
        }
        double[] rate = bench.turnRate().orElseThrow();
        double[] v = bench.slow(Quantity.SPEED);
        double[] expected = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            expected[i] = v[i] > Bench.SLOWEST_MPS ? v[i] * rate[i] : Double.NaN;
        }
        return correction(bench, Quantity.LATERAL_ACCELERATION, expected, "speed times rate of turn");
    }

    /** Returns how the longitudinal acceleration is to be corrected. */
    static Consumer<Bench> longitudinal(Bench bench) {
        return bench.has(Quantity.LONGITUDINAL_ACCELERATION)
                ? correction(
                        bench,
                        Quantity.LONGITUDINAL_ACCELERATION,
                        straightRise(bench),
                        "the rate of change of the speed")
                : Calibrator.NOTHING;
    }

    /** Only where the car goes straight: in a slide part of the centripetal acceleration shows along the car. */
    private static double[] straightRise(Bench bench) {
        double[] rise = bench.slowSpeedRise();
        double[] v = bench.slow(Quantity.SPEED);
        bench.turnRate().ifPresent(turn -> {
            for (int i = 0; i < rise.length; i++) {
                rise[i] = Math.abs(v[i] * turn[i]) < STRAIGHT_MPS2 ? rise[i] : Double.NaN;
            }
        });
        return rise;
    }

    private static Consumer<Bench> correction(Bench bench, Quantity quantity, double[] expected, String against) {
        double[] measured = bench.slow(quantity);
        long common = 0;
        for (int i = 0; i < measured.length; i++) {
            common += Double.isFinite(measured[i]) && Double.isFinite(expected[i]) ? 1 : 0;
        }
        if (common < FEWEST_SAMPLES) {
            return Calibrator.NOTHING;
        }
        double[] ones = new double[expected.length];
        Arrays.fill(ones, 1.0);
        Robust.Fit fit = Robust.regress(new double[][] {ones, expected}, measured);
        double offset = fit.coefficient(0);
        double error = fit.standardError(0) * Math.sqrt(bench.samplesPerIndependent());
        if (!(Math.abs(offset) > Calibrator.CLEAR * error)) {
            return Calibrator.NOTHING;
        }
        return corrected -> {
            corrected.subtract(quantity, offset);
            corrected.note(new Calibration(
                    quantity.words() + " offset",
                    offset,
                    "m/s2",
                    Calibrator.text("it reads %.3f +- %.3f m/s2 where %s is zero", offset, error, against)));
        };
    }
}
