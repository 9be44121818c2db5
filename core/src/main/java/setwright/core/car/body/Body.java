package setwright.core.car.body;

import setwright.core.car.sums.Gravity;

/*
 * Design note. One set of equations of the sprung mass in heave, pitch and roll serves three users: the time integration
 * (a step of the replay, or the right-hand side for an ODE solver) and the equilibrium (all rates zero). Their common
 * core is `forces`: what springs, bars, stops and dampers give at an attitude, plus what links and wheels pass on at once.
 *
 * Springs and dampers do not change the total longitudinal load transfer, m ax h / L; they decide when it arrives, how
 * the axles share the lateral one, and the ride heights. Load that the links carry (roll centre, anti shares) arrives at
 * once. Signs follow ISO 8855: heave up, pitch positive nose down, roll positive left side up (as in a left turn).
 */

/**
 * The sprung mass on its four suspensions.
 *
 * @param massKg            of the whole car with fuel, kg
 * @param toFrontM          centre of gravity to front axle, m
 * @param toRearM           centre of gravity to rear axle, m
 * @param heightM           of the centre of gravity, m
 * @param front             front axle
 * @param rear              rear axle
 * @param rollInertiaKgM2   of the sprung mass, kg m²
 * @param pitchInertiaKgM2  of the sprung mass, kg m²
 */
