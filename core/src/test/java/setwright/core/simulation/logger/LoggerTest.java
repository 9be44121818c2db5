package setwright.core.simulation.logger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.recording.Quantity;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.logger.LoggerPlan.DropOuts;
import setwright.core.simulation.logger.LoggerPlan.Errors;
import setwright.core.simulation.logger.LoggerPlan.Lag;
import setwright.core.simulation.logger.LoggerPlan.Layout;
import setwright.core.simulation.logger.LoggerPlan.Place;
import setwright.core.simulation.logger.LoggerPlan.Satellites;

final class LoggerTest {
    private static final double STEP_S = 0.004;
    private static final double STEERING_RATIO = 12.0;
    private static final CarSheet SHEET = Sheets.plain(DrivenAxle.REAR, 1000.0, 0.5, 2.5, STEERING_RATIO, 0.3);

    private static DriveHistory drive(double seconds, Signal signal, DoubleUnaryOperator value) {
        DriveHistory.Builder out = new DriveHistory.Builder(STEP_S);
        double[] row = new double[Signal.count()];
        for (int i = 0; i * STEP_S < seconds; i++) {
            row[Signal.FORWARD_SPEED.index()] = 30.0;
            row[Signal.X.index()] = 30.0 * i * STEP_S;
            row[Signal.LAP.index()] = 1.0 + Math.floor(i * STEP_S / 20.0);
            row[signal.index()] = value.applyAsDouble(i * STEP_S);
            out.add(row);
        }
        return out.build();
    }

    private static LoggerPlan plan(double rate, double noise, Errors errors, DropOuts gaps, Optional<Lag> lag) {
        return new LoggerPlan(
                1, rate, ChannelSet.FULL, Place.GLOBE, Satellites.USUAL, noise, errors, gaps, lag, Layout.USUAL);
    }

    private static LoggerPlan quiet(double rate) {
        return plan(rate, 0.0, Errors.NONE, DropOuts.NONE, Optional.empty());
    }

    private static LoggedColumn column(DriveHistory drive, LoggerPlan plan, Quantity quantity) {
        return Logger.log(drive, SHEET, plan).column(quantity).orElseThrow();
    }

    @Test
    void unitsAndTheSteeringRatioAreApplied() {
        DriveHistory drive = drive(5.0, Signal.STEER, t -> 0.05);
        assertThat(column(drive, quiet(50.0), Quantity.SPEED).get(100)).isEqualTo(108.0);
        // 0.05 rad at the wheels of a 12 to 1 rack
        assertThat(column(drive, quiet(50.0), Quantity.STEERING_WHEEL_ANGLE).get(100))
                .isEqualTo(34.4);
    }

    /** Half the pedal of 80 bar, both circuits alike where no sheet says more; ride heights need one. */
    @Test
    void circuitsShareThePressureOfThePedal() {
        DriveHistory drive = drive(5.0, Signal.BRAKE, t -> 0.5);
        LoggerPlan good = quiet(50.0);
        LoggerPlan rich = new LoggerPlan(
                1,
                50.0,
                ChannelSet.RICH,
                Place.NONE,
                Satellites.USUAL,
                0.0,
                Errors.NONE,
                DropOuts.NONE,
                Optional.empty(),
                good.layout());
        CarSheet sheet = Sheets.with(List.of(
                new SetupItem("front_ride_height", 60.0, "mm", 50.0, 80.0, 1.0),
                new SetupItem("rear_ride_height", 65.0, "mm", 50.0, 80.0, 1.0),
                new SetupItem("brake_bias_front", 60.0, "%", 50.0, 70.0, 0.5)));
        LoggedTable table = Logger.log(drive, sheet, rich);
        assertThat(table.column(Quantity.BRAKE_PRESSURE_FRONT).orElseThrow().get(100))
                .isEqualTo(48.0);
        assertThat(table.column(Quantity.BRAKE_PRESSURE_REAR).orElseThrow().get(100))
                .isEqualTo(32.0);
        DriveHistory sunk = drive(5.0, Signal.SUSPENSION_FRONT_LEFT, t -> 0.010);
        LoggedTable low = Logger.log(sunk, sheet, rich);
        assertThat(low.column(Quantity.RIDE_HEIGHT_FRONT).orElseThrow().get(100))
                .isEqualTo(55.0);
        assertThat(low.column(Quantity.RIDE_HEIGHT_REAR).orElseThrow().get(100)).isEqualTo(65.0);
        assertThatThrownBy(() -> Logger.log(drive, SHEET, rich)).hasMessageContaining("front_ride_height");
    }

    @Test
    void anOscillationThatTheRateCannotHoldIsGoneAndASlowOneIsKept() {
        DriveHistory quick = drive(20.0, Signal.YAW_RATE, t -> Math.sin(2.0 * Math.PI * 24.0 * t));
        DriveHistory slow = drive(20.0, Signal.YAW_RATE, t -> Math.sin(2.0 * Math.PI * 1.0 * t));
        LoggedColumn lost = column(quick, quiet(25.0), Quantity.YAW_RATE);
        LoggedColumn kept = column(slow, quiet(25.0), Quantity.YAW_RATE);
        for (int row = 50; row < 450; row++) {
            assertThat(Math.abs(lost.get(row))).isLessThan(0.02 * 57.3);
            double truth = Math.toDegrees(Math.sin(2.0 * Math.PI * row / 25.0));
            assertThat(kept.get(row)).isCloseTo(truth, within(0.2));
        }
    }

