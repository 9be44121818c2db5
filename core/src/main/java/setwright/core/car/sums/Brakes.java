package setwright.core.car.sums;

/**
 * How the brakes share a deceleration, on a flat road without the air's forces. Decelerations in m/s2, positive.
 *
 * <p><b>Source:</b> moment balance; R. Limpert, <i>Brake Design and Safety</i>, SAE, ch. 7 (formulas from memory).
 *
 * @param massKg         of the car, kg, &gt; 0
 * @param toFrontAxleM   centre of gravity behind the front axle, m, &gt; 0
 * @param toRearAxleM    centre of gravity ahead of the rear axle, m, &gt; 0
 * @param heightM        of the centre of gravity above the road, m, &gt; 0
 */
public record Brakes(double massKg, double toFrontAxleM, double toRearAxleM, double heightM) {
    public Brakes {
        Require.positive("mass", massKg, "kg");
        Require.positive("distance to the front axle", toFrontAxleM, "m");
        Require.positive("distance to the rear axle", toRearAxleM, "m");
        Require.positive("centre of gravity height", heightM, "m");
    }

    /** Which axle's wheels stop turning first. */
    public enum FirstToLock {
        FRONT,
        REAR,
        BOTH
    }

    private double wheelbaseM() {
        return toFrontAxleM + toRearAxleM;
    }

    /** Returns the front share of the braking force that uses both axles' grip alike; above 1 the rear axle has left the road. */
    public double idealFrontShare(double decelerationMps2) {
        return (toRearAxleM + decelerationMps2 / Gravity.STANDARD_MPS2 * heightM) / wheelbaseM();
    }

    /** Returns the deceleration, m/s2, at which a front share is the ideal one; negative when it never is. */
    public double decelerationOfIdeal(double frontShare) {
        return Gravity.STANDARD_MPS2 * (frontShare * wheelbaseM() - toRearAxleM) / heightM;
    }

    /** Returns the load on the front axle, N. */
    public double frontLoadN(double decelerationMps2) {
        return massKg * (Gravity.STANDARD_MPS2 * toRearAxleM + decelerationMps2 * heightM) / wheelbaseM();
    }

    /** Returns the load on the rear axle, N; below 0 it has left the road. */
    public double rearLoadN(double decelerationMps2) {
        return massKg * (Gravity.STANDARD_MPS2 * toFrontAxleM - decelerationMps2 * heightM) / wheelbaseM();
    }

    /** Returns the friction coefficient that the front axle needs. */
    public double frontFriction(double decelerationMps2, double frontShare) {
        return frontShare * massKg * decelerationMps2 / frontLoadN(decelerationMps2);
    }

    /** Returns the friction coefficient that the rear axle needs. */
    public double rearFriction(double decelerationMps2, double frontShare) {
        return (1.0 - frontShare) * massKg * decelerationMps2 / rearLoadN(decelerationMps2);
    }

    /**
     * Returns the deceleration, m/s2, at which the front wheels lock; infinite when they never do.
     *
     * @param frontShare  of the braking force, 0..1
     * @param friction    coefficient between tyre and road
     */
    public double frontLockMps2(double frontShare, double friction) {
        double left = frontShare * wheelbaseM() - friction * heightM;
        return left > 0.0 ? Gravity.STANDARD_MPS2 * friction * toRearAxleM / left : Double.POSITIVE_INFINITY;
    }

    /** Returns the deceleration, m/s2, at which the rear wheels lock. */
    public double rearLockMps2(double frontShare, double friction) {
        return Gravity.STANDARD_MPS2
                * friction
                * toFrontAxleM
                / ((1.0 - frontShare) * wheelbaseM() + friction * heightM);
    }

    /** Returns which axle locks first at this friction; BOTH within round-off. */
    public FirstToLock firstToLock(double frontShare, double friction) {
        double front = frontLockMps2(frontShare, friction);
        double rear = rearLockMps2(frontShare, friction);
        double roundOff = 1.0e-9 * rear;
        if (Math.abs(front - rear) < roundOff) {
            return FirstToLock.BOTH;
        }
        return front < rear ? FirstToLock.FRONT : FirstToLock.REAR;
    }

    /**
     * Returns the torque at each of an axle's two wheels, N m.
     *
     * @param axleShare    of the braking force, 0..1
     * @param tyreRadiusM  m
     */
    public double wheelTorqueNm(double decelerationMps2, double axleShare, double tyreRadiusM) {
        return axleShare * massKg * decelerationMps2 * tyreRadiusM / 2.0;
    }
}
