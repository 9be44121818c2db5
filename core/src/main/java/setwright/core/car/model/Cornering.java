package setwright.core.car.model;

/*
 * Design note. The recorded motion says which lateral force each axle gave: m ay and Iz dr/dt leave no choice but for the
 * yaw moment of the differential. The model says how the four loads and the longitudinal forces stood at that moment. What
 * is left is the slip angle that each axle needs: balance = front less rear. Nothing is integrated here; time enters
 * through the loads, which the body's movement brings.
 *
 * Everything is computed as if the turn went left: inner and outer stand for left and right.
 */

/** What the axles of a car do in a motion that was driven; mutable workspace, for one thread. */
public final class Cornering {
    /** Longitudinal demand below it leaves a wheel's grip alone, N. */
    private static final double CLOSED = 0.02;

    private final CarModel car;
    private final AxleState front;
    private final AxleState rear;
    private final double mass;
    private final double restFront;
    private final double restRear;
    private double frontLateral;
    private double rearLateral;
    private double frontInner;
    private double frontOuter;
    private double rearInner;
    private double rearOuter;
    private double frontUse;
    private double rearUse;

    /** Makes a workspace for a car. */
    public Cornering(CarModel car) {
        this.car = car;
        this.front = new AxleState(car.front(), car.toeFrontRad());
        this.rear = new AxleState(car.rear(), car.toeRearRad());
        this.mass = car.body().massKg();
        this.restFront = car.body().staticFrontN();
        this.restRear = car.body().staticRearN();
    }

    /**
     * Takes a moment.
     *
     * @param moment  motion that was driven
     * @param loads   of the four wheels, N
     * @param from    where they begin in {@code loads}
     * @param scale   by which all accelerations are multiplied, 1 for what was driven: the same line at {@code sqrt(scale)}
     *                times the speed
     */
    public void at(Moment moment, double[] loads, int from, double scale) {
        double side = moment.lateral() >= 0.0 ? 1.0 : -1.0;
        int inner = side > 0.0 ? 0 : 1;
        front.load(
                restFront + scale * (loads[from + inner] - restFront),
                restFront + scale * (loads[from + 1 - inner] - restFront));
        rear.load(
                restRear + scale * (loads[from + 2 + inner] - restRear),
                restRear + scale * (loads[from + 3 - inner] - restRear));
        double lateral = side * moment.lateral() * scale;
        double steer = side * moment.steer();
        double along = mass * moment.forward() * scale + car.resistanceN(moment.speed()) * scale;
        lengthwise(moment, along, side * moment.yawRate(), lateral, steer, side * moment.yawAcceleration() * scale);
    }

    private void lengthwise(
            Moment moment, double wanted, double turning, double lateral, double steer, double yawRise) {
        double toFront = car.body().toFrontM();
        double toRear = car.body().toRearM();
        double wheelbase = toFront + toRear;
        double evenFront = (mass * toRear * lateral + car.yawInertiaKgM2() * yawRise) / wheelbase;
        // steered wheels drag: what the front gives sideways across its hub slows the car too
        double sine = Math.sin(steer);
        double along = wanted + evenFront * sine;
        double engine = 0.0;
        double brake = 0.0;
        if (along >= 0.0 || moment.throttle() > 0.5) {
            engine = Math.max(along, 0.0);
        } else {
            engine = moment.throttle() > CLOSED || moment.speed() < 1.0
                    ? 0.0
                    : -Math.min(-along, car.engineBrakingN(moment.speed()));
            brake = along - engine;
        }
        double frontEngine = engine * car.driveFront();
        double rearEngine = engine - frontEngine;
        double frontBrake = brake * car.brakes().frontShare();
        double rearBrake = brake - frontBrake;
        double frontHanded = handed(
                front, frontEngine, turning, moment.speed(), car.body().front().trackM(), evenFront);
        double rearHanded = handed(
                rear, rearEngine, turning, moment.speed(), car.body().rear().trackM(), mass * lateral - evenFront);
        // handing force from the outer to the inner wheel turns the car out of the corner
        double moment2 = -frontHanded * car.body().front().trackM()
                - rearHanded * car.body().rear().trackM();
        double frontNeeded = evenFront - moment2 / wheelbase;
        rearLateral = mass * lateral - frontNeeded;
        double frontAlong = frontEngine + frontBrake;
        frontLateral = (frontNeeded - frontAlong * sine) / Math.sqrt(1.0 - sine * sine);
        frontInner = 0.5 * frontAlong + frontHanded;
        frontOuter = 0.5 * frontAlong - frontHanded;
        rearInner = 0.5 * (rearEngine + rearBrake) + rearHanded;
        rearOuter = 0.5 * (rearEngine + rearBrake) - rearHanded;
        frontUse = use(front, frontLateral, frontAlong, frontEngine);
        rearUse = use(rear, rearLateral, rearEngine + rearBrake, rearEngine);
    }

    /** Force that the differential of this axle hands from the outer to the inner wheel, N; none where nothing drives. */
    private double handed(AxleState axle, double engine, double turning, double speed, double track, double lateral) {
        boolean driven = axle == front ? car.driveFront() > 0.0 : car.driveFront() < 1.0;
        if (!driven || speed < 1.0) {
            return 0.0;
        }
        double sideways = Math.abs(lateral) / Math.max(axle.lateralPeak(), 1.0);
        return car.handedN(
                axle == front ? car.front() : car.rear(),
                axle.innerAlongPeak,
                axle.outerAlongPeak,
                sideways,
                engine,
                track * turning / speed);
    }

    /** How much of its grip an axle uses, 1 at its limit; a driving axle whose inner wheel spins first is at its limit then. */
    private double use(AxleState axle, double lateral, double along, double engine) {
        double most = axle.alongPeak();
        if (engine > 0.0) {
            double lock = car.differential().powerLock();
            double radius = car.powertrain().tyreRadiusM();
            double spin =
                    (2.0 * axle.innerAlongPeak + car.differential().preloadNm() / radius) / Math.max(1.0 - lock, 0.05);
            most = smoothMinimum(most, Math.max(spin, 1.0));
        }
        // toe moves the angle at which the axle gives its force, hardly the force that it can give: it is no grip
        double across = Math.abs(lateral) / Math.max(axle.lateralPeak(), 1.0);
        double lengthwise = along / Math.max(most, 1.0);
        // shares near 1 need no guard against overflow, which is what makes the library's hypotenuse slow
        return Math.sqrt(across * across + lengthwise * lengthwise);
    }

    /** Eighth-power minimum of two positive numbers. */
    private static double smoothMinimum(double one, double other) {
        double least = Math.min(one, other);
        double ratio = least / Math.max(one, other);
        double square = ratio * ratio;
        double fourth = square * square;
        return least / Math.sqrt(Math.sqrt(Math.sqrt(1.0 + fourth * fourth)));
    }

    /** Returns how much of its grip the front axle uses; 1 is the limit. */
    public double frontUse() {
        return frontUse;
    }

    /** Returns how much of its grip the rear axle uses; 1 is the limit. */
    public double rearUse() {
        return rearUse;
    }

    /** Returns the slip angle that the front axle needs, rad, positive toward the turn. */
    public double frontSlip() {
        return front.slip(frontLateral, frontInner, frontOuter);
    }

    /** Returns the slip angle that the rear axle needs, rad, positive toward the turn. */
    public double rearSlip() {
        return rear.slip(rearLateral, rearInner, rearOuter);
    }

    /** Returns the balance angle, rad: slip angle of the front axle less that of the rear. */
    public double balance() {
        return frontSlip() - rearSlip();
    }
}
