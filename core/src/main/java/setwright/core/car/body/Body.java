package setwright.core.car.body;

import setwright.core.car.sums.Gravity;

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
}