public record Body(
        double massKg,
        double toFrontM,
        double toRearM,
        double heightM,
        Axle front,
        Axle rear,
        double rollInertiaKgM2,
        double pitchInertiaKgM2) {

    /**
     * What acts on the car at a moment.
     *
     * @param forwardMps2   longitudinal acceleration, m/s²
     * @param lateralMps2   lateral acceleration, m/s², left positive
     * @param liftFrontN    downforce at the front axle, N
     * @param liftRearN     downforce at the rear axle, N
     * @param frontForceN   lateral force of the front axle, N, left positive
     * @param rearForceN    lateral force of the rear axle, N, left positive
     */
    public record Action(
            double forwardMps2,
            double lateralMps2,
            double liftFrontN,
            double liftRearN,
            double frontForceN,
            double rearForceN) {}

    /** Returns the same body at another mass, kg: springs, inertias and the centre of gravity stay. */
    public Body withMass(double otherKg) {
        return new Body(otherKg, toFrontM, toRearM, heightM, front, rear, rollInertiaKgM2, pitchInertiaKgM2);
    }

    public double wheelbaseM() {
        return toFrontM + toRearM;
    }

    /** Returns the sprung mass, kg. */
    public double sprungMassKg() {
        return massKg - front.unsprungMassKg() - rear.unsprungMassKg();
    }

    /** Returns the height of the sprung mass, m: moments about the ground add up to those of the whole car. */
    public double sprungHeightM() {
        return (massKg * heightM
                        - front.unsprungMassKg() * front.unsprungHeightM()
                        - rear.unsprungMassKg() * rear.unsprungHeightM())
                / sprungMassKg();
    }

    /**
     * Returns the moment by which the sprung mass turns about the roll axis per unit of acceleration, kg m: sprung mass times its
     * height above the roll axis (Milliken and Milliken, 1995, chapter 18, value from memory).
     */
    public double rollMassKgM() {
        double frontSprung = massKg * toRearM / wheelbaseM() - front.unsprungMassKg();
        double rearSprung = massKg * toFrontM / wheelbaseM() - rear.unsprungMassKg();
        return sprungMassKg() * sprungHeightM()
                - frontSprung * front.rollCentreHeightM()
                - rearSprung * rear.rollCentreHeightM();
    }

    /** Returns the static load of one front wheel, N. */
    public double staticFrontN() {
        return 0.5 * massKg * Gravity.STANDARD_MPS2 * toRearM / wheelbaseM();
    }

    /** Returns the static load of one rear wheel, N. */
    public double staticRearN() {
        return 0.5 * massKg * Gravity.STANDARD_MPS2 * toFrontM / wheelbaseM();
    }

    /**
     * Sums up forces at an attitude.
     *
     * @param attitude  heave m, pitch rad, roll rad, measured from rest without downforce
     * @param rates     their rates, 1/s
     * @param action    what acts
     * @param loads     receives the loads of the four wheels, N; may be negative when a wheel would have to hold the car down
     * @param residual  receives the sum of vertical forces N, of pitch moments N m and of roll moments N m that accelerate
     *                  the sprung mass
     */
    public void forces(double[] attitude, double[] rates, Action action, double[] loads, double[] residual) {
        double transfer = massKg * action.forwardMps2() * heightM / wheelbaseM();
        double frontLink = -front.antiShare() * transfer;
        double rearLink = rear.antiShare() * transfer;
        double frontSide = sideLink(front, action.frontForceN(), action.lateralMps2());
        double rearSide = sideLink(rear, action.rearForceN(), action.lateralMps2());
        axle(front, toFrontM, attitude, rates, loads, 0);
        axle(rear, -toRearM, attitude, rates, loads, 2);
        double frontSum = loads[0] + loads[1];
        double rearSum = loads[2] + loads[3];
        // links push on the body as springs do; what wheels carry without the body (unsprung parts) comes on top
        residual[0] = frontSum + frontLink + rearSum + rearLink - action.liftFrontN() - action.liftRearN();
        // sprung and unsprung parts brake through the same springs: the whole transfer turns the body
        residual[1] = -massKg * action.forwardMps2() * heightM
                - toFrontM * (frontSum + frontLink - action.liftFrontN())
                + toRearM * (rearSum + rearLink - action.liftRearN());
        // the body leans about its roll axis: only what is above it moves out with the lean
        double roll = sprungMassKg() * sprungHeightM() * action.lateralMps2()
                + rollMassKgM() * Gravity.STANDARD_MPS2 * attitude[2];
        residual[2] = roll
                + 0.5 * front.trackM() * (loads[0] - loads[1] - 2.0 * frontSide)
                + 0.5 * rear.trackM() * (loads[2] - loads[3] - 2.0 * rearSide);
        double frontUnsprung = unsprungTransfer(front, action.lateralMps2());
        double rearUnsprung = unsprungTransfer(rear, action.lateralMps2());
        double staticFront = staticFrontN() + 0.5 * frontLink;
        double staticRear = staticRearN() + 0.5 * rearLink;
        loads[0] += staticFront - frontSide - frontUnsprung;
        loads[1] += staticFront + frontSide + frontUnsprung;
        loads[2] += staticRear - rearSide - rearUnsprung;
        loads[3] += staticRear + rearSide + rearUnsprung;
    }

    /**
     * Takes wheels that would have to hold the car down off the ground. The axle's other wheel then carries all of it, and the
     * other axle the rest of the moment: sum and moment stay, as for a rigid body that leans until the other axle holds it.
     *
     * @param loads  of the four wheels, N
     */
    public void lift(double[] loads) {
        lift(loads, 0, front.trackM() / rear.trackM());
        lift(loads, 2, rear.trackM() / front.trackM());
        // what is still negative: the car would roll over, or an axle has no load at all
        for (int wheel = 0; wheel < 4; wheel++) {
            loads[wheel] = Math.max(loads[wheel], 0.0);
        }
    }

    private static void lift(double[] loads, int axle, double tracks) {
        int up = loads[axle] < 0.0 ? axle : axle + 1;
        double missing = -loads[up];
        int across = up == axle ? axle + 1 : axle;
        if (missing <= 0.0 || loads[across] < missing) {
            return;
        }
        loads[up] = 0.0;
        loads[across] -= missing;
        int other = 2 - axle;
        loads[other + up - axle] -= missing * tracks;
        loads[other + across - axle] += missing * tracks;
    }

    /** Load that an axle's links move from left to right at once, N: lateral force on the sprung mass times the roll centre. */
    private static double sideLink(Axle axle, double axleForce, double lateral) {
        return (axleForce - axle.unsprungMassKg() * lateral) * axle.rollCentreHeightM() / axle.trackM();
    }

    private static double unsprungTransfer(Axle axle, double lateral) {
        return axle.unsprungMassKg() * lateral * axle.unsprungHeightM() / axle.trackM();
    }

    private static void axle(Axle axle, double x, double[] attitude, double[] rates, double[] loads, int at) {
        double half = 0.5 * axle.trackM();
        double together = -(attitude[0] - x * attitude[1]);
        double apart = -half * attitude[2];
        double togetherRate = -(rates[0] - x * rates[1]);
        double apartRate = -half * rates[2];
        double ride = axle.rideRate() * together;
        double roll = axle.rollRate() * apart;
        double share = axle.damperShare();
        loads[at] =
                ride + roll + share * axle.damper().force(togetherRate + apartRate) + axle.bumpStop(together + apart);
        loads[at + 1] =
                ride - roll + share * axle.damper().force(togetherRate - apartRate) + axle.bumpStop(together - apart);
    }
}
