package setwright.core.simulation.vehicle;

import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.body.Body.Action;
import setwright.core.car.body.BodyMotion;
import setwright.core.car.model.CarModel;
import setwright.core.simulation.driven.Signal;

/*
 * Design note. One step: slips from the motion, tyre forces, the wheels' turning (implicit), the body's heave, pitch and roll
 * (implicit, see BodyMotion), then the plane motion (semi-implicit Euler). Loads follow forces by one step of 2 ms. Halving the
 * step changes a lap by less than what a logger resolves; a test holds that.
 */

/** A car in time on a flat road with bumps; mutable, for one thread. Signs of ISO 8855. */
public final class TransientCar {
    /** The step that accuracy was tested with, s. */
    public static final double STEP_S = 0.002;

    private static final double STANDSTILL_MPS = 1.5;

    private CarModel car;
    private final RunningGear gear;
    private final TyreCondition condition;
    private BodyMotion body;
    private Wheels wheels;
    private final Drivetrain drivetrain;
    private double x;
    private double y;
    private double heading;
    private double forward;
    private double lateral;
    private double yawRate;
    private double forwardMps2;
    private double lateralMps2;
    private double frontN;
    private double rearN;
    private double distance;
    private double heave;
    private double heaveRate;
    private double verticalMps2;
    /** Of the angle of each wheel to the car, in the step under way. */
    private final double[] cosine = new double[4];

    private final double[] sine = new double[4];
    private Inputs inputs = new Inputs(0.0, 0.0, 0.0);

    /**
     * Starts straight ahead at the origin.
     *
     * @param greatestBrakeN  sum of the brake forces that the pedal asks for at its end, N
     */
    public TransientCar(
            CarModel car, RunningGear gear, TyreCondition condition, double speedMps, double greatestBrakeN) {
        this.car = car;
        this.gear = gear;
        this.condition = condition;
        this.forward = speedMps;
        this.wheels = new Wheels(car, gear, speedMps);
        this.drivetrain = new Drivetrain(car.powertrain(), gear, speedMps, greatestBrakeN);
        this.body = settled(car);
    }

    private BodyMotion settled(CarModel model) {
        BodyMotion motion = new BodyMotion(model.body());
        motion.settle(new Action(
                forwardMps2,
                lateralMps2,
                model.liftFrontN(speedMps(), 0.0, 0.0),
                model.liftRearN(speedMps(), 0.0, 0.0),
                frontN,
                rearN));
        heave = rise(motion);
        heaveRate = 0.0;
        return motion;
    }

    /** Puts the car at a place, m, and in a direction, rad. */
    public void place(double atX, double atY, double atHeading) {
        x = atX;
        y = atY;
        heading = atHeading;
    }

    /** Goes on with the same car at another mass: fuel that was burnt. */
    public void become(CarModel lighter) {
        car = lighter;
        Wheels before = wheels;
        wheels = new Wheels(lighter, gear, forward);
        wheels.continueFrom(before);
        body = settled(lighter);
    }

    /**
     * Goes on by a step.
     *
     * @param stepS   s, {@link #STEP_S}
     * @param now     what the driver does
     * @param bumpN   force of a bump on both wheels of the front axle and of the rear axle beyond that of the flat road, N
     */
    public void step(double stepS, Inputs now, double... bumpN) {
        inputs = now;
        double frontGrip = condition.front(distance);
        double rearGrip = condition.rear(distance);
        double bumpFront = bumpN.length > 0 ? bumpN[0] : 0.0;
        double bumpRear = bumpN.length > 1 ? bumpN[1] : 0.0;
        for (int wheel = 0; wheel < 4; wheel++) {
            boolean isFront = wheel < 2;
            double vx = forward - yawRate * toLeft(wheel);
            double vy = lateral + yawRate * toFront(wheel);
            double angle = angle(wheel);
            double cos = Math.cos(angle);
            double sin = Math.sin(angle);
            cosine[wheel] = cos;
            sine[wheel] = sin;
            double load = Math.max(0.0, body.loadN(wheel) + 0.5 * (isFront ? bumpFront : bumpRear));
            wheels.roll(wheel, vx * cos + vy * sin, vy * cos - vx * sin, load, isFront ? frontGrip : rearGrip, stepS);
        }
        drivetrain.turn(stepS, car, wheels, now);
        move(stepS, bumpFront, bumpRear);
    }

    private void move(double stepS, double bumpFront, double bumpRear) {
        Body dimensions = car.body();
        double forwardN = -car.resistanceN(speedMps());
        double lateralN = 0.0;
        double yawNm = 0.0;
        frontN = 0.0;
        rearN = 0.0;
        for (int wheel = 0; wheel < 4; wheel++) {
            boolean isFront = wheel < 2;
            double fx = wheels.along[wheel] * cosine[wheel] - wheels.across[wheel] * sine[wheel];
            double fy = wheels.along[wheel] * sine[wheel] + wheels.across[wheel] * cosine[wheel];
            forwardN += fx;
            lateralN += fy;
            yawNm += toFront(wheel) * fy - toLeft(wheel) * fx;
            frontN += isFront ? fy : 0.0;
            rearN += isFront ? 0.0 : fy;
        }
        forwardMps2 = forwardN / dimensions.massKg();
        lateralMps2 = lateralN / dimensions.massKg();
        double speed = speedMps();
        body.step(
                stepS,
                new Action(
                        forwardMps2,
                        lateralMps2,
                        car.liftFrontN(speed, body.riseFrontM(), body.riseRearM()) - bumpFront,
                        car.liftRearN(speed, body.riseFrontM(), body.riseRearM()) - bumpRear,
                        frontN,
                        rearN));
        double rate = (rise(body) - heave) / stepS;
        verticalMps2 = (rate - heaveRate) / stepS;
        heave = rise(body);
        heaveRate = rate;
        double wasForward = forward;
        yawRate += stepS * yawNm / car.yawInertiaKgM2();
        forward += stepS * (forwardMps2 + yawRate * lateral);
        lateral += stepS * (lateralMps2 - yawRate * 0.5 * (wasForward + forward));
        double direction = heading + 0.5 * stepS * yawRate;
        heading += stepS * yawRate;
        x += stepS * (forward * Math.cos(direction) - lateral * Math.sin(direction));
        y += stepS * (forward * Math.sin(direction) + lateral * Math.cos(direction));
        distance += stepS * speed;
    }