    @Test
    void noiseHasItsDeviationAndItsScale() {
        DriveHistory drive = drive(100.0, Signal.YAW_RATE, t -> 0.0);
        for (double scale : new double[] {1.0, 2.0}) {
            LoggedColumn noisy =
                    column(drive, plan(100.0, scale, Errors.NONE, DropOuts.NONE, Optional.empty()), Quantity.YAW_RATE);
            double squares = 0.0;
            for (int row = 0; row < noisy.size(); row++) {
                squares += noisy.get(row) * noisy.get(row);
            }
            double deviation = Math.toRadians(Math.sqrt(squares / noisy.size()));
            // 10,000 samples: the deviation is known to a hundredth; 0.05 is five of these
            assertThat(deviation / (scale * TypicalNoise.of(Quantity.YAW_RATE))).isCloseTo(1.0, within(0.05));
        }
    }

    @Test
    void constantErrorsAreThere() {
        Errors errors = new Errors(Math.toRadians(2.0), Math.toRadians(0.5), Math.toRadians(1.0), 0.0, 0.0, 1.02);
        DriveHistory drive = drive(5.0, Signal.STEER, t -> 0.0);
        LoggerPlan plan = plan(50.0, 0.0, errors, DropOuts.NONE, Optional.empty());
        assertThat(column(drive, plan, Quantity.STEERING_WHEEL_ANGLE).get(10)).isEqualTo(2.0);
        assertThat(column(drive, plan, Quantity.YAW_RATE).get(10)).isEqualTo(0.5);
        // sin of one degree
        assertThat(column(drive, plan, Quantity.LONGITUDINAL_ACCELERATION).get(10))
                .isEqualTo(0.017);
        assertThat(column(drive, plan, Quantity.SPEED).get(10)).isEqualTo(110.2);
    }

    @Test
    void aLateChannelIsLate() {
        DriveHistory drive = drive(10.0, Signal.YAW_RATE, t -> 0.1 * t);
        Lag lag = new Lag(Quantity.YAW_RATE, 0.5);
        LoggedColumn late =
                column(drive, plan(50.0, 0.0, Errors.NONE, DropOuts.NONE, Optional.of(lag)), Quantity.YAW_RATE);
        assertThat(late.get(250)).isCloseTo(Math.toDegrees(0.1 * 4.5), within(0.02));
    }

    @Test
    void gapsAreInMeasurementsOnlyAndAboutAsManyAsAsked() {
        DriveHistory drive = drive(600.0, Signal.YAW_RATE, t -> 0.0);
        LoggedTable table =
                Logger.log(drive, SHEET, plan(20.0, 0.0, Errors.NONE, new DropOuts(6.0, 0.2), Optional.empty()));
        int gaps = 0;
        for (LoggedColumn column : table.columns()) {
            boolean steady = column.quantity() == Quantity.TIME || column.quantity() == Quantity.LAP_NUMBER;
            for (int row = 1; row < column.size(); row++) {
                boolean begins = Double.isNaN(column.get(row)) && !Double.isNaN(column.get(row - 1));
                assertThat(steady && begins).isFalse();
                gaps += begins && column.quantity() == Quantity.SPEED ? 1 : 0;
            }
        }
        // 60 gaps, half of them of all channels: 30 and a few of the speed alone; five deviations on either side
        assertThat(gaps).isBetween(5, 60);
    }

    @Test
    void aPulseMarksEveryLap() {
        DriveHistory drive = drive(70.0, Signal.YAW_RATE, t -> 0.0);
        for (double rate : new double[] {10.0, 20.0, 60.0, 250.0}) {
            LoggedColumn pulse = column(drive, quiet(rate), Quantity.LAP_TRIGGER);
            int rises = 0;
            for (int row = 1; row < pulse.size(); row++) {
                rises += pulse.get(row) == 1.0 && pulse.get(row - 1) == 0.0 ? 1 : 0;
            }
            assertThat(rises).as(rate + " Hz").isEqualTo(3);
        }
    }

    @Test
    void aMetreEastIsAMetreOnTheEllipsoid() {
        DriveHistory drive = drive(40.0, Signal.YAW_RATE, t -> 0.0);
        LoggedColumn longitude = column(drive, quiet(20.0).quiet(), Quantity.LONGITUDE);
        double degrees = longitude.get(longitude.size() - 1) - longitude.get(0);
        // radius of the parallel at 47.2 degrees: N cos(latitude), N = 6378137 / sqrt(1 - 0.00669438 sin^2) = 6389 660
        // m
        double metres = Math.toRadians(degrees) * 6_389_660.0 * Math.cos(Math.toRadians(47.2));
        assertThat(metres).isCloseTo(30.0 * 39.95, within(1.6));
    }

    @Test
    void randomPlansAreTheSameForASeedAndOtherwiseDiffer() {
        assertThat(LoggerPlan.random(4)).isEqualTo(LoggerPlan.random(4)).isNotEqualTo(LoggerPlan.random(5));
        for (long seed = 0; seed < 200; seed++) {
            assertThat(LoggerPlan.random(seed).rateHz()).isBetween(20.0, 250.0);
        }
    }

    @Test
    void aDriveOfNoLengthIsRefused() {
        assertThatThrownBy(() -> Logger.log(drive(0.5, Signal.X, t -> 0.0), SHEET, quiet(50.0)))
                .hasMessageContaining("a second or more");
    }
}
