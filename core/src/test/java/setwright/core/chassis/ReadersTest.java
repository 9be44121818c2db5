package setwright.core.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/** Each reader on runs whose truth is a formula. */
class ReadersTest {
    private static final double LAP_S = 60.0;
    private static final CarSheet BARE = Sheets.with(List.of());

    private static double swept(double t) {
        return 35.0 + 25.0 * Math.sin(2.0 * Math.PI * t / 30.0);
    }

    private static ChassisEvidence.Builder into() {
        return new ChassisEvidence.Builder();
    }

    // ride heights

    /** 60 mm less 8 mm at 50 m/s in front, 70 mm less 14 mm behind: the rake falls by 6 mm. */
    @Test
    void heightsFallAlongALineOverTheSquareOfTheSpeed() {
        Random random = new Random(3L);
        Runs runs = new Runs(50.0, LAP_S, 5)
                .speed(ReadersTest::swept)
                .with(Quantity.RIDE_HEIGHT_FRONT, t -> 0.060 - 0.008 * air(t) + 5.0e-4 * random.nextGaussian())
                .with(Quantity.RIDE_HEIGHT_REAR_LEFT, t -> 0.073 - 0.014 * air(t) + 5.0e-4 * random.nextGaussian())
                .with(Quantity.RIDE_HEIGHT_REAR_RIGHT, t -> 0.067 - 0.014 * air(t) + 5.0e-4 * random.nextGaussian());
        ChassisEvidence.Builder into = into();
        RideHeightReader.read(runs.motion(), BARE, into);
        RideHeights heights = into.done().rideHeights().orElseThrow();
        // half a millimetre of noise, fifty samples and more in each class of each lap
        double classes = 3.0e-4;
        assertThat(heights.fromTravel()).isFalse();
        assertThat(heights.frontFallM().mean()).isCloseTo(0.008, within(classes));
        assertThat(heights.rearFallM().mean()).isCloseTo(0.014, within(classes));
        assertThat(heights.rakeGainM().mean()).isCloseTo(-0.006, within(classes));
        assertThat(heights.rakeGainM().high()).isNegative();
        for (RideHeights.Point point : heights.points()) {
            assertThat(point.rakeM().mean())
                    .isCloseTo(0.010 - 0.006 * point.speedMps() * point.speedMps() / 2500.0, within(2.0 * classes));
        }
        // at 60 m/s the front is 11.5 mm down, and noise reaches three deviations further
        assertThat(heights.frontLeastM().mean()).isCloseTo(0.0485 - 0.0010, within(1.0e-3));
    }

    private static double air(double t) {
        return swept(t) * swept(t) / 2500.0;
    }

    @Test
    void withoutHeightSensorsTravelIsTakenFromTheSheetsHeights() {
        Runs runs = new Runs(50.0, LAP_S, 4).speed(ReadersTest::swept).forward(t -> -2.0 * Math.sin(t));
        for (Wheel wheel : Wheel.values()) {
            runs.with(wheel.of("SUSPENSION"), t -> -0.010 * air(t) - (wheel.isFront() ? 0.002 : -0.002) * Math.sin(t));
        }
        ChassisEvidence.Builder without = into();
        RideHeightReader.read(runs.motion(), BARE, without);
        assertThat(without.done().missing().get(0).why()).contains("no ride heights");
        CarSheet sheet = Sheets.with(List.of(
                new SetupItem("front_ride_height", 60.0, "mm", 50.0, 80.0, 1.0),
                new SetupItem("rear_ride_height", 6.5, "cm", 5.0, 8.0, 0.1)));
        ChassisEvidence.Builder into = into();
        RideHeightReader.read(runs.motion(), sheet, into);
        RideHeights heights = into.done().rideHeights().orElseThrow();
        assertThat(heights.fromTravel()).isTrue();
        assertThat(heights.frontFallM().mean()).isCloseTo(0.010, within(1.0e-3));
        assertThat(heights.points().get(1).rakeM().mean()).isCloseTo(0.005, within(2.0e-3));
    }

    // brakes

    private static final double PEDAL_PA = 60.0e5;

    /** Two stops a lap, each released from 1.5 s on by a share of its strength each tenth of a second. */
    private static double pedal(double t, double perTenth) {
        double at = t % 30.0;
        if (at < 1.0) {
            return at;
        }
        return at < 1.5 ? 1.0 : Math.max(0.0, 1.0 - perTenth * (at - 1.5) / 0.1);
    }