    private double rise(BodyMotion motion) {
        double share = car.body().toRearM() / car.body().wheelbaseM();
        return share * motion.riseFrontM() + (1.0 - share) * motion.riseRearM();
    }

    private static double side(int wheel) {
        return wheel % 2 == 0 ? 1.0 : -1.0;
    }

    /** Distance of a wheel before the centre of gravity, m. */
    private double toFront(int wheel) {
        return wheel < 2 ? car.body().toFrontM() : -car.body().toRearM();
    }

    /** Distance of a wheel to the left of the middle, m. */
    private double toLeft(int wheel) {
        Axle axle = wheel < 2 ? car.body().front() : car.body().rear();
        return side(wheel) * 0.5 * axle.trackM();
    }

    private double angle(int wheel) {
        boolean isFront = wheel < 2;
        return (isFront ? inputs.steerRad() : 0.0) - side(wheel) * (isFront ? car.toeFrontRad() : car.toeRearRad());
    }

    /** Writes what is known of the car now; place on the circuit and fuel are others' to write. */
    public void write(double[] out) {
        out[Signal.X.index()] = x;
        out[Signal.Y.index()] = y;
        out[Signal.HEADING.index()] = heading;
        out[Signal.FORWARD_SPEED.index()] = forward;
        out[Signal.LATERAL_SPEED.index()] = lateral;
        out[Signal.YAW_RATE.index()] = yawRate;
        out[Signal.FORWARD_ACCELERATION.index()] = forwardMps2;
        out[Signal.LATERAL_ACCELERATION.index()] = lateralMps2;
        out[Signal.VERTICAL_ACCELERATION.index()] = verticalMps2;
        out[Signal.STEER.index()] = inputs.steerRad();
        out[Signal.THROTTLE.index()] = inputs.throttle();
        out[Signal.BRAKE.index()] = inputs.brake();
        out[Signal.GEAR.index()] = drivetrain.gear();
        out[Signal.ENGINE_SPEED.index()] = drivetrain.engineRadPerS(car, wheels);
        double radius = car.powertrain().tyreRadiusM();
        for (int wheel = 0; wheel < 4; wheel++) {
            out[Signal.WHEEL_SPEED_FRONT_LEFT.index() + wheel] = wheels.turning[wheel] * radius;
            out[Signal.LOAD_FRONT_LEFT.index() + wheel] = body.loadN(wheel);
            double rise = wheel < 2 ? body.riseFrontM() : body.riseRearM();
            out[Signal.SUSPENSION_FRONT_LEFT.index() + wheel] = -rise - toLeft(wheel) * body.rollRad();
        }
        out[Signal.SLIP_FRONT.index()] = slip(true);
        out[Signal.SLIP_REAR.index()] = slip(false);
        out[Signal.USE_FRONT.index()] = use(true);
        out[Signal.USE_REAR.index()] = use(false);
    }

    /** Returns the slip angle of an axle, rad: that of its wheels, weighted with their loads. */
    public double slip(boolean isFront) {
        return weighted(wheels.asked, isFront);
    }

    /** Returns how much of its grip an axle uses, 1 at the peak of its tyres, more beyond. */
    public double use(boolean isFront) {
        return weighted(wheels.use, isFront);
    }

    private double weighted(double[] values, boolean isFront) {
        int left = isFront ? 0 : 2;
        double leftLoad = body.loadN(left);
        double rightLoad = body.loadN(left + 1);
        double sum = Math.max(leftLoad + rightLoad, 1.0);
        return (values[left] * leftLoad + values[left + 1] * rightLoad) / sum;
    }

    public double x() {
        return x;
    }

    public double y() {
        return y;
    }

    /** Returns the direction of the car, rad. */
    public double heading() {
        return heading;
    }

    public double forwardMps() {
        return forward;
    }

    public double lateralMps() {
        return lateral;
    }

    public double speedMps() {
        return Math.hypot(forward, lateral);
    }

    public double yawRate() {
        return yawRate;
    }

    public double forwardMps2() {
        return forwardMps2;
    }

    public double lateralMps2() {
        return lateralMps2;
    }

    /** Returns the sum of the brake forces that the pedal asks for at its end, N. */
    public double greatestBrakeN() {
        return drivetrain.greatestBrakeN();
    }

    /** Returns the angle of the velocity to the car's axis, rad, left positive. */
    public double sideslipRad() {
        return Math.atan2(lateral, forward);
    }

    /** Tells whether the car has turned round or come to a stand. */
    public boolean lost() {
        return forward < STANDSTILL_MPS || Math.abs(lateral) > Math.abs(forward);
    }
}
