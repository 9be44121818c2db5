package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.core.car.CarSheet;

/**
 * Steering zero and yaw rate bias. Right when the error moves the balance angle by less than a tenth of the weakest faults
 * that the cases count, which are about 0.2 degrees strong.
 */
final class CalibrationRule implements Rule {
    private static final double TOLERATED_DEG = 0.02;

    @Override
    public List<Row> judge(StintRun run) {
        Truth truth = run.practice().truth();
        List<Row> rows = new ArrayList<>();
        truth.column("steer")
                .ifPresent(column -> rows.add(row(
                        run,
                        "steering zero",
                        "deg",
                        column.sign() * truth.recording().steeringZeroOffsetDeg(),
                        Measure.STEERING_ZERO,
                        CarSheet::steeringRatio)));
        truth.column("yaw")
                .ifPresent(column -> rows.add(row(
                        run,
                        "yaw rate bias",
                        "deg/s",
                        column.sign() * truth.recording().yawRateBiasDegS(),
                        Measure.YAW_BIAS,
                        sheet -> slowestMps(truth) / sheet.wheelbaseM())));
        return rows;
    }

    /** The part of the balance angle B = delta - L r / v that an error of reading makes is the error over this. */
    private interface PerBalance {
        double of(CarSheet sheet);
    }

    private static Row row(
            StintRun run, String what, String unit, double real, Measure measure, PerBalance perBalance) {
        Optional<Double> found = run.intake()
                .map(intake -> intake.recording().calibrations().stream()
                        .filter(calibration -> calibration.what().equals(what))
                        .mapToDouble(calibration -> calibration.value())
                        .sum());
        boolean right = found.isPresent()
                && run.sheet().isPresent()
                && Math.abs(found.get() - real)
                        <= TOLERATED_DEG * perBalance.of(run.sheet().get());
        String answer = found.map(
                        value -> String.format(Locale.ROOT, "%.2f %s, error %.2f", value, unit, Math.abs(value - real)))
                .orElse("none");
        return Row.counted(
                what, String.format(Locale.ROOT, "%.2f %s", real + 0.0, unit), answer, measure, Count.of(right));
    }

    private static double slowestMps(Truth truth) {
        return truth.corners().stream()
                        .mapToDouble(Truth.Corner::apexSpeedKmh)
                        .min()
                        .orElseThrow()
                / 3.6;
    }
}