    private static Runs braking(double share, double zeroPa, double perTenth) {
        return new Runs(100.0, LAP_S, 6)
                .throttle(t -> t % 30.0 > 5.0 ? 1.0 : 0.0)
                .with(Quantity.BRAKE_PRESSURE_FRONT, t -> 2.0 * share * PEDAL_PA * pedal(t, perTenth) + zeroPa)
                .with(Quantity.BRAKE_PRESSURE_REAR, t -> 2.0 * (1.0 - share) * PEDAL_PA * pedal(t, perTenth) - zeroPa);
    }

    private static BrakePressures brakes(Runs runs, CarSheet sheet) {
        List<BrakePressureReader.TurnIn> turnIns = new ArrayList<>();
        for (int lap = 0; lap < 6; lap++) {
            turnIns.add(new BrakePressureReader.TurnIn(lap + 1, 1, lap * LAP_S + 1.5));
            turnIns.add(new BrakePressureReader.TurnIn(lap + 1, 2, lap * LAP_S + 20.0));
        }
        ChassisEvidence.Builder into = into();
        BrakePressureReader.read(runs.motion(), turnIns, sheet, into);
        return into.done().brakePressures().orElseThrow();
    }

    @Test
    void theShareIsThatOfThePressuresWhateverTheSensorsZero() {
        for (double share : new double[] {0.45, 0.62}) {
            BrakePressures found = brakes(braking(share, 1.5e5, 0.12), BARE);
            assertThat(found.share().mean()).isCloseTo(share, within(1.0e-9));
            assertThat(found.growth().mean()).isCloseTo(0.0, within(1.0e-9));
            assertThat(found.steps()).hasSize(4);
            assertThat(found.force()).isEmpty();
        }
    }

    @Test
    void aRearThatIsHeldBackShowsFromLightToHard() {
        Runs runs = braking(0.55, 0.0, 0.12)
                .with(Quantity.BRAKE_PRESSURE_REAR, t -> Math.min(0.9 * PEDAL_PA * pedal(t, 0.12), 25.0e5));
        BrakePressures found = brakes(runs, BARE);
        assertThat(found.growth().low()).isPositive();
        assertThat(found.steps().get(0).share().mean())
                .isLessThan(found.steps().get(3).share().mean());
    }

    /** One corner is braked into, the other is not: the first lets go of 12 % each tenth of a second. */
    @Test
    void theReleaseIsReadFromTurnInOn() {
        BrakePressures found = brakes(braking(0.6, 1.0e5, 0.12), BARE);
        assertThat(found.releases()).singleElement().satisfies(release -> {
            assertThat(release.corner()).isEqualTo(1);
            assertThat(release.perTenth().mean()).isCloseTo(0.12, within(0.005));
            assertThat(release.laps()).hasSize(6);
            assertThat(release.scatter()).isCloseTo(0.0, within(1.0e-9));
        });
    }

    /** Torques of 20 and 10 Nm per bar: pressures of one to one are two thirds of the force. */
    @Test
    void theSheetsBiasIsHeldAgainstTheForcesAndNotThePressures() {
        SetupItem right = new SetupItem("brake_bias_front", 66.7, "%", 50.0, 80.0, 0.5);
        SetupItem wrong = new SetupItem("brake_bias_front", 60.0, "%", 50.0, 80.0, 0.5);
        BrakePressures agrees = brakes(braking(0.5, 0.0, 0.12), torques(right));
        assertThat(agrees.force().orElseThrow().share().mean()).isCloseTo(2.0 / 3.0, within(1.0e-9));
        assertThat(agrees.force().orElseThrow().contradicts()).isFalse();
        assertThat(brakes(braking(0.5, 0.0, 0.12), torques(wrong))
                        .force()
                        .orElseThrow()
                        .contradicts())
                .isTrue();
    }

    private static CarSheet torques(SetupItem bias) {
        CarSheet plain = Sheets.with(List.of(bias));
        return new CarSheet(
                plain.description(),
                plain.drivenAxle(),
                plain.massKg(),
                plain.fuelStartKg(),
                plain.frontWeightShare(),
                plain.wheelbaseM(),
                plain.trackFrontM(),
                plain.trackRearM(),
                plain.centreOfMassHeightM(),
                plain.steeringRatio(),
                plain.tyreRadiusM(),
                plain.gearRatios(),
                plain.revLimitRadPerS(),
                plain.brakePressureMaxPa(),
                plain.motionRatioFront(),
                plain.motionRatioRear(),
                plain.barFront(),
                plain.barRear(),
                plain.downforce(),
                new CarDetail(
                        axle(20.0e-5),
                        axle(10.0e-5),
                        CarDetail.NONE.body(),
                        CarDetail.NONE.air(),
                        CarDetail.NONE.engine(),
                        CarDetail.NONE.tyre()),
                plain.setup(),
                plain.labels(),
                plain.assumed());
    }

