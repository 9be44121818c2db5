package setwright.app.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.advice.Advice;
import setwright.core.advice.Adviser;
import setwright.core.advice.BrakeAdvice;
import setwright.core.advice.DriftAdvice;
import setwright.core.advice.GearingAdvice;
import setwright.core.advice.TemperatureAdvice;
import setwright.core.advice.Topic;
import setwright.core.advice.TravelAdvice;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.circuit.Lap;
import setwright.core.judgement.Diagnosis;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.core.simulation.vehicle.TyreCondition;
import setwright.core.slip.AxleEvidence;
import setwright.core.slip.WheelEvent;
import setwright.core.slip.WheelEvidence;

/** Each topic on laps of the invented world with and without what it looks for. */
final class AdviceOnSimulatedLapsTest {
    private static DrivenLaps sound;

    @BeforeAll
    static void drive(@TempDir Path folder) throws IOException {
        sound = DrivenLaps.of(folder, "orvane", List.of(), TyreCondition.usual());
    }

    private static List<Advice> advice(Diagnosis diagnosis, CarSheet sheet, Topic topic) {
        return Adviser.review(diagnosis, sheet).advice().stream()
                .filter(found -> found.topic() == topic)
                .toList();
    }

    @Test
    void aSoundCarGetsNone() {
        assertThat(Adviser.review(sound.diagnosis(), sound.sheet()).advice()).isEmpty();
        assertThat(Adviser.review(sound.diagnosis(), sound.sheet()).silent())
                .extracting(silent -> silent.topic())
                .containsExactlyInAnyOrder(Topic.values());
    }

    /** What the top gear does at the limiter follows from rolling without slip. */
    @Test
    void aFinalDriveThatIsTooShortIsLengthened(@TempDir Path folder) throws IOException {
        DrivenLaps laps = DrivenLaps.of(
                folder, "pirrel", List.of(new SetupChange("final_drive", 3.2, 3.9)), TyreCondition.usual());
        GearingAdvice gearing = (GearingAdvice)
                advice(laps.diagnosis(), laps.sheet(), Topic.GEARING).get(0);
        assertThat(gearing.onLimiter()).isTrue();
        assertThat(gearing.places()).isNotEmpty();
        assertThat(gearing.move().orElseThrow().to()).isLessThan(3.9);
        double limit = laps.sheet().revLimitRadPerS().orElseThrow()
                * laps.sheet().tyreRadiusM()
                / (1.02 * gearing.move().orElseThrow().to());
        assertThat(gearing.newLimitMps().orElseThrow()).isCloseTo(limit, within(1.0e-9));
    }

    /** The engine as if the highest gear used were the top one and a tenth longer. */
    @Test
    void aTopGearThatIsNeverUsedUpIsShortened() {
        Recording recording = sound.diagnosis().stint().recording();
        double[] gear = recording.channel(Quantity.GEAR).toArray();
        double[] engine = recording.channel(Quantity.ENGINE_SPEED).toArray();
        for (int i = 0; i < gear.length; i++) {
            if (gear[i] == 5.0) {
                gear[i] = 6.0;
                engine[i] *= 0.9;
            }
        }
        GearingAdvice gearing = (GearingAdvice) advice(
                        with(recording
                                .with(Quantity.GEAR, Channel.of(gear))
                                .with(Quantity.ENGINE_SPEED, Channel.of(engine))),
                        sound.sheet(),
                        Topic.GEARING)
                .get(0);
        assertThat(gearing.onLimiter()).isFalse();
        assertThat(gearing.highestShare()).isLessThan(0.93);
        assertThat(gearing.move().orElseThrow().to()).isGreaterThan(3.7);
    }

    /** Front tyres that lose a fifth of a per cent of their grip a kilometre let the car push more and more. */
    @Test
    void frontTyresThatWearAreADriftAndNoSetup(@TempDir Path folder) throws IOException {
        DrivenLaps laps = DrivenLaps.of(folder, "orvane", List.of(), new TyreCondition(0.06, 1200.0, 2.0e-6, 0.0));
        DriftAdvice drift = (DriftAdvice)
                advice(laps.diagnosis(), laps.sheet(), Topic.DRIFT).get(0);
        assertThat(drift.balanceMoves()).isTrue();
        assertThat(drift.balance().low()).isPositive();
        assertThat(drift.move()).isEmpty();
        assertThat(drift.fuelKg()).isPositive();
    }

    @Test
    void anAxleThatLocksMoreOftenThanChanceMovesTheBrakeBalance() {
        BrakeAdvice rear = (BrakeAdvice)
                advice(locks(1, 9), sound.sheet(), Topic.BRAKE_BALANCE).get(0);
        assertThat(rear.front()).isFalse();
        assertThat(rear.move().orElseThrow().to()).isEqualTo(74.0);
        BrakeAdvice front = (BrakeAdvice)
                advice(locks(7, 0), sound.sheet(), Topic.BRAKE_BALANCE).get(0);
        assertThat(front.move().orElseThrow().to()).isEqualTo(73.0);
        // five of five are one in sixteen, two-sided
        assertThat(advice(locks(5, 0), sound.sheet(), Topic.BRAKE_BALANCE)).isEmpty();
        assertThat(advice(locks(6, 4), sound.sheet(), Topic.BRAKE_BALANCE)).isEmpty();
    }

