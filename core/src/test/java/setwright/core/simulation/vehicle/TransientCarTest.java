package setwright.core.simulation.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.SteadyState;
import setwright.core.simulation.driven.Signal;

final class TransientCarTest {
    private static final CarModel CAR = car();

    private static CarModel car() {
        return new CarAssembler(Sheets.adjustable())
                .build(CarPrior.of(Sheets.adjustable()).middle());
    }

    /** A car on a circle, its speed kept with the throttle. */
    private static TransientCar circle(double steer, double speed, double stepS, double seconds) {
        TransientCar car = new TransientCar(CAR, RunningGear.usual(), TyreCondition.STEADY, speed, 3.0e4);
        double sum = 0.2;
        for (double t = 0.0; t < seconds; t += stepS) {
            double miss = speed - car.speedMps();
            sum = Math.max(0.0, Math.min(sum + 0.2 * miss * stepS, 1.0));
            double throttle = Math.max(0.0, Math.min(sum + 0.3 * miss, 1.0));
            car.step(stepS, new Inputs(steer, throttle, 0.0));
        }
        return car;
    }

    @Test
    void a_held_circle_is_the_equilibrium() {
        for (double lateral : new double[] {4.0, 9.0}) {
            SteadyState wanted = new Equilibrium(CAR, Equilibrium.Axes.PATH)
                    .at(30.0, 0.0, lateral)
                    .orElseThrow();
            TransientCar car = circle(wanted.steerRad(), 30.0, TransientCar.STEP_S, 25.0);
            // the simulation reads combined slip by similarity, the equilibrium by the ellipse
            assertThat(car.yawRate()).isCloseTo(wanted.yawRate(), within(0.02 * wanted.yawRate()));
            assertThat(car.slip(true)).isCloseTo(wanted.frontSlipRad(), within(0.03 * wanted.frontSlipRad() + 4.0e-4));
            assertThat(car.slip(false)).isCloseTo(wanted.rearSlipRad(), within(0.03 * wanted.rearSlipRad() + 4.0e-4));
            double[] out = new double[Signal.count()];
            car.write(out);
            for (int wheel = 0; wheel < 4; wheel++) {
                double load = wanted.loadsN().get(wheel);
                assertThat(out[Signal.LOAD_FRONT_LEFT.index() + wheel]).isCloseTo(load, within(0.02 * load + 20.0));
            }
        }
    }

    @Test
    void half_the_step_drives_the_same_way() {
        TransientCar whole = circle(0.03, 35.0, TransientCar.STEP_S, 6.0);
        TransientCar half = circle(0.03, 35.0, 0.5 * TransientCar.STEP_S, 6.0);
        assertThat(whole.yawRate()).isCloseTo(half.yawRate(), within(0.002 * half.yawRate()));
        assertThat(whole.x()).isCloseTo(half.x(), within(0.3));
        assertThat(whole.y()).isCloseTo(half.y(), within(0.3));
    }

    @Test
    void left_and_right_are_mirrored() {
        TransientCar left = circle(0.04, 30.0, TransientCar.STEP_S, 3.0);
        TransientCar right = circle(-0.04, 30.0, TransientCar.STEP_S, 3.0);
        assertThat(right.yawRate()).isCloseTo(-left.yawRate(), within(1.0e-9));
        assertThat(right.y()).isCloseTo(-left.y(), within(1.0e-6));
    }

    @Test
    void too_much_brake_locks_wheels_and_too_much_throttle_spins_them() {
        TransientCar car = new TransientCar(CAR, RunningGear.usual(), TyreCondition.STEADY, 40.0, 3.0e4);
        for (int i = 0; i < 400; i++) {
            car.step(TransientCar.STEP_S, new Inputs(0.0, 0.0, 1.0));
        }
        double[] out = new double[Signal.count()];
        car.write(out);
        assertThat(out[Signal.WHEEL_SPEED_FRONT_LEFT.index()]).isZero();
        assertThat(car.use(true)).isGreaterThan(1.0);
        TyreCondition wet = new TyreCondition(0.4, 1.0e9, 0.0, 0.0);
        TransientCar slow = new TransientCar(CAR, RunningGear.usual(), wet, 8.0, 3.0e4);
        for (int i = 0; i < 300; i++) {
            slow.step(TransientCar.STEP_S, new Inputs(0.0, 1.0, 0.0));
        }
        slow.write(out);
        assertThat(out[Signal.WHEEL_SPEED_REAR_LEFT.index()]).isGreaterThan(1.05 * slow.forwardMps());
        assertThat(out[Signal.WHEEL_SPEED_FRONT_LEFT.index()]).isCloseTo(slow.forwardMps(), within(0.1));
    }

    @Test
    void a_locked_differential_keeps_both_driven_wheels_at_one_speed() {
        TransientCar car = circle(0.12, 15.0, TransientCar.STEP_S, 3.0);
        double[] out = new double[Signal.count()];
        car.write(out);
        double front = out[Signal.WHEEL_SPEED_FRONT_RIGHT.index()] - out[Signal.WHEEL_SPEED_FRONT_LEFT.index()];
        double rear = out[Signal.WHEEL_SPEED_REAR_RIGHT.index()] - out[Signal.WHEEL_SPEED_REAR_LEFT.index()];
        assertThat(front).isGreaterThan(0.5);
        assertThat(rear).isLessThan(front);
    }

    @Test
    void a_lighter_car_goes_on_where_it_was() {
        TransientCar car = circle(0.02, 30.0, TransientCar.STEP_S, 2.0);
        double yaw = car.yawRate();
        Tank tank = new Tank(40.0, 0.001);
        assertThat(tank.leftKg(10_000.0)).isEqualTo(30.0);
        CarModel lighter = tank.after(CAR, 10_000.0);
        assertThat(lighter.body().massKg()).isEqualTo(CAR.body().massKg() - 10.0);
        car.become(lighter);
        assertThat(car.yawRate()).isEqualTo(yaw);
    }

    @Test
    void tyres_warm_up_and_wear() {
        TyreCondition tyres = new TyreCondition(0.06, 1000.0, 1.0e-7, 2.0e-7);
        assertThat(tyres.front(0.0)).isCloseTo(0.94, within(1.0e-12));
        assertThat(tyres.front(1000.0)).isCloseTo(1.0 - 0.06 / Math.E - 1.0e-4, within(1.0e-12));
        assertThat(tyres.rear(1.0e5)).isCloseTo(0.98, within(1.0e-9));
    }
}
