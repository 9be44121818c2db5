package setwright.core.slip;

import setwright.core.car.CarSheet;
import setwright.core.car.GripLimit;
import setwright.core.car.body.Body;
import setwright.core.car.body.Body.Action;
import setwright.core.car.body.BodyMotion;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.model.Parameter;

/*
 * Design note. Tyres and springs are those of the sheet with the middle of the prior: what is wrong with them, the filter's grip and
 * peak slip take up. Loads at rest in a motion are linear in accelerations and downforce, so that five settled states give all.
 */

/** What the sheet's car could give at each axle in a given motion. */
final class AxleLoads {
    /** So much of the longitudinal grip leaves the ellipse a lateral share of three tenths, as in the balance reference. */
    private static final double MOST_ALONG = 0.95;

    private static final double MATCH_MPS = 25.0;

    private final CarModel car;
    private final GripLimit grip;
    private final double[][] rates = new double[4][5];
    private final double frontLift;
    private final double[] spread;
    private final double scale;

    /** Loads, peaks and shares of an axle; mutable, to be filled again and again. */
    static final class At {
        /** Vertical load of the axle over the car's mass, m/s². */
        double load;
        /** Greatest lateral force of the axle over the car's mass, before what drives or brakes, m/s². */
        double peak;
        /** Slip angle at the peak, rad. */
        double peakSlip;
        /** Longitudinal force over the greatest one, 0..0.95. */
        double along;
    }

    AxleLoads(CarSheet sheet, GripLimit grip) {
        CarPrior prior = CarPrior.of(sheet);
        this.car = new CarAssembler(sheet).build(prior.middle());
        this.spread = prior.spread();
        this.grip = grip;
        double front = car.liftFrontN(50.0, 0.0, 0.0);
        double rear = car.liftRearN(50.0, 0.0, 0.0);
        this.frontLift = front + rear > 0.0 ? front / (front + rear) : sheet.frontWeightShare();
        BodyMotion motion = new BodyMotion(car.body());
        double[] still = settled(motion, 0.0, 0.0, 0.0, 0.0);
        double[][] moved = {
            settled(motion, 1.0, 0.0, 0.0, 0.0),
            settled(motion, 0.0, 1.0, 0.0, 0.0),
            settled(motion, 0.0, 0.0, 1000.0, 0.0),
            settled(motion, 0.0, 0.0, 0.0, 1000.0)
        };
        for (int wheel = 0; wheel < 4; wheel++) {
            rates[wheel][0] = still[wheel];
            for (int k = 0; k < 4; k++) {
                rates[wheel][k + 1] = (moved[k][wheel] - still[wheel]) / (k < 2 ? 1.0 : 1000.0);
            }
        }
        this.scale = matched();
    }

    private double[] settled(BodyMotion motion, double forward, double lateral, double liftFront, double liftRear) {
        Body body = car.body();
        double mass = body.massKg();
        double front = mass * lateral * body.toRearM() / body.wheelbaseM();
        Action action = new Action(forward, lateral, liftFront, liftRear, front, mass * lateral - front);
        motion.settle(action);
        double[] loads = new double[4];
        for (int wheel = 0; wheel < 4; wheel++) {
            loads[wheel] = motion.loadN(wheel);
        }
        return loads;
    }

    /** Factor on the sheet's tyres with which the car's limit is the one that the laps show. */
    private double matched() {
        At front = new At();
        At rear = new At();
        double limit = grip.at(MATCH_MPS);
        fill(true, MATCH_MPS, 0.0, limit, 0.0, 1.0, front);
        fill(false, MATCH_MPS, 0.0, limit, 0.0, 1.0, rear);
        return limit / (front.peak + rear.peak);
    }

    /** Returns the tyre whose curve both axles follow: all mounted tyres share one shape. */
    MountedTyre curve() {
        return car.front();
    }

    /** Moment of inertia in yaw over mass, m². */
    double gyration2() {
        return car.yawInertiaKgM2() / car.body().massKg();
    }

    /**
     * Looks at an axle.
     *
     * @param speed    m/s
     * @param forward  acceleration along the car, m/s²
     * @param lateral  to its left, m/s²
     * @param tyre     part of the acceleration along the car that goes through the tyres, m/s²
     */
    void fill(boolean isFront, double speed, double forward, double lateral, double tyre, At out) {
        fill(isFront, speed, forward, lateral, tyre, scale, out);
    }

    private void fill(
            boolean isFront, double speed, double forward, double lateral, double tyre, double factor, At out) {
        double mass = car.body().massKg();
        double lift = mass * grip.liftPerM() * speed * speed;
        int left = isFront ? 0 : 2;
        double one = load(left, forward, lateral, lift);
        double other = load(left + 1, forward, lateral, lift);
        double sum = one + other;
        double lifted = Math.min(Math.min(one, other), 0.0);
        one = Math.max(one - lifted, 0.0);
        other = Math.max(other - lifted, 0.0);
        double kept = sum / Math.max(one + other, 1.0);
        one = Math.max(one * kept, 1.0);
        other = Math.max(other * kept, 1.0);
        MountedTyre mounted = isFront ? car.front() : car.rear();
        out.load = (one + other) / mass;
        out.peak = factor * (mounted.lateralPeak(one) + mounted.lateralPeak(other)) / mass;
        out.peakSlip = (one * mounted.peakSlip(one) + other * mounted.peakSlip(other)) / (one + other);
        double share = tyre < 0.0
                ? isFront ? car.brakes().frontShare() : 1.0 - car.brakes().frontShare()
                : isFront ? car.driveFront() : 1.0 - car.driveFront();
        double most = factor * (mounted.alongPeak(one) + mounted.alongPeak(other)) / mass;
        out.along = Math.min(Math.abs(tyre) * share / Math.max(most, 0.1), MOST_ALONG);
    }

    /**
     * Returns the standard error of an axle's load over the load, from what is not known of level and balance of the downforce.
     *
     * @param load  of the axle over the car's mass, m/s²
     */
    double doubt(boolean isFront, double speed, double load) {
        int left = isFront ? 0 : 2;
        double byFront = rates[left][3] + rates[left + 1][3];
        double byRear = rates[left][4] + rates[left + 1][4];
        double perLift = Math.hypot(
                spread[Parameter.LIFT.index()] * (frontLift * byFront + (1.0 - frontLift) * byRear),
                spread[Parameter.LIFT_BALANCE.index()] * (byFront - byRear));
        return perLift * grip.liftPerM() * speed * speed / load;
    }

    private double load(int wheel, double forward, double lateral, double lift) {
        double[] rate = rates[wheel];
        return rate[0]
                + rate[1] * forward
                + rate[2] * lateral
                + rate[3] * lift * frontLift
                + rate[4] * lift * (1.0 - frontLift);
    }
}