    private static Diagnosis locks(int front, int rear) {
        List<Integer> laps =
                sound.diagnosis().stint().goodLaps().stream().map(Lap::number).toList();
        List<WheelEvent> events = IntStream.range(0, front + rear)
                .mapToObj(i -> new WheelEvent(
                        i < front ? WheelEvent.Kind.FRONT_LOCK : WheelEvent.Kind.REAR_LOCK,
                        laps.get(i % 3),
                        OptionalInt.of(1),
                        100.0,
                        10.0 + i,
                        0.2,
                        -0.4))
                .toList();
        AxleEvidence axles = sound.diagnosis().axles().orElseThrow();
        return sound.diagnosis()
                .with(new AxleEvidence(
                        axles.trace(),
                        axles.front(),
                        axles.rear(),
                        new WheelEvidence(true, true, true, events),
                        axles.hands()));
    }

    /** The sheet says that there is less room than the recorded travel takes. */
    @Test
    void anAxleWithoutRoomIsRaised() {
        CarSheet low = sound.sheet().with(List.of(new SetupChange("front_ride_height", 62.0, 8.0)));
        List<Advice> found = advice(sound.diagnosis(), low, Topic.RIDE_HEIGHT);
        assertThat(found).hasSize(1);
        TravelAdvice travel = (TravelAdvice) found.get(0);
        assertThat(travel.front()).isTrue();
        assertThat(travel.end()).isEqualTo(TravelAdvice.End.GROUND);
        assertThat(travel.mostM()).isGreaterThan(0.008);
        assertThat(travel.move().orElseThrow().to()).isEqualTo(10.0);
    }

    /** Whatever the sheet says: travel that is cut off at one value meets something. Turned round, it counts the other way. */
    @Test
    void travelThatIsCutOffMeetsAStop() {
        for (double side : new double[] {1.0, -1.0}) {
            Recording recording = sound.diagnosis().stint().recording();
            for (Quantity wheel : List.of(
                    Quantity.SUSPENSION_FRONT_LEFT,
                    Quantity.SUSPENSION_FRONT_RIGHT,
                    Quantity.SUSPENSION_REAR_LEFT,
                    Quantity.SUSPENSION_REAR_RIGHT)) {
                double[] travel = recording.channel(wheel).toArray();
                double[] sorted =
                        Arrays.stream(travel).filter(Double::isFinite).sorted().toArray();
                boolean rear = wheel.name().contains("REAR");
                double stop = rear ? sorted[(int) (0.9 * sorted.length)] : Double.POSITIVE_INFINITY;
                recording = recording.with(
                        wheel,
                        Channel.of(Arrays.stream(travel)
                                .map(value -> side * Math.min(value, stop))
                                .toArray()));
            }
            List<Advice> found = advice(with(recording), sound.sheet(), Topic.RIDE_HEIGHT);
            assertThat(found).hasSize(1);
            TravelAdvice travel = (TravelAdvice) found.get(0);
            assertThat(travel.front()).isFalse();
            assertThat(travel.end()).isEqualTo(TravelAdvice.End.UNKNOWN_STOP);
        }
    }

    @Test
    void temperaturesAreHeldAgainstEachOtherAndNoWindowIsInvented() {
        assertThat(advice(tyres(88.0, 86.0, 85.0, 84.0), sound.sheet(), Topic.TYRE_TEMPERATURE))
                .isEmpty();
        TemperatureAdvice hot =
                (TemperatureAdvice) advice(tyres(105.0, 103.0, 85.0, 83.0), sound.sheet(), Topic.TYRE_TEMPERATURE)
                        .get(0);
        assertThat(hot.frontOverRear()).isCloseTo(20.0, within(0.01));
        assertThat(hot.leftOverRight()).isCloseTo(2.0, within(0.01));
        assertThat(hot.move()).isEmpty();
    }

    private static Diagnosis tyres(double... celsius) {
        List<Quantity> wheels = List.of(
                Quantity.TYRE_TEMPERATURE_FRONT_LEFT,
                Quantity.TYRE_TEMPERATURE_FRONT_RIGHT,
                Quantity.TYRE_TEMPERATURE_REAR_LEFT,
                Quantity.TYRE_TEMPERATURE_REAR_RIGHT);
        Recording recording = sound.diagnosis().stint().recording();
        for (int i = 0; i < 4; i++) {
            double[] kelvin = new double[recording.sampleCount()];
            Arrays.fill(kelvin, celsius[i] + 273.15);
            recording = recording.with(wheels.get(i), Channel.of(kelvin));
        }
        return with(recording);
    }

    private static Diagnosis with(Recording recording) {
        return OtherRecording.of(sound.diagnosis(), recording);
    }
}
