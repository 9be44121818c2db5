package setwright.core.simulation.vehicle;

import setwright.core.car.model.CarModel;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.tyre.SimilarityMethod;
import setwright.core.car.tyre.TyreForce;

/*
 * Design note. A wheel's turning speed settles within milliseconds, faster than a step: its slip ratio is found implicitly, with the
 * tyre's force linear in it over the step. Both wheels of a driven axle are coupled by engine inertia and differential, so that
 * each axle is a system of two equations.
 */

/** The four wheels: turning speeds, slips and forces; mutable. Order: front left, front right, rear left, rear right. */
final class Wheels {
    private static final double LEAST_SPEED = 2.0;
    private static final double DIFFERENCE = 1.0e-3;
    /** Difference of wheel speeds over which the differential's clutches take hold, rad/s. */
    private static final double CLUTCH_RAD_PER_S = 0.3;

    private final CarModel car;
    private final RunningGear gear;
    private final SimilarityMethod front;
    private final SimilarityMethod rear;
    private final double radius;
    final double[] turning = new double[4];
    final double[] slip = new double[4];
    /** Forces along and across the wheel, N. */
    final double[] along = new double[4];

    final double[] across = new double[4];
    /** Slip over that of the peak, along and across together. */
    final double[] use = new double[4];
    /** Slip angle that the motion asks for, before the tyre has rolled into it, rad. */
    final double[] asked = new double[4];

    private final double[] speed = new double[4];
    private final double[] slope = new double[4];

    Wheels(CarModel car, RunningGear gear, double speedMps) {
        this.car = car;
        this.gear = gear;
        this.front = new SimilarityMethod(car.front().tyre());
        this.rear = new SimilarityMethod(car.rear().tyre());
        this.radius = car.powertrain().tyreRadiusM();
        java.util.Arrays.fill(turning, speedMps / radius);
    }

    /** Takes over the turning speeds and slips of another set, when the car is the same but for its mass. */
    void continueFrom(Wheels before) {
        System.arraycopy(before.turning, 0, turning, 0, 4);
        System.arraycopy(before.slip, 0, slip, 0, 4);
    }

    /** Rolls a wheel on: its slips, and its forces at the turning speed that it has. */
    void roll(int wheel, double alongMps, double acrossMps, double loadN, double grip, double stepS) {
        boolean isFront = wheel < 2;
        MountedTyre mounted = isFront ? car.front() : car.rear();
        SimilarityMethod method = isFront ? front : rear;
        double rolling = Math.max(Math.abs(alongMps), LEAST_SPEED);
        speed[wheel] = rolling;
        asked[wheel] = -Math.atan2(acrossMps, rolling);
        slip[wheel] += (asked[wheel] - slip[wheel]) * -Math.expm1(-rolling * stepS / gear.relaxationM());
        double slipAngle = slip[wheel];
        double inclination = slipAngle < 0.0 ? -mounted.inclination() : mounted.inclination();
        double pressure = mounted.pressure();
        double kappa = (turning[wheel] * radius - alongMps) / rolling;
        TyreForce here = method.force(slipAngle, kappa, loadN, inclination, pressure);
        TyreForce beside = method.force(slipAngle, kappa + DIFFERENCE, loadN, inclination, pressure);
        along[wheel] = grip * here.longitudinalN();
        across[wheel] = grip * here.lateralN();
        slope[wheel] = Math.max(0.0, grip * (beside.longitudinalN() - here.longitudinalN()) / DIFFERENCE);
        double ofAngle = slipAngle / method.tyre().peakSlipAngle(loadN, inclination, pressure);
        double ofRatio = kappa / method.tyre().peakSlipRatio(loadN, inclination, pressure);
        use[wheel] = Math.sqrt(ofAngle * ofAngle + ofRatio * ofRatio);
    }

    /**
     * Turns the wheels of an axle on.
     *
     * @param left      its left wheel
     * @param driveNm   torque of the engine on both wheels together, N m
     * @param inertia   of the engine as felt at the axle, kg m²
     * @param brakeNm   torque of the brake on each wheel, N m, &gt;= 0
     */
    void turn(int left, double driveNm, double inertia, double brakeNm, double stepS) {
        int right = left + 1;
        double lead = (turning[left] - turning[right]) / CLUTCH_RAD_PER_S;
        boolean driven = left == 0 ? car.driveFront() > 0.0 : car.driveFront() < 1.0;
        double most = driven ? 0.5 * car.differential().lockNm(driveNm) : 0.0;
        double held = Math.tanh(lead);
        double handed = most * held;
        double clutch = most * (1.0 - held * held) / CLUTCH_RAD_PER_S;
        double shared = 0.25 * inertia / stepS;
        double own = gear.wheelInertiaKgM2() / stepS + shared + clutch;
        double a = own + radius * radius * slope[left] / speed[left];
        double d = own + radius * radius * slope[right] / speed[right];
        double off = shared - clutch;
        double leftNm = 0.5 * driveNm - handed - radius * along[left];
        double rightNm = 0.5 * driveNm + handed - radius * along[right];
        leftNm -= brakeNm * hold(turning[left]);
        rightNm -= brakeNm * hold(turning[right]);
        double determinant = a * d - off * off;
        step(left, (d * leftNm - off * rightNm) / determinant);
        step(right, (a * rightNm - off * leftNm) / determinant);
    }

    /** A brake holds against either direction; at a stand it only keeps. */
    private static double hold(double turning) {
        return turning >= 0.0 ? 1.0 : -1.0;
    }

    private void step(int wheel, double change) {
        double before = turning[wheel];
        turning[wheel] = Math.max(0.0, before + change);
        along[wheel] += slope[wheel] * radius * (turning[wheel] - before) / speed[wheel];
    }
}