    private static CarDetail.Axle axle(double torqueNmPerPa) {
        OptionalDouble unknown = OptionalDouble.empty();
        return new CarDetail.Axle(
                unknown, unknown, unknown, unknown, OptionalDouble.of(torqueNmPerPa), Optional.empty());
    }

    @Test
    void aCircuitThatShowsNothingIsNotReadAsAShare() {
        ChassisEvidence.Builder into = into();
        Runs dead = new Runs(50.0, LAP_S, 3)
                .with(Quantity.BRAKE_PRESSURE_FRONT, t -> 1.0e5)
                .with(Quantity.BRAKE_PRESSURE_REAR, t -> 1.0e5);
        BrakePressureReader.read(dead.motion(), List.of(), BARE, into);
        assertThat(into.done().brakePressures()).isEmpty();
        assertThat(into.done().missing().get(0).recorded()).isTrue();
    }

    // tyres

    private static Runs warming(double tauS, double riseK) {
        Random random = new Random(11L);
        Runs runs = new Runs(10.0, LAP_S, 12);
        for (Wheel wheel : Wheel.values()) {
            double[] scatter = random.doubles(12, -0.3, 0.3).toArray();
            runs.with(
                    wheel.of("TYRE_TEMPERATURE"),
                    t -> 365.0 - riseK * Math.exp(-t / tauS) + scatter[Math.min(11, (int) (t / LAP_S))]);
        }
        return runs;
    }

    @Test
    void warmUpIsFitted() {
        ChassisEvidence.Builder into = into();
        WarmUpReader.read(warming(110.0, 40.0).motion(), into);
        WarmUp warm = into.done().warmUp().orElseThrow();
        assertThat(warm.tauLowS()).isLessThan(110.0);
        assertThat(warm.tauHighS()).isGreaterThan(110.0);
        assertThat(warm.tauS()).isCloseTo(110.0, within(12.0));
        assertThat(warm.endK()).isCloseTo(365.0, within(0.5));
        // 40 exp(-t/110) falls below 2 K at 330 s: in the sixth lap, so that the seventh is the first
        assertThat(warm.steadyLap()).isEqualTo(7);
        assertThat(warm.lapsUntil()).isEqualTo(6);
    }

    @Test
    void tyresThatStayAsTheyAreDoNotWarmUp() {
        ChassisEvidence.Builder into = into();
        WarmUpReader.read(warming(120.0, 0.0).motion(), into);
        assertThat(into.done().warmUp()).isEmpty();
        ChassisEvidence.Builder slow = into();
        WarmUpReader.read(warming(2000.0, 40.0).motion(), slow);
        assertThat(slow.done().warmUp()).isEmpty();
        assertThat(slow.done().missing().get(0).why()).contains("still getting warmer");
    }

    private static Tread.OfWheel tread(double inner, double middle, double outer) {
        Random random = new Random(5L);
        double[] scatter = random.doubles(6, -0.5, 0.5).toArray();
        Runs runs = new Runs(10.0, LAP_S, 6)
                .with(Quantity.TYRE_TEMPERATURE_INNER_FRONT_LEFT, t -> inner + scatter[Math.min(5, (int) (t / LAP_S))])
                .with(Quantity.TYRE_TEMPERATURE_MIDDLE_FRONT_LEFT, t -> middle)
                .with(Quantity.TYRE_TEMPERATURE_OUTER_FRONT_LEFT, t -> outer);
        ChassisEvidence.Builder into = into();
        TreadReader.read(runs.motion(), into);
        return into.done().tread().orElseThrow().wheels().get(0);
    }

    @Test
    void theTreadSaysWhatCommonPracticeReadsInIt() {
        assertThat(tread(360.0, 357.0, 353.0).camber()).isEqualTo(Tread.Says.NOTHING);
        assertThat(tread(360.0, 357.0, 353.0).pressure()).isEqualTo(Tread.Says.NOTHING);
        assertThat(tread(375.0, 365.0, 353.0).camber()).isEqualTo(Tread.Says.CAMBER_MUCH);
        assertThat(tread(350.0, 353.0, 356.0).camber()).isEqualTo(Tread.Says.CAMBER_LITTLE);
        assertThat(tread(355.0, 364.0, 353.0).pressure()).isEqualTo(Tread.Says.PRESSURE_HIGH);
        assertThat(tread(362.0, 352.0, 356.0).pressure()).isEqualTo(Tread.Says.PRESSURE_LOW);
    }

