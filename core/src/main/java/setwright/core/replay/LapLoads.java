package setwright.core.replay;

import setwright.core.car.body.Body.Action;
import setwright.core.car.body.BodyMotion;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Moment;

/** The wheel loads of a car that is driven along a recorded lap. */
final class LapLoads {
    private LapLoads() {}

    /**
     * Integrates the body over the lap.
     *
     * @return loads of the four wheels at each moment, N, one moment after the other
     */
    static double[] of(CarModel car, DrivenLap lap) {
        BodyMotion motion = new BodyMotion(car.body());
        double[] loads = new double[4 * lap.size()];
        for (int k = 0; k < lap.size(); k++) {
            Action action = action(car, lap.moments().get(k), motion);
            if (k == 0) {
                motion.settle(action);
                motion.settle(action(car, lap.moments().get(k), motion));
            } else {
                motion.step(lap.stepS(), action);
            }
            for (int wheel = 0; wheel < 4; wheel++) {
                loads[4 * k + wheel] = motion.loadN(wheel);
            }
        }
        return loads;
    }

    private static Action action(CarModel car, Moment moment, BodyMotion motion) {
        double mass = car.body().massKg();
        double wheelbase = car.body().wheelbaseM();
        double turning = car.yawInertiaKgM2() * moment.yawAcceleration();
        double front = (mass * car.body().toRearM() * moment.lateral() + turning) / wheelbase;
        double riseFront = motion.riseFrontM();
        double riseRear = motion.riseRearM();
        return new Action(
                moment.forward(),
                moment.lateral(),
                car.liftFrontN(moment.speed(), riseFront, riseRear),
                car.liftRearN(moment.speed(), riseFront, riseRear),
                front,
                mass * moment.lateral() - front);
    }
}
