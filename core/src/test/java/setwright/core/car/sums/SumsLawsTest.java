package setwright.core.car.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.Consumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Laws that hold for every car: inverse formulas lead back, totals add up. */
final class SumsLawsTest {
    private static final long SEED = 20_250_301L;
    private static final int CARS = 500;

    @Test
    void rideFormulasLeadBack() {
        forRandomCars(random -> {
            double spring = between(random, 2.0e4, 3.0e5);
            double ratio = between(random, 0.4, 1.5);
            double mass = between(random, 80.0, 500.0);
            double tyre = between(random, 1.5e5, 4.0e5);
            double wheel = Ride.wheelRate(spring, ratio);
            assertThat(Ride.springRate(wheel, ratio)).isCloseTo(spring, roundOff(spring));
            assertThat(Ride.rateFor(Ride.frequencyHz(wheel, mass), mass)).isCloseTo(wheel, roundOff(wheel));
            assertThat(Ride.wheelRateBelow(Ride.rideRate(wheel, tyre), tyre)).isCloseTo(wheel, roundOff(wheel));
            assertThat(Ride.rideRate(wheel, tyre)).isLessThan(Math.min(wheel, tyre));
            assertThat(Damping.atWheel(Damping.atDamper(3000.0, ratio), ratio)).isCloseTo(3000.0, roundOff(3000.0));
            double damping = between(random, 0.05, 0.95);
            assertThat(Damping.ratioOf(Damping.overshoot(damping))).isCloseTo(damping, roundOff(1.0));
            double track = between(random, 1.0, 2.0);
            assertThat(RollStiffness.barFor(RollStiffness.axle(wheel, 5.0e4, track), wheel, track))
                    .isCloseTo(5.0e4, roundOff(wheel));
        });
    }

    @Test
    void lateralTransfersBalanceTheMomentAboutTheRoad() {
        forRandomCars(random -> {
            double track = between(random, 1.2, 1.8);
            LateralTransfer.Axle front = axle(random, track);
            LateralTransfer.Axle rear = axle(random, track);
            double mass = between(random, 500.0, 1500.0);
            double height = between(random, 0.25, 0.6);
            LateralTransfer car =
                    new LateralTransfer(LateralTransfer.Body.of(mass, height, 1.3, 1.2, front, rear), front, rear);
            double left = between(random, -20.0, 20.0);
            double shift = car.body().massKg() * Gravity.STANDARD_MPS2 * car.armM() * car.rollRad(left);
            double moment = mass * left * height + shift;
            assertThat(track * (car.frontN(left) + car.rearN(left))).isCloseTo(moment, roundOff(1.0e4));
            assertThat(car.frontN(-left)).isCloseTo(-car.frontN(left), roundOff(1.0e4));
            assertThat(car.frontN(left))
                    .isCloseTo(car.frontShare() * (car.frontN(left) + car.rearN(left)), roundOff(1.0e4));
        });
    }

    @Test
    void aStiffLowCarTransfersAsARigidOne() {
        LateralTransfer.Axle stiff = new LateralTransfer.Axle(1.0e12, 0.0, 1.5, 0.0, 0.0);
        LateralTransfer car = new LateralTransfer(new LateralTransfer.Body(1000.0, 0.4, 1.2, 1.3), stiff, stiff);
        double rigid = LoadTransfer.toRightWheels(1000.0, 10.0, 0.4, 1.5);
        assertThat(car.frontN(10.0) + car.rearN(10.0)).isCloseTo(rigid, within(1.0e-4));
    }

    @Test
    void aBodyWithoutRollStiffnessIsRefused() {
        LateralTransfer.Axle soft = new LateralTransfer.Axle(1000.0, 0.0, 1.5, 0.0, 0.0);
        LateralTransfer.Body body = new LateralTransfer.Body(1000.0, 0.4, 1.2, 1.3);
        assertThatThrownBy(() -> new LateralTransfer(body, soft, soft)).hasMessageContaining("falls over");
    }

    @Test
    void brakesLockTogetherAtTheIdealShare() {
        forRandomCars(random -> {
            Brakes brakes = new Brakes(
                    between(random, 500.0, 1500.0),
                    between(random, 1.0, 1.6),
                    between(random, 1.0, 1.6),
                    between(random, 0.25, 0.6));
            double friction = between(random, 0.3, 1.6);
            double deceleration = friction * Gravity.STANDARD_MPS2;
            double ideal = brakes.idealFrontShare(deceleration);
            assertThat(brakes.frontLockMps2(ideal, friction)).isCloseTo(deceleration, roundOff(deceleration));
            assertThat(brakes.rearLockMps2(ideal, friction)).isCloseTo(deceleration, roundOff(deceleration));
            assertThat(brakes.firstToLock(ideal, friction)).isEqualTo(Brakes.FirstToLock.BOTH);
            assertThat(brakes.firstToLock(ideal + 0.03, friction)).isEqualTo(Brakes.FirstToLock.FRONT);
            assertThat(brakes.firstToLock(ideal - 0.03, friction)).isEqualTo(Brakes.FirstToLock.REAR);
            assertThat(brakes.decelerationOfIdeal(ideal)).isCloseTo(deceleration, roundOff(deceleration));
            assertThat(brakes.frontFriction(deceleration, ideal)).isCloseTo(friction, roundOff(1.0));
            assertThat(brakes.rearFriction(deceleration, ideal)).isCloseTo(friction, roundOff(1.0));
            double weight = brakes.massKg() * Gravity.STANDARD_MPS2;
            assertThat(brakes.frontLoadN(deceleration) + brakes.rearLoadN(deceleration))
                    .isCloseTo(weight, roundOff(weight));
            double torques = brakes.wheelTorqueNm(deceleration, ideal, 0.3)
                    + brakes.wheelTorqueNm(deceleration, 1.0 - ideal, 0.3);
            assertThat(2.0 * torques).isCloseTo(brakes.massKg() * deceleration * 0.3, roundOff(weight));
            double bias = between(random, 0.5, 0.8);
            double atFrontLock = brakes.frontLockMps2(bias, 0.5);
            assertThat(brakes.frontFriction(atFrontLock, bias)).isCloseTo(0.5, roundOff(1.0));
        });
    }

