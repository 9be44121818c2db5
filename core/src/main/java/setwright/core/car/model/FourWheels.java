package setwright.core.car.model;

import setwright.core.car.body.Body;
import setwright.core.car.body.Body.Action;
import setwright.core.car.body.BodyForces;
import setwright.core.car.tyre.FrictionEllipse;
import setwright.core.car.tyre.Tyre;

/*
 * Design note. The one place where the forces of the whole car are added up; the equations in time and the equilibrium both
 * come here. Loads depend at once on accelerations and on the axles' lateral forces (links and unsprung parts do not wait for
 * the body), and forces depend on loads. Whoever calls gives the former as a guess and compares: the equations in time by
 * repetition, since little load moves through the links, the equilibrium by taking them as unknowns.
 *
 * Wheels have no inertia in turning: the engine's and the brakes' force reaches the road, up to what the tyre can give.
 * As in the replay, both wheels of an axle feel the camber as the loaded outer one does.
 */

/** Forces on a car at an instant of a given motion; mutable workspace, for one thread. */
final class FourWheels {
    /** Largest share of the longitudinal peak: it leaves as much lateral force as the replay does. */
    private static final double MOST_ALONG = Math.sqrt(1.0 - 0.15 * 0.15);

    private static final double LEAST_SPEED = 0.5;

    final CarModel car;
    private final BodyForces forces;
    private final Tyre frontTyre;
    private final Tyre rearTyre;
    private final FrictionEllipse frontEllipse;
    private final FrictionEllipse rearEllipse;

    /** Loads of the wheels, N. */
    final double[] loads = new double[4];
    /** What accelerates the sprung mass: N, N m of pitch, N m of roll. */
    final double[] bodySum = new double[3];
    /** Slip angles, rad, and forces along and across each wheel, N. */
    final double[] slip = new double[4];

    final double[] along = new double[4];
    final double[] across = new double[4];
    private final double[] turned = new double[4];
    private final double[] cosine = {1.0, 1.0, 1.0, 1.0};
    private final double[] sine = new double[4];
    private final double[] lastSideways = new double[4];
    private final double[] lastHeading = new double[4];
    /** Sums in the car's axes: N, N, N m. */
    double forwardSum;

    double lateralSum;
    double yawSum;
    /** Lateral forces of the axles in the car's axes, N. */
    double frontLateral;

    double rearLateral;
    /** What acted on the body. */
    Action action = new Action(0.0, 0.0, 0.0, 0.0, 0.0, 0.0);

    FourWheels(CarModel car, Tyre frontTyre, Tyre rearTyre) {
        this.car = car;
        this.forces = new BodyForces(car.body());
        this.frontTyre = frontTyre;
        this.rearTyre = rearTyre;
        this.frontEllipse = new FrictionEllipse(frontTyre);
        this.rearEllipse = new FrictionEllipse(rearTyre);
    }

    /**
     * Adds up.
     *
     * @param forwardMps    speed along the car, m/s, &gt; 0
     * @param lateralMps    speed to its left, m/s
     * @param yawRate       rad/s
     * @param attitude      heave, pitch, roll
     * @param rates         theirs
     * @param steer         rad
     * @param engineN       at the driven wheels
     * @param brakeN        &gt;= 0
     * @param forwardMps2   guess of the acceleration along the car, m/s²
     * @param lateralMps2   guess of the acceleration to its left, m/s²
     * @param frontGuessN   guess of the front axle's lateral force, N
     * @param rearGuessN    guess of the rear axle's
     */
    void at(
            double forwardMps,
            double lateralMps,
            double yawRate,
            double[] attitude,
            double[] rates,
            double steer,
            double engineN,
            double brakeN,
            double forwardMps2,
            double lateralMps2,
            double frontGuessN,
            double rearGuessN) {
        Body body = car.body();
        double speed = Math.hypot(forwardMps, lateralMps);
        double riseFront = attitude[0] - body.toFrontM() * attitude[1];
        double riseRear = attitude[0] + body.toRearM() * attitude[1];
        action = new Action(
                forwardMps2,
                lateralMps2,
                car.liftFrontN(speed, riseFront, riseRear),
                car.liftRearN(speed, riseFront, riseRear),
                frontGuessN,
                rearGuessN);
        forces.sum(attitude, rates, action, loads, bodySum);
        body.lift(loads);
        forwardSum = -Math.copySign(car.resistanceN(speed), forwardMps);
        lateralSum = 0.0;
        yawSum = 0.0;
        double frontEngine = engineN * car.driveFront();
        double frontBrake = brakeN * car.brakes().frontShare();
        frontLateral = axle(0, forwardMps, lateralMps, yawRate, steer, frontEngine, frontBrake, frontGuessN);
        rearLateral =
                axle(2, forwardMps, lateralMps, yawRate, 0.0, engineN - frontEngine, brakeN - frontBrake, rearGuessN);
    }

