package setwright.app.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.app.evidence.Answer;
import setwright.app.json.DiagnosisJsonWriter;
import setwright.app.report.ExamplePages;
import setwright.app.report.Report;
import setwright.app.story.Story;
import setwright.app.story.Storyteller;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.chassis.BrakePressures;
import setwright.core.chassis.ChassisEvidence;
import setwright.core.chassis.DamperMotion;
import setwright.core.chassis.RideHeights;
import setwright.core.chassis.Subject;
import setwright.core.chassis.Wheel;
import setwright.core.judgement.Diagnosis;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.core.simulation.vehicle.TyreCondition;

/** What the sensors tell of laps of the invented world, whose truth is known; and how it looks. */
final class SensorsOnSimulatedLapsTest {
    /** The sheet's front share of the brake force; without torques on it the logger takes it for that of the pressures. */
    private static final double BIAS = 0.735;

    @RegisterExtension
    static final ExamplePages PAGES = new ExamplePages();

    private static DrivenLaps laps;

    @BeforeAll
    static void drive(@TempDir Path folder) throws IOException {
        laps = DrivenLaps.of(folder, "orvane", List.of(), TyreCondition.usual());
        PAGES.keep("sensors", Report.html(answer(everything()), Figures.forPage(UnitSystem.METRIC)));
    }

    private static ChassisEvidence evidence(Diagnosis diagnosis) {
        return ChassisEvidence.of(diagnosis, laps.sheet());
    }

    @Test
    void theBiasThatWasDrivenIsRead() {
        BrakePressures brakes = evidence(laps.diagnosis()).brakePressures().orElseThrow();
        // the logger writes tenths of a bar
        double written = 0.002;
        assertThat(brakes.share().mean()).isCloseTo(BIAS, within(written));
        assertThat(brakes.growth().mean()).isCloseTo(0.0, within(0.01));
        assertThat(brakes.releases()).isNotEmpty();
        assertThat(brakes.releases())
                .allSatisfy(release -> assertThat(release.perTenth().mean()).isBetween(0.0, 1.0));
    }

    /** Two ways to the same figure: measured heights, and the sheet's with the suspension travel. */
    @Test
    void heightsAndTravelAgree() {
        RideHeights measured = evidence(laps.diagnosis()).rideHeights().orElseThrow();
        RideHeights byTravel = evidence(without("RIDE_HEIGHT")).rideHeights().orElseThrow();
        assertThat(measured.fromTravel()).isFalse();
        assertThat(byTravel.fromTravel()).isTrue();
        // a wing presses the car down, and more behind than in front or not by the springs: both say the same
        assertThat(measured.frontFallM().mean()).isPositive();
        assertThat(byTravel.frontFallM().mean()).isCloseTo(measured.frontFallM().mean(), within(5.0e-4));
        assertThat(byTravel.rakeGainM().mean()).isCloseTo(measured.rakeGainM().mean(), within(5.0e-4));
        assertThat(measured.points()).hasSizeGreaterThan(2);
    }

    @Test
    void dampersAreReadAsFarAsTheRateCarriesThem() {
        DamperMotion dampers = evidence(laps.diagnosis()).dampers().orElseThrow();
        assertThat(dampers.wheelHop()).as("fifty samples a second").isFalse();
        for (DamperMotion.OfWheel wheel : dampers.wheels()) {
            assertThat(wheel.shares().stream().mapToDouble(Double::doubleValue).sum())
                    .isCloseTo(1.0, within(1.0e-9));
            // a damper ends a lap where it began it
            assertThat(wheel.lowBump().mean() + wheel.highBump().mean()).isBetween(0.35, 0.65);
        }
    }

    @Test
    void whatWasNotRecordedIsSaid() {
        ChassisEvidence evidence = evidence(laps.diagnosis());
        assertThat(evidence.missing())
                .extracting(ChassisEvidence.Missing::subject)
                .containsExactlyInAnyOrder(
                        Subject.WARM_UP, Subject.TREAD, Subject.TYRE_PRESSURE, Subject.STEERING_TORQUE, Subject.DAY);
        ChassisEvidence bare = evidence(without("RIDE_HEIGHT", "SUSPENSION", "BRAKE_PRESSURE"));
        assertThat(bare.isEmpty()).isTrue();
        assertThat(bare.missing()).hasSize(Subject.values().length);
    }

