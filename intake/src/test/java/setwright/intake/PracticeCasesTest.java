package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.CarSheet;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.car.CarSheetReader;
import setwright.intake.map.MapEntry;
import setwright.intake.map.Proposal;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The simulated cases, whose truth says what each column is: every layout, unit and direction must be found. */
class PracticeCasesTest {
    private static final Map<String, Quantity> MEANINGS = Map.ofEntries(
            Map.entry("time", Quantity.TIME),
            Map.entry("speed", Quantity.SPEED),
            Map.entry("steer", Quantity.STEERING_WHEEL_ANGLE),
            Map.entry("throttle", Quantity.THROTTLE),
            Map.entry("brake", Quantity.BRAKE),
            Map.entry("gear", Quantity.GEAR),
            Map.entry("rpm", Quantity.ENGINE_SPEED),
            Map.entry("ay", Quantity.LATERAL_ACCELERATION),
            Map.entry("ax", Quantity.LONGITUDINAL_ACCELERATION),
            Map.entry("yaw", Quantity.YAW_RATE),
            Map.entry("lap", Quantity.LAP_NUMBER),
            Map.entry("beacon", Quantity.LAP_TRIGGER),
            Map.entry("dist", Quantity.LAP_DISTANCE),
            Map.entry("lat", Quantity.LATITUDE),
            Map.entry("lon", Quantity.LONGITUDE),
            Map.entry("x", Quantity.POSITION_X),
            Map.entry("y", Quantity.POSITION_Y),
            Map.entry("w1", Quantity.WHEEL_SPEED_FRONT_LEFT),
            Map.entry("w2", Quantity.WHEEL_SPEED_FRONT_RIGHT),
            Map.entry("w3", Quantity.WHEEL_SPEED_REAR_LEFT),
            Map.entry("w4", Quantity.WHEEL_SPEED_REAR_RIGHT),
            Map.entry("sus1", Quantity.SUSPENSION_FRONT_LEFT),
            Map.entry("sus2", Quantity.SUSPENSION_FRONT_RIGHT),
            Map.entry("sus3", Quantity.SUSPENSION_REAR_LEFT),
            Map.entry("sus4", Quantity.SUSPENSION_REAR_RIGHT),
            Map.entry("T1", Quantity.TYRE_TEMPERATURE_FRONT_LEFT),
            Map.entry("T2", Quantity.TYRE_TEMPERATURE_FRONT_RIGHT),
            Map.entry("T3", Quantity.TYRE_TEMPERATURE_REAR_LEFT),
            Map.entry("T4", Quantity.TYRE_TEMPERATURE_REAR_RIGHT),
            Map.entry("fuel", Quantity.FUEL_MASS));
    private static final Map<String, String> UNITS = Map.of("-", "0-1", "", "1");