    private double axle(
            int left,
            double forwardMps,
            double lateralMps,
            double yawRate,
            double steer,
            double engineN,
            double brakeN,
            double lateralGuess) {
        boolean isFront = left == 0;
        Tyre tyre = isFront ? frontTyre : rearTyre;
        FrictionEllipse ellipse = isFront ? frontEllipse : rearEllipse;
        MountedTyre mounted = isFront ? car.front() : car.rear();
        double x = isFront ? car.body().toFrontM() : -car.body().toRearM();
        double half = 0.5 * (isFront ? car.body().front() : car.body().rear()).trackM();
        double toe = isFront ? car.toeFrontRad() : car.toeRearRad();
        double camber = mounted.inclination();
        double pressure = mounted.pressure();
        double leftPeak = tyre.longitudinalPeak(loads[left], camber, pressure);
        double rightPeak = tyre.longitudinalPeak(loads[left + 1], camber, pressure);
        double engine = Math.min(engineN, greatestDrive(leftPeak, rightPeak));
        double handed = handed(isFront, tyre, leftPeak, rightPeak, engine, forwardMps, yawRate, lateralGuess, left);
        double even = 0.5 * (engine - brakeN);
        along[left] = within(even + handed, MOST_ALONG * leftPeak);
        along[left + 1] = within(even - handed, MOST_ALONG * rightPeak);
        double sum = 0.0;
        for (int side = 0; side < 2; side++) {
            int wheel = left + side;
            double y = side == 0 ? half : -half;
            double angle = steer + (side == 0 ? -toe : toe);
            double vx = Math.max(forwardMps - yawRate * y, LEAST_SPEED);
            turn(wheel, angle);
            slip[wheel] = angle - heading(wheel, (lateralMps + yawRate * x) / vx);
            double inclination = slip[wheel] < 0.0 ? -camber : camber;
            across[wheel] = ellipse.lateralGiven(slip[wheel], along[wheel], loads[wheel], inclination, pressure);
            double forward = along[wheel] * cosine[wheel] - across[wheel] * sine[wheel];
            double lateral = along[wheel] * sine[wheel] + across[wheel] * cosine[wheel];
            forwardSum += forward;
            lateralSum += lateral;
            yawSum += x * lateral - y * forward;
            sum += lateral;
        }
        return sum;
    }

    /** Turns a wheel; most of a solver's looks change neither this nor where the wheel is going, and both cost as much as its tyre. */
    private void turn(int wheel, double angle) {
        if (angle != turned[wheel]) {
            turned[wheel] = angle;
            cosine[wheel] = Math.cos(angle);
            sine[wheel] = Math.sin(angle);
        }
    }

    /** Returns the angle of a wheel's way over the ground to the car, rad. */
    private double heading(int wheel, double sideways) {
        if (sideways != lastSideways[wheel]) {
            lastSideways[wheel] = sideways;
            lastHeading[wheel] = Math.atan(sideways);
        }
        return lastHeading[wheel];
    }

    /** Drive force at which the wheel with less grip spins, with what the differential then hands to the other, N. */
    private double greatestDrive(double onePeak, double otherPeak) {
        double radius = car.powertrain().tyreRadiusM();
        double lock = Math.min(car.differential().powerLock(), 0.95);
        double least = 2.0 * MOST_ALONG * Math.min(onePeak, otherPeak);
        return (least + car.differential().preloadNm() / radius) / (1.0 - lock);
    }

    /** Force handed from the right wheel to the left one, N. */
    private double handed(
            boolean isFront,
            Tyre tyre,
            double leftPeak,
            double rightPeak,
            double engine,
            double forwardMps,
            double yawRate,
            double lateral,
            int left) {
        boolean driven = isFront ? car.driveFront() > 0.0 : car.driveFront() < 1.0;
        if (!driven || car.differential().lockNm(engine) <= 0.0) {
            return 0.0;
        }
        MountedTyre mounted = isFront ? car.front() : car.rear();
        double camber = mounted.inclination();
        double peak = tyre.lateralPeak(loads[left], camber, mounted.pressure())
                + tyre.lateralPeak(loads[left + 1], camber, mounted.pressure());
        double track = (isFront ? car.body().front() : car.body().rear()).trackM();
        double lead = track * yawRate / Math.max(forwardMps, LEAST_SPEED);
        return car.handedN(mounted, leftPeak, rightPeak, Math.abs(lateral) / Math.max(peak, 1.0), engine, lead);
    }

    /** Returns how much of its grip an axle uses, lateral and longitudinal, 1 at the limit. */
    double use(boolean isFront) {
        int left = isFront ? 0 : 2;
        Tyre tyre = isFront ? frontTyre : rearTyre;
        MountedTyre mounted = isFront ? car.front() : car.rear();
        double camber = mounted.inclination();
        double pressure = mounted.pressure();
        double lateralPeak =
                tyre.lateralPeak(loads[left], camber, pressure) + tyre.lateralPeak(loads[left + 1], camber, pressure);
        double alongPeak = tyre.longitudinalPeak(loads[left], camber, pressure)
                + tyre.longitudinalPeak(loads[left + 1], camber, pressure);
        return Math.hypot(
                (across[left] + across[left + 1]) / Math.max(lateralPeak, 1.0),
                (along[left] + along[left + 1]) / Math.max(alongPeak, 1.0));
    }

    /** Returns the change of an axle's lateral force per change of its slip angle, N/rad, with everything else as it is. */
    double slope(boolean isFront, double change) {
        int left = isFront ? 0 : 2;
        FrictionEllipse ellipse = isFront ? frontEllipse : rearEllipse;
        MountedTyre mounted = isFront ? car.front() : car.rear();
        double sum = 0.0;
        for (int wheel = left; wheel < left + 2; wheel++) {
            double inclination = slip[wheel] < 0.0 ? -mounted.inclination() : mounted.inclination();
            sum += ellipse.lateralGiven(
                            slip[wheel] + change, along[wheel], loads[wheel], inclination, mounted.pressure())
                    - across[wheel];
        }
        return sum / change;
    }

    private static double within(double value, double most) {
        return Math.max(-most, Math.min(value, most));
    }
}
