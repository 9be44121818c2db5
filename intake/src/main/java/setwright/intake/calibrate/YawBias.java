package setwright.intake.calibrate;

import java.util.Optional;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;

/**
 * Bias of the yaw rate: over a long time the body turns as much as the path does, so the mean difference is bias.
 *
 * <p>With positions the path is known. Without them each lap closes by a whole number of turns. The error left is the
 * difference of sideslip at both ends, a few hundredths of a radian, over the whole time: far less than any scatter of samples.
 */
final class YawBias {
    /** Sideslip and course noise at the two ends together, rad. */
    private static final double END_ERROR_RAD = 0.08;
    /** A gyro of these cars never differs from the path by more, rad/s: beyond it the position jumped. */
    private static final double JUMP_RADPS = 1.0;
    /** A lap whose turning is farther than this from whole turns tells nothing, turns. */
    private static final double MOST_FROM_WHOLE = 0.3;

    private YawBias() {}

    private record Estimate(double radPerS, double error, String reason) {}

    static void apply(Bench bench) {
        if (!bench.has(Quantity.YAW_RATE)) {
            return;
        }
        againstPath(bench).or(() -> overLaps(bench)).ifPresent(estimate -> {
            if (Math.abs(estimate.radPerS()) > Calibrator.CLEAR * estimate.error()) {
                bench.subtract(Quantity.YAW_RATE, estimate.radPerS());
                bench.note(new Calibration(
                        "yaw rate bias", Math.toDegrees(estimate.radPerS()), "deg/s", estimate.reason()));
            }
        });
    }

    private static Optional<Estimate> againstPath(Bench bench) {
        Optional<PathMotion> path = bench.path();
        if (path.isEmpty()) {
            return Optional.empty();
        }
        double[] yaw = bench.slow(Quantity.YAW_RATE);
        double[] turn = path.get().turnRadPerS();
        double[] along = path.get().speedMps();
        double sum = 0.0;
        int count = 0;
        int runs = 0;
        boolean inside = false;
        for (int i = 0; i < yaw.length; i++) {
            double difference = yaw[i] - turn[i];
            boolean good = Math.abs(difference) < JUMP_RADPS && along[i] > Bench.SLOWEST_MPS;
            if (good) {
                sum += difference;
                count++;
                runs += inside ? 0 : 1;
            }
            inside = good;
        }
        if (count == 0) {
            return Optional.empty();
        }
        double seconds = count * bench.slowStepS();
        double bias = sum / count;
        double error = END_ERROR_RAD * Math.sqrt(runs) / seconds;
        return Optional.of(new Estimate(
                bias,
                error,
                Calibrator.text(
                        "over %.0f s the yaw rate turned %.3f +- %.3f deg/s more than the path",
                        seconds, Math.toDegrees(bias), Math.toDegrees(error))));
    }

    private static Optional<Estimate> overLaps(Bench bench) {
        int[] starts = LapStarts.of(bench);
        if (starts.length < 2) {
            return Optional.empty();
        }
        int from = starts[0];
        int to = starts[starts.length - 1];
        double[] yaw = bench.get(Quantity.YAW_RATE);
        double sum = 0.0;
        double last = 0.0;
        for (int i = from; i < to; i++) {
            last = Double.isNaN(yaw[i]) ? last : yaw[i];
            sum += last;
        }
        int laps = starts.length - 1;
        double seconds = (to - from) / bench.rateHz();
        double turnsPerLap = sum / bench.rateHz() / laps / (2.0 * Math.PI);
        double whole = Math.rint(turnsPerLap);
        if (Math.abs(turnsPerLap - whole) > MOST_FROM_WHOLE) {
            bench.remark(Calibrator.text(
                    "The yaw rate adds up to %.2f turns a lap, which is no whole number; its bias could not be told.",
                    turnsPerLap));
            return Optional.empty();
        }
        double bias = (turnsPerLap - whole) * 2.0 * Math.PI * laps / seconds;
        double error = END_ERROR_RAD / seconds;
        return Optional.of(new Estimate(
                bias,
                error,
                Calibrator.text(
                        "over %d laps the yaw rate adds up to %.3f turns a lap where %.0f close it",
                        laps, turnsPerLap, whole)));
    }
}
