package setwright.core.simulation.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.car.DrivenAxle;
import setwright.core.car.body.Body;
import setwright.core.car.drive.Powertrain;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.model.PlainCars;
import setwright.core.car.model.SingleTrack;
import setwright.core.car.model.StepResponse;
import setwright.core.simulation.vehicle.Inputs;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.TransientCar;
import setwright.core.simulation.vehicle.TyreCondition;

/** The transient car against closed forms: constant power, braking distance, step of steer in the linear range. */
final class TransientCarAgainstLawsTest {
    private static final RunningGear WEIGHTLESS = new RunningGear(0.01, 0.0, 0.001, 0.0);
    private static final double MASS = 1000.0;

    private static CarModel car(double stiffness, double toFront, double toRear, double yawInertia, Powertrain engine) {
        Body body = new Body(
                MASS,
                toFront,
                toRear,
                0.3,
                PlainCars.axle(40.0e3, 0.0, 4000.0),
                PlainCars.axle(40.0e3, 0.0, 4000.0),
                300.0,
                900.0);
        double load = 0.25 * MASS * 9.80665;
        MountedTyre tyre = PlainCars.linear(load, stiffness);
        CarModel plain = PlainCars.car(body, tyre, tyre, 0.0, 0.6, yawInertia);
        return new CarModel(
                plain.body(),
                plain.aero(),
                0.0,
                0.0,
                engine,
                plain.differential(),
                plain.brakes(),
                DrivenAxle.REAR,
                0.0,
                0.0,
                plain.front(),
                plain.rear(),
                0.0,
                0.0,
                yawInertia,
                0.0);
    }

    private static Powertrain constantPower(double watts) {
        double[] speed = new double[400];
        double[] torque = new double[400];
        for (int i = 0; i < 400; i++) {
            speed[i] = 5.0 * Math.pow(1.015, i);
            torque[i] = watts / speed[i];
        }
        return new Powertrain(speed, torque, new double[] {1.0}, 1.0, 0.3, 120.0, 120.0, 1.0);
    }

    /** Work and energy: t = m (v1^2 - v0^2) / 2P, s = m (v1^3 - v0^3) / 3P; from rest 100 kW brings 1000 kg to 30 m/s in 4.5 s, 90 m. */
    @Test
    void constant_power_gives_the_speed_that_energy_says() {
        CarModel car = car(90.0e3, 1.2, 1.2, 1400.0, constantPower(100.0e3));
        double first = 15.0;
        TransientCar run = new TransientCar(car, WEIGHTLESS, TyreCondition.STEADY, first, 3.0e4);
        double time = 0.0;
        while (run.speedMps() < 30.0) {
            run.step(0.001, new Inputs(0.0, 1.0, 0.0));
            time += 0.001;
        }
        double wantedS = MASS * (900.0 - first * first) / 2.0e5;
        double wantedM = MASS * (27000.0 - first * first * first) / 3.0e5;
        // slip of the driven wheels takes a little of the power
        assertThat(time).isCloseTo(wantedS, within(0.02 * wantedS));
        assertThat(run.x()).isCloseTo(wantedM, within(0.02 * wantedM));
        assertThat(MASS * 900.0 / 2.0e5).isEqualTo(4.5);
        assertThat(MASS * 27000.0 / 3.0e5).isEqualTo(90.0);
    }

    /** Energy: a constant force F stops a mass m from v0 to v1 in m (v0^2 - v1^2) / 2F. */
    @Test
    void a_constant_brake_force_needs_the_distance_that_energy_says() {
        CarModel car = car(90.0e3, 1.2, 1.2, 1400.0, constantPower(100.0e3));
        TransientCar run = new TransientCar(car, WEIGHTLESS, TyreCondition.STEADY, 40.0, 8000.0);
        while (run.speedMps() > 15.0) {
            run.step(0.001, new Inputs(0.0, 0.0, 1.0));
        }
        double wanted = MASS * (1600.0 - 225.0) / 16_000.0;
        assertThat(run.x()).isCloseTo(wanted, within(0.01 * wanted));
    }

    /** Single-track model in closed form, second order with lead; as in any textbook (Milliken and Milliken, 1995, chapter 5, from memory). */
    @Test
    void a_small_step_of_steer_answers_as_the_single_track_model() {
        double stiffness = 45.0e3;
        double inertia = 1500.0;
        CarModel car = car(stiffness, 1.15, 1.35, inertia, constantPower(100.0e3));
        SingleTrack track = new SingleTrack(MASS, inertia, 1.15, 1.35, 2.0 * stiffness, 2.0 * stiffness);
        for (double speed : new double[] {20.0, 40.0}) {
            StepResponse wanted = track.yawRateStep(speed).orElseThrow();
            TransientCar run = new TransientCar(car, WEIGHTLESS, TyreCondition.STEADY, speed, 3.0e4);
            double steer = 0.004;
            double largest = 0.0;
            for (int i = 1; i <= 1000; i++) {
                run.step(0.001, new Inputs(steer, 0.0, 0.0));
                largest = Math.max(largest, Math.abs(run.yawRate() / steer - wanted.at(i * 0.001)));
            }
            assertThat(largest).isLessThan(0.03 * wanted.steady());
        }
    }
}