    @Test
    void pressuresAreHeldAgainstTheStartTheSidesAndTheSheet() {
        Runs runs = new Runs(10.0, LAP_S, 10);
        for (Wheel wheel : Wheel.values()) {
            double over = wheel == Wheel.FRONT_LEFT ? 0.05e5 : 0.0;
            runs.with(wheel.of("TYRE_PRESSURE"), t -> 1.50e5 + over + 0.30e5 * (1.0 - Math.exp(-t / 60.0)) + 2.0 * t);
        }
        CarSheet sheet = Sheets.with(List.of(new SetupItem("front_tyre_pressure", 1.6, "bar", 1.4, 1.7, 0.02)));
        ChassisEvidence.Builder into = into();
        TyrePressureReader.read(runs.motion(), sheet, into);
        TyrePressures found = into.done().tyrePressures().orElseThrow();
        TyrePressures.OfWheel frontLeft = found.wheels().get(0);
        assertThat(frontLeft.startPa()).isCloseTo(1.55e5 + 0.30e5 * (1.0 - Math.exp(-10.0 / 60.0)), within(500.0));
        assertThat(frontLeft.warmPa().mean()).isCloseTo(1.85e5 + 900.0, within(300.0));
        assertThat(frontLeft.drift().slope()).isCloseTo(120.0, within(60.0));
        assertThat(frontLeft.outside()).isTrue();
        assertThat(found.wheels().get(2).sheet()).isEmpty();
        assertThat(found.frontLeftOver().mean()).isCloseTo(0.05e5, within(1.0e-6));
        assertThat(found.rearLeftOver().mean()).isCloseTo(0.0, within(1.0e-6));
    }

    // steering

    /** A trail that falls in proportion to the slip, down to a fifth that the caster holds. */
    private static Motion steering(boolean fades) {
        return new Runs(50.0, LAP_S, 5)
                .lateral(t -> 12.0 * Math.sin(2.0 * Math.PI * t / 12.0))
                .with(Quantity.STEERING_TORQUE, t -> {
                    double across = 12.0 * Math.sin(2.0 * Math.PI * t / 12.0);
                    return 0.8 * across * (fades ? 0.2 + 0.8 * Math.max(0.0, 1.0 - use(t)) : 1.0);
                })
                .motion();
    }

    private static double use(double t) {
        return 1.1 * Math.abs(Math.sin(2.0 * Math.PI * t / 12.0));
    }

    private static SteeringTorque torque(boolean fades) {
        Motion motion = steering(fades);
        double[] use = new double[motion.recording().sampleCount()];
        for (int i = 0; i < use.length; i++) {
            use[i] = use(i / 50.0);
        }
        ChassisEvidence.Builder into = into();
        SteeringTorqueReader.read(motion, Channel.of(use), into);
        return into.done().steeringTorque().orElseThrow();
    }

    @Test
    void theWheelGoesLightWhereTheTrailFades() {
        SteeringTorque light = torque(true);
        // at a use of 0.3 the trail is 0.76 of its most, from 0.8 to 1.1 about 0.24
        assertThat(light.kept().mean()).isBetween(0.25, 0.45);
        assertThat(light.goesLight()).isTrue();
        SteeringTorque firm = torque(false);
        assertThat(firm.kept().mean()).isCloseTo(1.0, within(1.0e-9));
        assertThat(firm.goesLight()).isFalse();
    }

    @Test
    void nothingIsReadFromWhatWasNotRecorded() {
        Motion motion = new Runs(50.0, LAP_S, 3).motion();
        ChassisEvidence.Builder into = into();
        RideHeightReader.read(motion, BARE, into);
        BrakePressureReader.read(motion, List.of(), BARE, into);
        WarmUpReader.read(motion, into);
        TreadReader.read(motion, into);
        TyrePressureReader.read(motion, BARE, into);
        SteeringTorqueReader.read(motion, Optional.empty(), into);
        DayReader.read(motion, into);
        ChassisEvidence nothing = into.done();
        assertThat(nothing.isEmpty()).isTrue();
        assertThat(nothing.missing()).hasSize(7).noneMatch(ChassisEvidence.Missing::recorded);
    }
}
