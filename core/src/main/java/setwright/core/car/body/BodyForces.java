package setwright.core.car.body;

import setwright.core.car.body.Body.Action;
import setwright.core.car.sums.Gravity;

/*
 * Design note. One set of equations of the sprung mass in heave, pitch and roll serves three users: the time integration
 * (a step of the replay, or the right-hand side for an ODE solver) and the equilibrium (all rates zero). This is their common
 * core: what springs, bars, stops and dampers give at an attitude, plus what links and wheels pass on at once. A replay asks for it
 * millions of times, so that all that depends on the body alone is reckoned once.
 *
 * Springs and dampers do not change the total longitudinal load transfer, m ax h / L; they decide when it arrives, how
 * the axles share the lateral one, and the ride heights. Load that the links carry (roll centre, anti shares) arrives at
 * once. Signs follow ISO 8855: heave up, pitch positive nose down, roll positive left side up (as in a left turn).
 */

/** What acts on the sprung mass at an attitude. */
public final class BodyForces {
    private final double massKg;
    private final double heightM;
    private final double wheelbaseM;
    private final double rollKgM;
    private final double leanNmPerRad;
    private final double toFrontM;
    private final double toRearM;
    private final double staticFrontN;
    private final double staticRearN;
    private final Legs front;
    private final Legs rear;

    /** Makes those of a body. */
    public BodyForces(Body body) {
        this.massKg = body.massKg();
        this.heightM = body.heightM();
        this.wheelbaseM = body.wheelbaseM();
        this.rollKgM = body.sprungMassKg() * body.sprungHeightM();
        this.leanNmPerRad = body.rollMassKgM() * Gravity.STANDARD_MPS2;
        this.toFrontM = body.toFrontM();
        this.toRearM = body.toRearM();
        this.staticFrontN = body.staticFrontN();
        this.staticRearN = body.staticRearN();
        this.front = new Legs(body.front(), body.toFrontM());
        this.rear = new Legs(body.rear(), -body.toRearM());
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
    public void sum(double[] attitude, double[] rates, Action action, double[] loads, double[] residual) {
        front.carry(attitude, rates, loads, 0);
        rear.carry(attitude, rates, loads, 2);
        passOn(attitude, action, loads, residual);
    }

    /** The same with all rates zero. */
    void sumAtRest(double[] attitude, Action action, double[] loads, double[] residual) {
        front.carryAtRest(attitude, loads, 0);
        rear.carryAtRest(attitude, loads, 2);
        passOn(attitude, action, loads, residual);
    }

    private void passOn(double[] attitude, Action action, double[] loads, double[] residual) {
        double transfer = massKg * action.forwardMps2() * heightM / wheelbaseM;
        double frontLink = -front.antiShare * transfer;
        double rearLink = rear.antiShare * transfer;
        double frontSide = front.sideLink(action.frontForceN(), action.lateralMps2());
        double rearSide = rear.sideLink(action.rearForceN(), action.lateralMps2());
        double frontSum = loads[0] + loads[1];
        double rearSum = loads[2] + loads[3];
        // links push on the body as springs do; what wheels carry without the body (unsprung parts) comes on top
        residual[0] = frontSum + frontLink + rearSum + rearLink - action.liftFrontN() - action.liftRearN();
        // sprung and unsprung parts brake through the same springs: the whole transfer turns the body
        residual[1] = -massKg * action.forwardMps2() * heightM
                - toFrontM * (frontSum + frontLink - action.liftFrontN())
                + toRearM * (rearSum + rearLink - action.liftRearN());
        // the body leans about its roll axis: only what is above it moves out with the lean
        double roll = rollKgM * action.lateralMps2() + leanNmPerRad * attitude[2];
        residual[2] = roll
                + front.halfTrackM * (loads[0] - loads[1] - 2.0 * frontSide)
                + rear.halfTrackM * (loads[2] - loads[3] - 2.0 * rearSide);
        double frontUnsprung = front.unsprungTransfer(action.lateralMps2());
        double rearUnsprung = rear.unsprungTransfer(action.lateralMps2());
        double staticFront = staticFrontN + 0.5 * frontLink;
        double staticRear = staticRearN + 0.5 * rearLink;
        loads[0] += staticFront - frontSide - frontUnsprung;
        loads[1] += staticFront + frontSide + frontUnsprung;
        loads[2] += staticRear - rearSide - rearUnsprung;
        loads[3] += staticRear + rearSide + rearUnsprung;
    }

    /** One axle with its rates reckoned out. */
    private static final class Legs {
        private final Axle axle;
        private final Damper damper;
        private final double ahead;
        private final double trackM;
        private final double halfTrackM;
        private final double rideRate;
        private final double rollRate;
        private final double damperShare;
        private final double antiShare;

        private Legs(Axle axle, double ahead) {
            this.axle = axle;
            this.damper = axle.damper();
            this.ahead = ahead;
            this.trackM = axle.trackM();
            this.halfTrackM = 0.5 * axle.trackM();
            this.rideRate = axle.rideRate();
            this.rollRate = axle.rollRate();
            this.damperShare = axle.damperShare();
            this.antiShare = axle.antiShare();
        }

        /** Load that the links move from left to right at once, N: lateral force on the sprung mass times the roll centre. */
        private double sideLink(double axleForce, double lateral) {
            return (axleForce - axle.unsprungMassKg() * lateral) * axle.rollCentreHeightM() / trackM;
        }

        private double unsprungTransfer(double lateral) {
            return axle.unsprungMassKg() * lateral * axle.unsprungHeightM() / trackM;
        }

        private void carry(double[] attitude, double[] rates, double[] loads, int at) {
            double together = ahead * rates[1] - rates[0];
            double apart = -halfTrackM * rates[2];
            carry(
                    attitude,
                    damperShare * damper.force(together + apart),
                    damperShare * damper.force(together - apart),
                    loads,
                    at);
        }

        private void carryAtRest(double[] attitude, double[] loads, int at) {
            carry(attitude, 0.0, 0.0, loads, at);
        }

        private void carry(double[] attitude, double leftDamperN, double rightDamperN, double[] loads, int at) {
            double together = ahead * attitude[1] - attitude[0];
            double apart = -halfTrackM * attitude[2];
            double ride = rideRate * together;
            double roll = rollRate * apart;
            loads[at] = ride + roll + leftDamperN + axle.bumpStop(together + apart);
            loads[at + 1] = ride - roll + rightDamperN + axle.bumpStop(together - apart);
        }
    }
}
