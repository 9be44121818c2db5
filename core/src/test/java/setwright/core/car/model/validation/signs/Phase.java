package setwright.core.car.model.validation.signs;

import setwright.core.car.body.Body.Action;
import setwright.core.car.body.BodyMotion;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Cornering;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Moment;

/** The three phases of a corner as a motion that is prescribed; balance as the replay finds it. */
enum Phase {
    /** Braking at 4 m/s2 while lateral acceleration rises to three quarters of the limit. */
    ENTRY,
    /** Steady at 85 % of the limit. */
    MID,
    /** Driving at 2.5 m/s2 while lateral acceleration falls from 80 to 55 % of the limit. */
    EXIT;

    private static final double STEP = 0.005;
    /** The nose has gone down before the car is turned in. */
    private static final double DIVE_S = 0.4;

    private static final double TURN_IN_S = 0.5;
    private static final double TURN_OUT_S = 0.8;

    /** Speed, m/s, and limit of lateral acceleration, m/s2, for which a motion is drawn up. */
    record Corner(double speedMps, double limitMps2, double brakingMps2, double drivingMps2) {

        static Corner of(InventedCar car) {
            return at(car, car.speedMps);
        }

        /** A corner at half of the usual speed, so a quarter of the radius or less. */
        static Corner tight(InventedCar car) {
            return at(car, 0.5 * car.speedMps);
        }

        private static Corner at(InventedCar car, double speedMps) {
            double limit = new Equilibrium(car.car())
                    .greatestLateral(speedMps, 0.0)
                    .orElseThrow()
                    .lateralMps2();
            return new Corner(speedMps, limit, 4.0, 2.5);
        }

        Corner braking(double brakingMps2) {
            return new Corner(speedMps, limitMps2, brakingMps2, drivingMps2);
        }

        Corner driving(double drivingMps2) {
            return new Corner(speedMps, limitMps2, brakingMps2, drivingMps2);
        }
    }

    /** Returns the mean balance angle, degrees: positive understeers. */
    double balanceDeg(CarModel car, Corner corner) {
        BodyMotion motion = new BodyMotion(car.body());
        Cornering cornering = new Cornering(car);
        double end = this == ENTRY ? DIVE_S + TURN_IN_S : this == EXIT ? TURN_OUT_S : STEP;
        double from = this == ENTRY ? DIVE_S + 0.5 * TURN_IN_S : this == EXIT ? 0.1 : 0.0;
        Moment first = moment(car, corner, 0.0);
        motion.settle(action(car, first, motion));
        for (int i = 0; i < 20; i++) {
            motion.settle(action(car, first, motion)); // ride heights and downforce depend on each other
        }
        double sum = 0.0;
        int count = 0;
        double[] loads = new double[4];
        for (int k = 1; k * STEP < end + 0.5 * STEP; k++) {
            Moment moment = moment(car, corner, k * STEP);
            motion.step(STEP, action(car, moment, motion));
            for (int wheel = 0; wheel < 4; wheel++) {
                loads[wheel] = motion.loadN(wheel);
            }
            if (k * STEP > from) {
                cornering.at(moment, loads, 0, 1.0);
                sum += Math.toDegrees(cornering.balance());
                count++;
            }
        }
        return sum / count;
    }

    private Moment moment(CarModel car, Corner corner, double time) {
        double lateral;
        double lateralRate = 0.0;
        double forward = 0.0;
        double limit = corner.limitMps2();
        switch (this) {
            case ENTRY -> {
                double rising = Math.max(0.0, time - DIVE_S) / TURN_IN_S;
                lateral = 0.75 * limit * rising;
                lateralRate = time > DIVE_S ? 0.75 * limit / TURN_IN_S : 0.0;
                forward = -corner.brakingMps2() * Math.min(1.0, time / 0.1);
            }
            case MID -> lateral = 0.85 * limit;
            default -> {
                lateral = limit * (0.8 - 0.25 * time / TURN_OUT_S);
                lateralRate = -0.25 * limit / TURN_OUT_S;
                forward = corner.drivingMps2() * Math.min(1.0, time / 0.2);
            }
        }
        double speed = corner.speedMps() + forward * time;
        double yawRate = lateral / speed;
        double steer = car.body().wheelbaseM() * yawRate / speed + 0.01;
        return new Moment(
                speed,
                forward,
                lateral,
                yawRate,
                lateralRate / speed,
                steer,
                this == ENTRY ? 0.0 : 0.4,
                this == ENTRY ? 0.5 : 0.0);
    }

    private static Action action(CarModel car, Moment moment, BodyMotion motion) {
        double mass = car.body().massKg();
        double front =
                (mass * car.body().toRearM() * moment.lateral() + car.yawInertiaKgM2() * moment.yawAcceleration())
                        / car.body().wheelbaseM();
        return new Action(
                moment.forward(),
                moment.lateral(),
                car.liftFrontN(moment.speed(), motion.riseFrontM(), motion.riseRearM()),
                car.liftRearN(moment.speed(), motion.riseFrontM(), motion.riseRearM()),
                front,
                mass * moment.lateral() - front);
    }
}
