package setwright.intake.calibrate;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import setwright.core.numerics.Robust;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;

/**
 * Zero of the steering: its reading where the car goes straight.
 *
 * <p>Nearly straight running is enough: there {@code steer = c r / v + zero} (single-track model, small lateral acceleration),
 * and the intercept of a robust fit is the zero.
 */
final class SteeringZero {
    /** Tyres are linear and understeer is small below this, m/s2 (a third of what a road tyre can do). */
    private static final double STRAIGHT_MPS2 = 2.0;
    /** Rate of change of the lateral demand below which the car is settled, m/s3: one of those in four response times. */
    private static final double SETTLED_MPS3 = 4.0;

    private static final double SLOWEST_MPS = 15.0;
    private static final int FEWEST_SAMPLES = 100;

    private SteeringZero() {}

    /** Returns how the zero of a steering angle is to be corrected. */
    static Consumer<Bench> of(Bench bench, Quantity steer) {
        return bench.has(steer)
                ? bench.turnRate().map(turn -> correction(bench, steer, turn)).orElse(Calibrator.NOTHING)
                : Calibrator.NOTHING;
    }

    private static Consumer<Bench> correction(Bench bench, Quantity steer, double[] turn) {
        double[] v = bench.slow(Quantity.SPEED);
        double[] change = demandChange(bench, turn, v);
        Optional<Robust.Fit> fit = fit(bench.slow(steer), turn, change, v, SLOWEST_MPS);
        if (fit.isEmpty()) {
            fit = fit(bench.slow(steer), turn, change, v, Bench.SLOWEST_MPS);
        }
        if (fit.isEmpty()) {
            return blind ->
                    blind.remark("There is too little straight running to tell the zero of the " + steer.words() + ".");
        }
        double zero = fit.get().coefficient(0);
        double error = fit.get().standardError(0) * Math.sqrt(bench.samplesPerIndependent());
        if (!(Math.abs(zero) > Calibrator.CLEAR * error)) {
            return Calibrator.NOTHING;
        }
        double straightS = fit.get().count() * bench.slowStepS();
        return corrected -> {
            corrected.subtract(steer, zero);
            corrected.note(new Calibration(
                    "steering zero",
                    Math.toDegrees(zero),
                    "deg",
                    Calibrator.text(
                            "in %.0f s of nearly straight running the %s reads %.3f +- %.3f deg where the car does not turn",
                            straightS, steer.words(), Math.toDegrees(zero), Math.toDegrees(error))));
        };
    }

    private static double[] demandChange(Bench bench, double[] turn, double[] v) {
        double[] demand = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            demand[i] = v[i] * turn[i];
        }
        return bench.rise(demand);
    }

    private static Optional<Robust.Fit> fit(
            double[] steer, double[] turn, double[] change, double[] v, double slowest) {
        double[] curvature = new double[v.length];
        int count = 0;
        for (int i = 0; i < v.length; i++) {
            boolean straight =
                    v[i] > slowest && Math.abs(v[i] * turn[i]) < STRAIGHT_MPS2 && Math.abs(change[i]) < SETTLED_MPS3;
            curvature[i] = straight ? turn[i] / v[i] : Double.NaN;
            count += straight && Double.isFinite(steer[i]) ? 1 : 0;
        }
        if (count < FEWEST_SAMPLES) {
            return Optional.empty();
        }
        double[] ones = new double[v.length];
        Arrays.fill(ones, 1.0);
        return Optional.of(Robust.regress(new double[][] {ones, curvature}, steer));
    }
}
