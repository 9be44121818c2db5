package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.CarSheet;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.SyntheticRun.Writing;
import setwright.intake.car.CarSheetReader;
import setwright.intake.map.ChannelMapFile;

/** Channels that answers do without are understood under the names people give them, and none is taken for another. */
class OptionalChannelsTest {
    private static final double FRONT_SHARE = 0.6;
    private static final double GREATEST_PA = 80.0e5;

    @TempDir
    private Path folder;

    private SyntheticRun run = new SyntheticRun(1L, 1.0);

    @BeforeEach
    void drive() {
        run = new SyntheticRun(20_260_111L, 120.0);
        double[] brake = run.get("brake");
        run.add("pf", scaled(brake, 2.0 * FRONT_SHARE * GREATEST_PA));
        run.add("pr", scaled(brake, 2.0 * (1.0 - FRONT_SHARE) * GREATEST_PA));
        double[] v = run.get("v");
        run.add(
                "height",
                Arrays.stream(v).map(speed -> 0.060 - 4.0e-6 * speed * speed).toArray());
        run.add("pressure", Arrays.stream(v).map(speed -> 1.7e5 + 10.0 * speed).toArray());
        run.add("warm", Arrays.stream(v).map(speed -> 80.0 + 0.01 * speed).toArray());
        run.add("still", Arrays.stream(v).map(speed -> 31.0).toArray());
        run.add("torque", scaled(run.get("steer"), 4.0));
        run.add("litres", Arrays.stream(run.get("t")).map(t -> 40.0 - 0.01 * t).toArray());
    }

    private static double[] scaled(double[] values, double factor) {
        return Arrays.stream(values).map(value -> factor * value).toArray();
    }

    private Intake read(List<Writing> more, boolean brake) {
        return read(more, brake, Optional.empty());
    }