    @Test
    void theWordsNameWhatStandsOut() {
        Story.Link told = Storyteller.tell(answer(everything()), Figures.forTerminal(UnitSystem.METRIC))
                .sensors();
        assertThat(told.answer()).contains("Front left tyre, the middle is hottest");
        assertThat(told.details()).anyMatch(detail -> detail.contains("teering torque"));
        assertThat(String.join(" ", told.details())).doesNotContain("NaN", "Infinity", "Optional", "unknown");
        Story.Link silent = Storyteller.tell(
                        answer(without("RIDE_HEIGHT", "SUSPENSION", "BRAKE_PRESSURE")),
                        Figures.forTerminal(UnitSystem.METRIC))
                .sensors();
        assertThat(silent.answer()).contains("nothing depends on them");
        assertThat(silent.details()).hasSize(1);
    }

    @Test
    void theJsonKeepsItsSchema() throws IOException {
        String json = DiagnosisJsonWriter.write(answer(everything()));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of("../docs/diagnose.schema.json")), InputFormat.JSON)
                        .validate(json, InputFormat.JSON))
                .isEmpty();
        assertThat(json).contains("front_pressure_share_percent", "rake_gain_at_180_kmh_mm", "\"tau_s\"");
    }

    static List<Arguments> pages() {
        return ExamplePages.atAllWidths("sensors").toList();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void thePageHoldsAtAllWidths(String name, int width) {
        PAGES.assertMarginsHold(name, width);
    }

    private static Answer answer(Diagnosis diagnosis) {
        return new Answer(diagnosis, laps.sheet(), List.of(), List.of());
    }

    private static Diagnosis without(String... families) {
        Recording recording = laps.diagnosis().stint().recording();
        Map<Quantity, Channel> kept = new EnumMap<>(Quantity.class);
        for (Quantity quantity : recording.quantities()) {
            if (Set.of(families).stream().noneMatch(family -> quantity.name().startsWith(family))) {
                kept.put(quantity, recording.channel(quantity));
            }
        }
        return with(new Recording(recording.name(), recording.sampleRateHz(), kept, recording.calibrations()));
    }

    /** Tyres and steering that the invented world does not know, as formulas. */
    private static Diagnosis everything() {
        Recording recording = laps.diagnosis().stint().recording();
        double step = recording.stepS();
        for (Wheel wheel : Wheel.values()) {
            double bulge = wheel == Wheel.FRONT_LEFT ? 12.0 : 1.0;
            recording = add(
                    recording, wheel.of("TYRE_TEMPERATURE"), i -> 362.0 - 45.0 * Math.exp(-i * step / 150.0) + wave(i));
            recording = add(recording, wheel.of("TYRE_TEMPERATURE_INNER"), i -> 365.0 + wave(i));
            recording = add(recording, wheel.of("TYRE_TEMPERATURE_MIDDLE"), i -> 361.0 + bulge + wave(i));
            recording = add(recording, wheel.of("TYRE_TEMPERATURE_OUTER"), i -> 357.0 + wave(i));
            recording = add(
                    recording, wheel.of("TYRE_PRESSURE"), i -> 1.55e5 + 0.25e5 * (1.0 - Math.exp(-i * step / 200.0)));
        }
        Channel lateral = laps.diagnosis().trace().lateral();
        Channel use = laps.diagnosis().axles().orElseThrow().trace().frontUse();
        recording = add(
                recording,
                Quantity.STEERING_TORQUE,
                i -> 0.7 * lateral.get(i) * (0.3 + 0.7 * Math.max(0.0, 1.0 - use.get(i))));
        recording = add(recording, Quantity.TRACK_TEMPERATURE, i -> 304.0 + 1.0e-4 * i);
        return with(add(recording, Quantity.AIR_TEMPERATURE, i -> 295.15));
    }

    private static double wave(int i) {
        return 0.6 * Math.sin(0.37 * (i / 5000));
    }

    private static Recording add(Recording recording, Quantity quantity, IntToDoubleFunction value) {
        double[] samples = new double[recording.sampleCount()];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = value.applyAsDouble(i);
        }
        return recording.with(quantity, Channel.of(samples));
    }

    private static Diagnosis with(Recording recording) {
        return OtherRecording.of(laps.diagnosis(), recording);
    }
}