    static Path resource(String name) {
        try {
            return Path.of(Objects.requireNonNull(PracticeCasesTest.class.getResource("/cases/" + name), name)
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static JsonNode truth(String folder) {
        try {
            return new ObjectMapper()
                    .readTree(Files.readString(resource(folder + "/truth.json")))
                    .get("recording");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "practice-01, stint1, car", "practice-02, stint1, car", "practice-03, stint1, car",
        "practice-04, stint1, car", "practice-05, stint1, car", "practice-06, stint1, car",
        "practice-07, stint1, car", "practice-08, stint1, car_stint1", "practice-08, stint2, car_stint2"
    })
    void everyColumnIsUnderstood(String folder, String stint, String sheet) {
        CarSheet car = CarSheetReader.read(resource(folder + "/" + sheet + ".yaml"));
        assertThat(car.assumed()).isEmpty();
        for (Optional<CarSheet> known : Set.of(Optional.of(car), Optional.<CarSheet>empty())) {
            Intake intake = RecordingReader.read(resource(folder + "/" + stint + ".csv.gz"), Optional.empty(), known);
            JsonNode truth = truth(folder);
            checkColumns(intake.proposal(), truth);
            checkCalibrations(intake, truth);
            checkRecording(intake.recording(), truth);
        }
    }

    private static void checkColumns(Proposal proposal, JsonNode truth) {
        boolean position =
                proposal.map().has(Quantity.POSITION_X) || proposal.map().has(Quantity.LATITUDE);
        boolean wheels = proposal.map().has(Quantity.WHEEL_SPEED_FRONT_LEFT);
        Set<Integer> mirrored = new HashSet<>();
        for (JsonNode column : truth.get("columns")) {
            Quantity quantity =
                    Objects.requireNonNull(MEANINGS.get(column.get("quantity").asString()));
            Optional<MapEntry> found = proposal.map().entry(quantity);
            assertThat(found).as("%s", quantity).isPresent();
            MapEntry entry = found.get();
            assertThat(entry.column()).isEqualTo(column.get("header").asString());
            String unit = column.get("unit").asString();
            assertThat(entry.unit().symbol()).as("%s", quantity).isEqualTo(UNITS.getOrDefault(unit, unit));
            if (column.has("positive")) {
                int sign = column.get("positive").asString().equals("left") ? 1 : -1;
                if (position || wheels) {
                    assertThat(entry.sign()).as("%s", quantity).isEqualTo(sign);
                } else {
                    mirrored.add(entry.sign() * sign);
                }
            }
        }
        assertThat(mirrored).as("without position signs agree with each other").hasSizeLessThanOrEqualTo(1);
        assertThat(proposal.map().entries()).hasSize(truth.get("columns").size());
    }

    private static void checkCalibrations(Intake intake, JsonNode truth) {
        double zero = truth.get("steering_zero_offset_deg").asDouble() * sign(intake, Quantity.STEERING_WHEEL_ANGLE);
        // Three of its own standard errors, about 0.06 deg of hand wheel where there is a gyro and 0.25 deg without.
        assertThat(calibration(intake, "steering zero"))
                .isCloseTo(zero, within(intake.proposal().map().has(Quantity.YAW_RATE) ? 0.06 : 0.25));
        if (intake.proposal().map().has(Quantity.YAW_RATE)) {
            double bias = truth.get("yaw_rate_bias_deg_s").asDouble() * sign(intake, Quantity.YAW_RATE);
            assertThat(calibration(intake, "yaw rate bias")).isCloseTo(bias, within(0.02));
        }
        assertThat(intake.recording().calibrations())
                .as("nothing else is wrong in these recordings")
                .noneMatch(c -> c.what().endsWith("lag")
                        || c.what().endsWith("offset")
                        || c.what().equals("speed scale"));
    }

    private static int sign(Intake intake, Quantity quantity) {
        return intake.proposal().map().entry(quantity).orElseThrow().sign();
    }

    private static double calibration(Intake intake, String what) {
        return intake.recording().calibrations().stream()
                .filter(c -> c.what().equals(what))
                .mapToDouble(Calibration::value)
                .findFirst()
                .orElse(0.0);
    }

    private static void checkRecording(Recording recording, JsonNode truth) {
        assertThat(recording.sampleRateHz())
                .isEqualTo(Math.min(100.0, truth.get("rate_hz").asDouble()));
        double[] speed = recording.channel(Quantity.SPEED).toArray();
        int gaps = 0;
        for (int i = 1; i < speed.length; i++) {
            gaps += Double.isNaN(speed[i]) && !Double.isNaN(speed[i - 1]) ? 1 : 0;
        }
        assertThat(gaps).as("gaps").isEqualTo(truth.get("dropouts").asInt());
        for (Quantity pedal : Set.of(Quantity.THROTTLE, Quantity.BRAKE)) {
            for (double value : recording.channel(pedal).toArray()) {
                assertThat(Double.isNaN(value) || (value >= 0.0 && value <= 1.0))
                        .as(String.format(Locale.ROOT, "%s %f", pedal, value))
                        .isTrue();
            }
        }
    }
}