    private Intake read(List<Writing> more, boolean brake, Optional<CarSheet> car) {
        List<Writing> writings = new ArrayList<>(SyntheticRun.plain(true));
        if (!brake) {
            writings.removeIf(writing -> writing.column().equals("brake"));
        }
        writings.addAll(more);
        return RecordingReader.read(
                SyntheticRun.write(folder, "laps.csv", run.csv(writings, ';', false)), Optional.empty(), car);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pf | brake pressure front [bar] | 1e-5 | BRAKE_PRESSURE_FRONT",
                "pr | BrakePressR_bar | 1e-5 | BRAKE_PRESSURE_REAR",
                "pf | Bremsdruck vorn [bar] | 1e-5 | BRAKE_PRESSURE_FRONT",
                "pr | pression frein AR (kPa) | 1e-3 | BRAKE_PRESSURE_REAR",
                "pf | pressione freni ant [bar] | 1e-5 | BRAKE_PRESSURE_FRONT",
                "pressure | tyre pressure FL [bar] | 1e-5 | TYRE_PRESSURE_FRONT_LEFT",
                "pressure | Reifendruck HR [bar] | 1e-5 | TYRE_PRESSURE_REAR_RIGHT",
                "pressure | TPMS_press_RL_psi | 1.4503774e-4 | TYRE_PRESSURE_REAR_LEFT",
                "pressure | pression pneu avant droite [kPa] | 1e-3 | TYRE_PRESSURE_FRONT_RIGHT",
                "warm | tyre temp FL inner [C] | 1 | TYRE_TEMPERATURE_INNER_FRONT_LEFT",
                "warm | TyreTempRRMid | 1 | TYRE_TEMPERATURE_MIDDLE_REAR_RIGHT",
                "warm | Reifentemperatur aussen VL | 1 | TYRE_TEMPERATURE_OUTER_FRONT_LEFT",
                "warm | tyre_temp_rl_o | 1 | TYRE_TEMPERATURE_OUTER_REAR_LEFT",
                "warm | tyre temp FL [C] | 1 | TYRE_TEMPERATURE_FRONT_LEFT",
                "height | ride height front [mm] | 1000 | RIDE_HEIGHT_FRONT",
                "height | RideHeightRL | 1000 | RIDE_HEIGHT_REAR_LEFT",
                "height | Bodenfreiheit hinten [mm] | 1000 | RIDE_HEIGHT_REAR",
                "height | hauteur AV [mm] | 1000 | RIDE_HEIGHT_FRONT",
                "still | track temp [C] | 1 | TRACK_TEMPERATURE",
                "still | Lufttemperatur | 1 | AIR_TEMPERATURE",
                "still | temperatura aria | 1 | AIR_TEMPERATURE",
                "torque | steering torque [Nm] | -1 | STEERING_TORQUE",
                "torque | Lenkmoment | 1 | STEERING_TORQUE",
                "torque | couple volant | 1 | STEERING_TORQUE",
                "litres | Kraftstoff [l] | 1 | FUEL_MASS",
            })
    void isUnderstood(String column, String header, double factor, Quantity quantity) {
        Intake intake = read(List.of(new Writing(column, header, factor)), true);
        assertThat(intake.proposal().map().entry(quantity))
                .as("%s", intake.proposal().map())
                .isPresent();
        assertThat(intake.proposal().map().entry(quantity).orElseThrow().column())
                .isEqualTo(header);
        // what was there before stays what it was
        assertThat(intake.proposal().map().entry(Quantity.BRAKE).orElseThrow().column())
                .isEqualTo("brake [%]");
        Channel.assertClose(intake.recording(), quantity, expected(quantity));
    }

    private double[] expected(Quantity quantity) {
        return switch (quantity) {
            case BRAKE_PRESSURE_FRONT -> run.get("pf");
            case BRAKE_PRESSURE_REAR -> run.get("pr");
            case STEERING_TORQUE -> run.get("torque");
            case FUEL_MASS -> scaled(run.get("litres"), 0.745);
            case TRACK_TEMPERATURE, AIR_TEMPERATURE -> kelvin("still");
            default ->
                quantity.name().startsWith("TYRE_PRESSURE")
                        ? run.get("pressure")
                        : quantity.name().startsWith("TYRE_TEMPERATURE") ? kelvin("warm") : run.get("height");
        };
    }

    private double[] kelvin(String column) {
        return Arrays.stream(run.get(column)).map(celsius -> celsius + 273.15).toArray();
    }

    /** Compares samples. */
    private static final class Channel {
        static void assertClose(Recording recording, Quantity quantity, double[] expected) {
            double[] found = recording.channel(quantity).toArray();
            double most = Arrays.stream(expected).map(Math::abs).max().orElseThrow();
            for (int i = 100; i < found.length - 100; i++) {
                // seven digits of the factor of pound-force are the least that is kept
                assertThat(found[i]).as("%s, %d", quantity, i).isCloseTo(expected[i], within(1.0e-6 * most));
            }
        }
    }

    @Test
    void bothCircuitsMakeTheBrakeWhereNoneWasRecorded() {
        Intake intake = read(
                List.of(
                        new Writing("pf", "brake pressure front [bar]", 1.0e-5),
                        new Writing("pr", "brake pressure rear [bar]", 1.0e-5)),
                false);
        assertThat(intake.proposal().map().has(Quantity.BRAKE)).isFalse();
        double[] brake = run.get("brake");
        // what counts as hardest leaves out one reading in two thousand
        double hardest = Robust.quantile(brake, 0.9995);
        Channel.assertClose(
                intake.recording(),
                Quantity.BRAKE,
                Arrays.stream(brake)
                        .map(value -> Math.min(1.0, value / hardest))
                        .toArray());
        assertThat(intake.remarks()).anyMatch(remark -> remark.contains("mean of both circuits"));
    }

    /** As before there were two: a lone circuit is the brake. */
    @Test
    void aLoneCircuitIsTheBrake() {
        Intake intake = read(List.of(new Writing("pf", "brake pressure front [bar]", 1.0e-5)), false);
        assertThat(intake.proposal().map().entry(Quantity.BRAKE).orElseThrow().column())
                .isEqualTo("brake pressure front [bar]");
        assertThat(intake.proposal().map().has(Quantity.BRAKE_PRESSURE_FRONT)).isFalse();
    }

    @Test
    void aMapThatWasWrittenIsReadAgain() {
        List<Writing> more = List.of(
                new Writing("pf", "brake pressure front [bar]", 1.0e-5),
                new Writing("pr", "brake pressure rear [bar]", 1.0e-5),
                new Writing("pressure", "tyre pressure FL [bara]", 1.0e-5, 1.01325),
                new Writing("torque", "steering torque [Nm]", -1.0),
                new Writing("height", "ride height front [mm]", 1000.0));
        Intake first = read(more, true);
        Intake again = RecordingReader.read(
                folder.resolve("laps.csv"),
                Optional.of(ChannelMapFile.parse("map.yaml", ChannelMapFile.write(first.proposal()))),
                Optional.empty());
        for (Quantity quantity : first.recording().quantities()) {
            assertThat(again.recording().channel(quantity).toArray())
                    .as("%s", quantity)
                    .isEqualTo(first.recording().channel(quantity).toArray());
        }
    }

    /** 1.7 bar above the air are 2.71 bar; a header, a unit or the sheet says which it is, and else it is told that nobody does. */
    @Test
    void absolutePressuresAreNoticed() {
        CarSheet sheet = CarSheetReader.parse(
                "car.yaml",
                "setup:\n  front_tyre_pressure: {value: 1.65, unit: bar}\n  rear_tyre_pressure: {value: 1.6, unit: bar}\n");
        Writing silent = new Writing("pressure", "tyre pressure FL [bar]", 1.0e-5, 1.01325);
        for (Intake intake : List.of(
                read(List.of(new Writing("pressure", "tyre pressure FL [bara]", 1.0e-5, 1.01325)), true),
                read(List.of(new Writing("pressure", "tyre pressure abs FL [bar]", 1.0e-5, 1.01325)), true),
                read(List.of(silent), true, Optional.of(sheet)))) {
            Channel.assertClose(intake.recording(), Quantity.TYRE_PRESSURE_FRONT_LEFT, run.get("pressure"));
        }
        Intake guessed = read(List.of(new Writing("pressure", "tyre pressure FL [bar]", 1.0e-5)), true);
        Channel.assertClose(guessed.recording(), Quantity.TYRE_PRESSURE_FRONT_LEFT, run.get("pressure"));
        assertThat(guessed.remarks()).anyMatch(remark -> remark.contains("gauge") && remark.contains("size alone"));
    }

    @Test
    void whatCannotBeIsLeftOut() {
        run.add("hot", scaled(run.get("still"), 30.0));
        run.add(
                "noise",
                new java.util.Random(3L).doubles(run.get("t").length, -5.0, 5.0).toArray());
        Intake intake = read(
                List.of(
                        new Writing("hot", "track temp [C]", 1.0),
                        new Writing("height", "ride height front [m]", 1000.0),
                        new Writing("pressure", "tyre pressure FL [bar]", 1.0e-3),
                        new Writing("noise", "steering torque [Nm]", 1.0),
                        new Writing("v", "brake pressure front [bar]", 1.0)),
                true);
        for (Quantity quantity : List.of(
                Quantity.TRACK_TEMPERATURE,
                Quantity.RIDE_HEIGHT_FRONT,
                Quantity.TYRE_PRESSURE_FRONT_LEFT,
                Quantity.STEERING_TORQUE,
                Quantity.BRAKE_PRESSURE_FRONT)) {
            assertThat(intake.recording().has(quantity)).as("%s", quantity).isFalse();
        }
        assertThat(intake.remarks().stream().filter(remark -> remark.contains("cannot be it")))
                .hasSize(4);
    }

    @Test
    void theMeanAcrossTheTreadIsTheTyres() {
        run.add("inner", Arrays.stream(run.get("warm")).map(c -> c + 9.0).toArray());
        Intake intake = read(
                List.of(
                        new Writing("inner", "tyre temp FL inner [C]", 1.0),
                        new Writing("warm", "tyre temp FL middle [C]", 1.0),
                        new Writing("warm", "tyre temp FL outer [C]", 1.0)),
                true);
        Channel.assertClose(
                intake.recording(),
                Quantity.TYRE_TEMPERATURE_FRONT_LEFT,
                Arrays.stream(kelvin("warm")).map(k -> k + 3.0).toArray());
    }
}
