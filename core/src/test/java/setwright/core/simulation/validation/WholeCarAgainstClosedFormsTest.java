package setwright.core.simulation.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.car.DrivenAxle;
import setwright.core.car.aero.AeroMap;
import setwright.core.car.body.Body;
import setwright.core.car.drive.Brakes;
import setwright.core.car.drive.Differential;
import setwright.core.car.drive.Powertrain;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.model.PlainCars;
import setwright.core.car.model.SteadyState;
import setwright.core.car.tyre.CamberEffect;
import setwright.core.car.tyre.CurveShape;
import setwright.core.car.tyre.PressureEffect;
import setwright.core.car.tyre.RaceTyre;
import setwright.core.limit.Envelope;
import setwright.core.limit.LapSimulator;
import setwright.core.limit.Loops;
import setwright.core.limit.PointMassEnvelope;
import setwright.core.limit.QuasiSteadyLap;

/** The envelope of four wheels where a formula says what it must be. */
final class WholeCarAgainstClosedFormsTest {
    private static final double GRAVITY = 9.80665;

    /** No height, no load sensitivity, no drag: the point mass, v² = mu m g / (m / R - mu k_z), but for slip angles. */
    @Test
    void withoutHeightItCornersAsAPointMass() {
        CarModel car = car(1200.0, 1.3, 1.3, 1.0e-3, 0.0, tyre(2942.0, 1.4, 0.0), 1.0, 0.0, 200.0e3);
        Envelope envelope = Envelope.of(car);
        for (double radius : new double[] {40.0, 80.0, 120.0}) {
            double lift = 0.5 * 1.225 * 1.0;
            double expected = Math.sqrt(1.4 * 1200.0 * GRAVITY / (1200.0 / radius - 1.4 * lift));
            QuasiSteadyLap lap = LapSimulator.lap(envelope, Loops.circle(radius, 300), 2.0 * Math.PI * radius / 300);
            // slip angles of 5 degrees turn 0.4 % of the force away, and the engine's force against them takes another
            // part of the grip
            assertThat(envelope.corneringMps2(expected) * radius)
                    .as("radius " + radius)
                    .isCloseTo(expected * expected, withPercentage(2.0));
            assertThat(lap.lowestMps()).isLessThanOrEqualTo(expected * 1.003);
        }
    }

    /** 1300 kg, 100 kW, C_D A 0.65 m², rolling 0.012, 1.225 kg/m³: 61.065 m/s. */
    @Test
    void topSpeedIsWhereThePowerGoesIntoTheAir() {
        CarModel car = car(1300.0, 1.3, 1.3, 0.5, 0.65, tyre(3187.0, 1.3, 0.1), 0.0, 0.012, 100.0e3);
        assertThat(Envelope.of(car).topSpeedMps()).isCloseTo(61.065, withPercentage(0.1));
    }

    /** Ideal brake balance and no load sensitivity: every tyre at its peak together, mu g and the air. */
    @Test
    void brakingWithTheIdealShareUsesAllTyres() {
        double height = 0.5;
        double friction = 1.3;
        // (b + z h) / L at z = mu (textbook: ideal brake force distribution)
        double ideal = (1.3 + friction * height) / 2.6;
        CarModel car = car(1200.0, 1.3, 1.3, height, 0.6, tyre(2942.0, friction, 0.0), 0.0, 0.0, 200.0e3);
        Envelope best = Envelope.of(with(car, ideal));
        double drag = 0.5 * 1.225 * 0.6 * 30.0 * 30.0 / 1200.0;
        // the model stops at 0.985 of the peak
        assertThat(-best.hardestBrakingMps2(30.0)).isCloseTo(0.985 * friction * GRAVITY + drag, withPercentage(1.5));
        assertThat(-Envelope.of(with(car, ideal - 0.08)).hardestBrakingMps2(30.0))
                .isLessThan(0.97 * -best.hardestBrakingMps2(30.0));
        assertThat(-Envelope.of(with(car, ideal + 0.08)).hardestBrakingMps2(30.0))
                .isLessThan(0.97 * -best.hardestBrakingMps2(30.0));
    }

    /**
     * An open-wheel car of G. Perantoni and D. Limebeer, Vehicle System Dynamics 52(5), 2014, 653-678 (values from memory): with equal
     * wheel loads 5.3 g at 80 m/s is the upper bound, and drag limits the speed to 88.42 m/s.
     */
    @Test
    void anOpenWheelCarStaysBelowItsBound() {
        // friction 1.80 at 2000 N, 1.45 at 6000 N, straight between
        RaceTyre tyre = new RaceTyre(
                4000.0,
                1.625,
                1.575,
                0.35 / 1.625,
                Math.toRadians(8.5),
                0.0,
                0.105,
                MountedTyre.SHAPE,
                CurveShape.of(1.5),
                CamberEffect.NONE,
                PressureEffect.NONE);
        double lift = 4.5 * 1.2 / 1.225;
        CarModel car =
                car(660.0, 1.8, 1.6, 0.30, 1.35 * 1.2 / 1.225, new MountedTyre(tyre, 0.0, 1.0), lift, 0.0, 560.0e3);
        Envelope envelope = Envelope.of(car);
        assertThat(envelope.topSpeedMps()).isCloseTo(88.42, withPercentage(0.5));
        assertThat(envelope.corneringMps2(80.0)).isBetween(0.85 * 52.4, 52.4);
    }