    @Test
    void topSpeedUsesAllThePower() {
        forRandomCars(random -> {
            TopSpeed car = new TopSpeed(
                    between(random, 0.9, 1.3), between(random, 0.4, 1.6), between(random, 0.0, 0.03), 1000.0);
            double power = between(random, 1.0, 6.0e5);
            assertThat(car.powerW(car.speedMps(power))).isCloseTo(power, within(1.0e-9 * power));
        });
        assertThat(new TopSpeed(1.2, 1.0, 0.01, 1000.0).speedMps(0.0)).isZero();
    }

    @Test
    void gearingLeadsBack() {
        forRandomCars(random -> {
            Gearing gearing = new Gearing(between(random, 2.5, 5.0), between(random, 0.2, 0.4));
            double engine = between(random, 300.0, 1200.0);
            double ratio = between(random, 0.8, 3.0);
            double speed = gearing.speedMps(engine, ratio);
            assertThat(gearing.engineRadPerS(speed, ratio)).isCloseTo(engine, roundOff(engine));
            assertThat(Gearing.finalDriveFor(engine, speed, ratio, gearing.tyreRadiusM()))
                    .isCloseTo(gearing.finalDrive(), roundOff(1.0));
            double next = 0.8 * ratio;
            assertThat(gearing.speedMps(Gearing.afterShiftRadPerS(engine, ratio, next), next))
                    .isCloseTo(speed, roundOff(speed));
        });
    }

    @Test
    void pressuresLeadBackAndKeepTheFilling() {
        TyrePressure tyre = new TyrePressure(1.0e5);
        assertThat(tyre.atTemperature(1.5e5, 300.0, 360.0)).isCloseTo(2.0e5, within(1.0e-6));
        assertThat(tyre.atTemperature(tyre.atTemperature(1.5e5, 293.0, 358.0), 358.0, 293.0))
                .isCloseTo(1.5e5, within(1.0e-6));
        assertThat(tyre.atAmbient(1.5e5, 0.9e5)).isCloseTo(1.6e5, within(1.0e-6));
    }

    @Test
    void fuelForLapsAllowsThoseLaps() {
        FuelStint fuel = new FuelStint(2.1, 1.0);
        assertThat(fuel.startFor(20)).isCloseTo(43.0, within(1.0e-12));
        for (int laps = 0; laps < 200; laps++) {
            assertThat(fuel.lapsFrom(fuel.startFor(laps))).isEqualTo(laps);
        }
        assertThat(fuel.lapsFrom(42.9)).isEqualTo(19);
        assertThat(fuel.lapsFrom(0.5)).isZero();
        assertThat(FuelStint.lapsIn(1800.0, 90.0)).isEqualTo(20);
        assertThat(FuelStint.lapsIn(1801.0, 90.0)).isEqualTo(21);
    }

    @Test
    void brakingRunTendsToTheAirlessOne() {
        BrakingRun light = new BrakingRun(new Cornering(1000.0, 1.0, 0.0, 1.0e-6));
        BrakingRun airless = new BrakingRun(new Cornering(1000.0, 1.0, 0.0, 0.0));
        assertThat(light.distanceM(60.0, 10.0)).isCloseTo(airless.distanceM(60.0, 10.0), within(1.0e-3));
        assertThat(light.timeS(60.0, 10.0)).isCloseTo(airless.timeS(60.0, 10.0), within(1.0e-4));
    }

    @Test
    void moistAirIsLighter() {
        double dry = AirDensity.dry(101_325.0, 303.15);
        assertThat(AirDensity.moist(101_325.0, 303.15, 0.0)).isCloseTo(dry, within(1.0e-12));
        assertThat(AirDensity.moist(101_325.0, 303.15, 1.0)).isLessThan(dry);
    }

    private static LateralTransfer.Axle axle(Random random, double track) {
        return new LateralTransfer.Axle(
                between(random, 2.0e4, 3.0e5),
                between(random, -0.05, 0.15),
                track,
                between(random, 0.0, 120.0),
                between(random, 0.2, 0.35));
    }

    private static void forRandomCars(Consumer<Random> law) {
        Random random = new Random(SEED);
        for (int car = 0; car < CARS; car++) {
            try {
                law.accept(random);
            } catch (AssertionError e) {
                throw new AssertionError("seed " + SEED + ", car " + car + ": " + e.getMessage(), e);
            }
        }
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static Offset<Double> roundOff(double size) {
        return within(1.0e-11 * size);
    }
}
