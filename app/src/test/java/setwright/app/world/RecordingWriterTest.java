package setwright.app.world;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.logger.ChannelSet;
import setwright.core.simulation.logger.LoggedColumn;
import setwright.core.simulation.logger.LoggedTable;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.intake.Intake;
import setwright.intake.RecordingReader;

/** A drive goes into a logger, a file and the reader, and comes out again as it was, within noise. */
final class RecordingWriterTest {
    private static final CarSheet SHEET = World.car("orvane").orElseThrow().sheet();
    private static final DriveHistory DRIVE =
            PointMassDrive.laps(World.circuit("skarnholt").orElseThrow(), SHEET, 3);

    /** Signal, factor to the quantity, and the largest usual difference: noise, grid and what calibration may leave. */
    private record Expected(Signal signal, double factor, double within) {}

    private static final Map<Quantity, Expected> EXPECTED = Map.of(
            Quantity.SPEED, new Expected(Signal.FORWARD_SPEED, 1.0, 0.25),
            Quantity.YAW_RATE, new Expected(Signal.YAW_RATE, 1.0, Math.toRadians(1.2)),
            Quantity.STEERING_WHEEL_ANGLE, new Expected(Signal.STEER, SHEET.steeringRatio(), Math.toRadians(1.5)),
            Quantity.THROTTLE, new Expected(Signal.THROTTLE, 1.0, 0.03),
            Quantity.BRAKE, new Expected(Signal.BRAKE, 1.0, 0.03),
            Quantity.LATERAL_ACCELERATION, new Expected(Signal.LATERAL_ACCELERATION, 1.0, 0.7),
            Quantity.LONGITUDINAL_ACCELERATION, new Expected(Signal.FORWARD_ACCELERATION, 1.0, 0.9));

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void aRandomLoggersFileIsReadAsTheDriveWas(long seed, @TempDir Path folder) throws IOException {
        LoggerPlan plan = LoggerPlan.random(seed);
        RecordingWriter.Form drawn = RecordingWriter.Form.random(seed);
        // where most columns hold whole numbers, the reader does not yet tell a decimal comma
        RecordingWriter.Form form = plan.layout().coarse()
                ? new RecordingWriter.Form(drawn.delimiter(), false, drawn.units(), drawn.gzip())
                : drawn;
        LoggedTable table = Logger.log(DRIVE, SHEET, plan);
        Path file = folder.resolve(form.gzip() ? "laps.csv.gz" : "laps.csv");
        RecordingWriter.write(file, table, form);
        Intake intake = RecordingReader.read(file, Optional.empty(), Optional.of(SHEET));
        Recording recording = intake.recording();
        String which = "seed " + seed + ", " + plan + ", " + form + ", " + intake.remarks();
        assertThat(recording.quantities())
                .as(which)
                .contains(Quantity.SPEED, Quantity.STEERING_WHEEL_ANGLE, Quantity.THROTTLE, Quantity.BRAKE);
        EXPECTED.forEach((quantity, expected) -> {
            if (recording.has(quantity)) {
                assertThat(usualDifference(recording, quantity, expected))
                        .as(quantity.words() + ", " + which)
                        .isLessThan(expected.within() + unseen(quantity, plan));
            }
        });
    }

    /** Without a position, or with a drifting one, nothing tells a wheel's wrong circumference. */
    private static double unseen(Quantity quantity, LoggerPlan plan) {
        return quantity == Quantity.SPEED ? Math.abs(plan.errors().speedScale() - 1.0) * 40.0 : 0.0;
    }

    /** Median of the sizes of the differences: gaps and the moments at which a filter rounds a corner off do not count. */
    private static double usualDifference(Recording recording, Quantity quantity, Expected expected) {
        double[] sizes = new double[recording.sampleCount()];
        int count = 0;
        for (int i = 0; i < recording.sampleCount(); i++) {
            int sample = (int) Math.rint(i / recording.sampleRateHz() / DRIVE.stepS());
            double difference = recording.channel(quantity).get(i)
                    - expected.factor() * (sample < DRIVE.count() ? DRIVE.at(expected.signal(), sample) : Double.NaN);
            if (!Double.isNaN(difference)) {
                sizes[count++] = Math.abs(difference);
            }
        }
        assertThat(count).isGreaterThan(recording.sampleCount() / 2);
        double[] known = Arrays.copyOf(sizes, count);
        Arrays.sort(known);
        return known[count / 2];
    }

    @Test
    void aQuietLoggerOfTheDrivesOwnRateWritesItsValues() {
        LoggedTable table = Logger.log(DRIVE, SHEET, LoggerPlan.good(1, 250.0).quiet());
        LoggedColumn speed = table.column(Quantity.SPEED).orElseThrow();
        assertThat(table.rowCount()).isEqualTo(DRIVE.count());
        for (int row = 0; row < table.rowCount(); row += 997) {
            // in km/h, half a unit of the last decimal, and what the anti-alias filter takes off
            assertThat(Math.abs(speed.get(row) - 3.6 * DRIVE.at(Signal.FORWARD_SPEED, row)))
                    .isLessThan(0.1);
        }
    }

    @Test
    void theSamePlanMakesTheSameFileAndChannelsMoreLeaveNoiseAsItWas() {
        LoggerPlan plan = LoggerPlan.good(5, 50.0);
        LoggerPlan full = new LoggerPlan(
                plan.seed(),
                plan.rateHz(),
                ChannelSet.FULL,
                plan.place(),
                plan.satellites(),
                plan.noiseScale(),
                plan.errors(),
                plan.dropOuts(),
                plan.lag(),
                plan.layout());
        LoggedColumn once =
                Logger.log(DRIVE, SHEET, plan).column(Quantity.YAW_RATE).orElseThrow();
        LoggedColumn again =
                Logger.log(DRIVE, SHEET, plan).column(Quantity.YAW_RATE).orElseThrow();
        LoggedColumn among =
                Logger.log(DRIVE, SHEET, full).column(Quantity.YAW_RATE).orElseThrow();
        for (int row = 0; row < once.size(); row += 101) {
            assertThat(again.get(row)).isEqualTo(once.get(row));
            assertThat(among.get(row)).isEqualTo(once.get(row));
        }
    }

    @Test
    void textHasUnitsGapsAndCommasAsAsked(@TempDir Path folder) throws IOException {
        LoggerPlan good = LoggerPlan.good(3, 20.0);
        LoggerPlan gappy = new LoggerPlan(
                good.seed(),
                good.rateHz(),
                good.channels(),
                good.place(),
                good.satellites(),
                good.noiseScale(),
                good.errors(),
                new LoggerPlan.DropOuts(20.0, 0.5),
                good.lag(),
                good.layout());
        Path file = folder.resolve("laps.csv");
        RecordingWriter.write(
                file,
                Logger.log(DRIVE, SHEET, gappy),
                new RecordingWriter.Form(';', true, RecordingWriter.Units.IN_ROW, false));
        List<String> lines = Files.readAllLines(file);
        assertThat(lines.get(0)).startsWith("time;speed;steering wheel angle;yaw rate;throttle;brake;lap trigger");
        assertThat(lines.get(1)).startsWith("s;km/h;deg;deg/s;%;bar;");
        assertThat(lines.get(2)).startsWith("0,000;");
        assertThat(lines).anyMatch(line -> line.contains(";;;;"));
        assertThatThrownBy(() -> new RecordingWriter.Form(',', true, RecordingWriter.Units.NONE, false))
                .hasMessageContaining("at once");
    }
}