    /** The work of slip angles is what the axles' lateral forces do along the path: F_yf sin(alpha_f) + F_yr sin(alpha_r). */
    @Test
    void scrubIsTheWorkOfSlipAngles() {
        CarModel car = car(1200.0, 1.25, 1.35, 0.5, 0.6, tyre(2942.0, 1.4, 0.1), 0.5, 0.012, 200.0e3);
        Envelope envelope = Envelope.of(car);
        Equilibrium equilibrium = new Equilibrium(car, Equilibrium.Axes.PATH);
        Random random = new Random(7L);
        for (int i = 0; i < 40; i++) {
            double speed = 15.0 + 35.0 * random.nextDouble();
            double lateral = (0.3 + 0.6 * random.nextDouble()) * envelope.corneringMps2(speed);
            SteadyState state = equilibrium.at(speed, 0.0, lateral).orElseThrow();
            double front = 1200.0 * lateral * 1.35 / 2.6 * Math.sin(state.frontSlipRad());
            double rear = 1200.0 * lateral * 1.25 / 2.6 * Math.sin(state.rearSlipRad());
            double scrub = envelope.at(speed, 0.0, lateral).scrubN();
            // besides, the air's force points along the car, not along the path
            assertThat(scrub).isCloseTo(front + rear, within(0.05 * (front + rear) + 15.0));
        }
    }

    /** A car without height and load sensitivity laps as the point mass does, up to slip angles and the wheels that brake and drive. */
    @Test
    void itsLapIsCloseToThatOfAPointMass() {
        CarModel car = car(1200.0, 1.3, 1.3, 1.0e-3, 0.6, tyre(2942.0, 1.4, 0.0), 0.0, 0.0, 200.0e3);
        double whole =
                LapSimulator.lap(Envelope.of(car), Loops.circuit(2500), 2.0).timeS();
        double point = LapSimulator.lap(
                        new PointMassEnvelope(1200.0, 1.4, 200.0e3, 0.5 * 1.225 * 0.6, 0.0), Loops.circuit(2500), 2.0)
                .timeS();
        assertThat(whole / point).isBetween(1.0, 1.03);
    }

    private static MountedTyre tyre(double nominal, double friction, double sensitivity) {
        return new MountedTyre(
                new RaceTyre(
                        nominal,
                        friction,
                        friction,
                        sensitivity,
                        Math.toRadians(5.0),
                        0.0,
                        0.1,
                        MountedTyre.SHAPE,
                        CurveShape.of(1.5),
                        CamberEffect.NONE,
                        PressureEffect.NONE),
                0.0,
                1.0);
    }

    private static CarModel with(CarModel car, double frontShare) {
        return new CarModel(
                car.body(),
                car.aero(),
                0.0,
                0.0,
                car.powertrain(),
                car.differential(),
                new Brakes(frontShare),
                car.drivenAxle(),
                car.driveFront(),
                0.0,
                car.front(),
                car.rear(),
                0.0,
                0.0,
                car.yawInertiaKgM2(),
                car.rollingShare());
    }

    /** A car on all-wheel drive with constant power and downforce in the share of its weight, at 1.225 kg/m³. */
    private static CarModel car(
            double mass,
            double toFront,
            double toRear,
            double height,
            double dragM2,
            MountedTyre tyre,
            double liftM2,
            double rolling,
            double power) {
        double density = 1.225;
        double share = toRear / (toFront + toRear);
        Body body = new Body(
                mass,
                toFront,
                toRear,
                height,
                PlainCars.axle(PlainCars.RIGID, 0.0, 1.0e4),
                PlainCars.axle(PlainCars.RIGID, 0.0, 1.0e4),
                400.0,
                1500.0);
        int points = 400;
        double[] engine = new double[points];
        double[] torque = new double[points];
        for (int i = 0; i < points; i++) {
            engine[i] = 10.0 + i;
            torque[i] = power / engine[i];
        }
        return new CarModel(
                body,
                new AeroMap(liftM2 * share, liftM2 * (1.0 - share), dragM2, 0.1, 0.1, 0.0, 0.0, 0.0, density),
                0.0,
                0.0,
                new Powertrain(engine, torque, new double[] {1.0}, 1.0, 0.3, 1000.0, 1000.0, 1.0),
                new Differential(0.0, 0.0, 0.0),
                new Brakes(share),
                DrivenAxle.ALL,
                share,
                0.0,
                tyre,
                tyre,
                0.0,
                0.0,
                1500.0,
                rolling);
    }
}
