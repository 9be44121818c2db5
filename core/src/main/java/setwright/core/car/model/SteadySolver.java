package setwright.core.car.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import setwright.core.car.body.Body;
import setwright.core.car.model.Equilibrium.Axes;
import setwright.core.car.model.Equilibrium.End;
import setwright.core.car.sums.Gravity;

/*
 * Design note. Eight unknowns: lateral acceleration, sideslip, steer, force along, the front axle's lateral force, heave, pitch,
 * roll. Eight equations: forces along and across, yaw moment, that the front axle gives what was assumed, three sums of the
 * body, and one that says which state is wanted. Newton with differences for derivatives.
 */

/** Newton's method on the steady state of a car; workspace of {@link Equilibrium}. */
final class SteadySolver {
    static final int LATERAL = 0;
    static final int SIDESLIP = 1;
    static final int STEER = 2;
    static final int COUNT = 8;
    static final int ALONG = 3;
    private static final int FRONT = 4;
    static final int BODY = 5;
    private static final int NEWTON_STEPS = 25;
    private static final int BACKWARD_STEPS = 4;
    private static final double DIFFERENCE = 1.0e-6;
    private static final double ACCURACY = 1.0e-10;
    /** Derivatives are kept as long as a step with them leaves no more than this share of what was wrong. */
    private static final double STILL_GOOD = 0.05;
    /** The same on a walk: a step costs one look at the wheels, new derivatives cost eight. */
    private static final double STILL_GOOD_ON_A_WALK = 0.2;

    /** Longest step of an angle, rad, that Newton is allowed. */
    static final double LONGEST = 0.04;

    private static final double[] AT_REST = new double[3];

    /** What the last equation prescribes: lateral acceleration, steer, or the sum of both axles' slip angles. */
    enum Wanted {
        LATERAL,
        STEER,
        SLIP
    }

    final double[] unknown = new double[COUNT];
    double frontSlip;
    double rearSlip;
    private final CarModel car;
    private final Axes axes;
    private final FourWheels wheels;
    private final double[] scale = new double[COUNT];
    private final double[] residual = new double[COUNT];
    private final double[] moved = new double[COUNT];
    private final double[] change = new double[COUNT];
    private final double[][] jacobian = new double[COUNT][COUNT];
    private final double[] attitude = new double[3];
    private double engine;
    private double brake;
    private double forwardInCar;
    private double lateralInCar;
    private double yawRate;
    /** The last derivatives; those of another state are tried on a walk only. */
    private Optional<BroydenSlopes> kept = Optional.empty();

    private boolean keeping;

    SteadySolver(CarModel car, Axes axes, FourWheels wheels) {
        this.car = car;
        this.axes = axes;
        this.wheels = wheels;
        double weight = car.body().massKg() * Gravity.STANDARD_MPS2;
        scale[LATERAL] = Gravity.STANDARD_MPS2;
        scale[SIDESLIP] = 0.1;
        scale[STEER] = 0.1;
        scale[ALONG] = weight;
        scale[FRONT] = weight;
        Arrays.fill(scale, BODY, COUNT, 0.01);
    }

    /** Starts from linear tyres. */
    void guess(double speedMps, double forwardMps2, double lateralMps2) {
        Body body = car.body();
        double mass = body.massKg();
        Arrays.fill(unknown, 0.0);
        unknown[LATERAL] = lateralMps2;
        unknown[ALONG] = mass * forwardMps2 + car.resistanceN(speedMps);
        unknown[FRONT] = mass * lateralMps2 * body.toRearM() / body.wheelbaseM();
        double slip = lateralMps2
                / (car.front().corneringStiffness(body.staticFrontN()) * 2.0)
                * mass
                * body.toRearM()
                / body.wheelbaseM();
        double rearSlipGuess = lateralMps2
                / (car.rear().corneringStiffness(body.staticRearN()) * 2.0)
                * mass
                * body.toFrontM()
                / body.wheelbaseM();
        double turning = lateralMps2 / (speedMps * speedMps);
        unknown[SIDESLIP] = body.toRearM() * turning - rearSlipGuess;
        unknown[STEER] = slip + unknown[SIDESLIP] + body.toFrontM() * turning;
        double liftFront = car.liftFrontN(speedMps, 0.0, 0.0);
        double liftRear = car.liftRearN(speedMps, 0.0, 0.0);
        unknown[BODY] = -0.5
                * (liftFront / (2.0 * body.front().rideRate())
                        + liftRear / (2.0 * body.rear().rideRate()));
    }

    /**
     * Begins or ends a walk in small steps, on which derivatives serve from one state to the next, and from one walk to the next.
     */
    void walk(boolean begins) {
        keeping = begins;
    }

    /** Solves from the unknowns as they are; tells whether it has. */
    boolean solve(Wanted wanted, double value, double speedMps, double forwardMps2) {
        evaluate(wanted, value, speedMps, forwardMps2, unknown, residual);
        Optional<BroydenSlopes> slopes = keeping ? kept : Optional.empty();
        double before = Double.POSITIVE_INFINITY;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            double size = largest(residual);
            if (size < ACCURACY) {
                return true;
            }
            if (!Double.isFinite(size)) {
                return false;
            }
            if (slopes.isEmpty() || size > (keeping ? STILL_GOOD_ON_A_WALK : STILL_GOOD) * before) {
                try {
                    slopes = Optional.of(slopes(wanted, value, speedMps, forwardMps2));
                } catch (MathRuntimeException singular) {
                    return false;
                }
                kept = slopes;
            }
            before = size;
            slopes.get().change(residual, change);
            double longest = Math.max(Math.abs(change[SIDESLIP]), Math.abs(change[STEER])) * scale[STEER];
            double share = Math.min(1.0, LONGEST / Math.max(longest, 1.0e-12));
            System.arraycopy(residual, 0, moved, 0, COUNT);
            for (int j = 0; j < COUNT; j++) {
                unknown[j] -= share * change[j] * scale[j];
            }
            evaluate(wanted, value, speedMps, forwardMps2, unknown, residual);
            // loads and forces have kinks (a wheel lifts, spins or locks): a step across one may lead away
            for (int i = 0; i < BACKWARD_STEPS && !(largest(residual) < size); i++) {
                share *= 0.5;
                for (int j = 0; j < COUNT; j++) {
                    unknown[j] += share * change[j] * scale[j];
                }
                evaluate(wanted, value, speedMps, forwardMps2, unknown, residual);
            }
            for (int j = 0; j < COUNT; j++) {
                change[j] *= -share;
                moved[j] = residual[j] - moved[j];
            }
            slopes.get().learn(change, moved);
        }
        return largest(residual) < 100.0 * ACCURACY;
    }

    private BroydenSlopes slopes(Wanted wanted, double value, double speedMps, double forwardMps2) {
        for (int j = 0; j < COUNT; j++) {
            double kept = unknown[j];
            unknown[j] = kept + DIFFERENCE * scale[j];
            evaluate(wanted, value, speedMps, forwardMps2, unknown, moved);
            unknown[j] = kept;
            for (int i = 0; i < COUNT; i++) {
                jacobian[i][j] = (moved[i] - residual[i]) / DIFFERENCE;
            }
        }
        return new BroydenSlopes(jacobian);
    }

    /** Takes unknowns as they are. */
    void put(double[] unknowns, Wanted wanted, double value, double speedMps, double forwardMps2) {
        System.arraycopy(unknowns, 0, unknown, 0, COUNT);
        evaluate(wanted, value, speedMps, forwardMps2, unknown, residual);
    }

    private void evaluate(Wanted wanted, double value, double speedMps, double forwardMps2, double[] at, double[] out) {
        Body body = car.body();
        double mass = body.massKg();
        double cos = Math.cos(at[SIDESLIP]);
        double sin = Math.sin(at[SIDESLIP]);
        boolean inCar = axes == Axes.CAR;
        forwardInCar = inCar ? forwardMps2 : forwardMps2 * cos - at[LATERAL] * sin;
        lateralInCar = inCar ? at[LATERAL] : forwardMps2 * sin + at[LATERAL] * cos;
        // the sideslip stays: the path turns as fast as the car
        double across = inCar ? at[LATERAL] * cos - forwardMps2 * sin : at[LATERAL];
        yawRate = across / speedMps;
        engine = at[ALONG] >= 0.0 ? at[ALONG] : -Math.min(-at[ALONG], car.engineBrakingN(speedMps));
        brake = Math.max(engine - at[ALONG], 0.0);
        System.arraycopy(at, BODY, attitude, 0, 3);
        wheels.at(
                speedMps * cos,
                speedMps * sin,
                yawRate,
                attitude,
                AT_REST,
                at[STEER],
                engine,
                brake,
                forwardInCar,
                lateralInCar,
                at[FRONT],
                mass * lateralInCar - at[FRONT]);
        frontSlip = at[STEER] - Math.atan2(speedMps * sin + body.toFrontM() * yawRate, speedMps * cos);
        rearSlip = -Math.atan2(speedMps * sin - body.toRearM() * yawRate, speedMps * cos);
        double weight = mass * Gravity.STANDARD_MPS2;
        out[0] = (wheels.forwardSum - mass * forwardInCar) / weight;
        out[1] = (wheels.lateralSum - mass * lateralInCar) / weight;
        out[2] = wheels.yawSum / (weight * body.wheelbaseM());
        out[3] = (wheels.frontLateral - at[FRONT]) / weight;
        out[4] = wheels.bodySum[0] / weight;
        out[5] = wheels.bodySum[1] / (weight * body.wheelbaseM());
        out[6] = wheels.bodySum[2] / (weight * body.front().trackM());
        out[7] = switch (wanted) {
            case LATERAL -> (at[LATERAL] - value) / Gravity.STANDARD_MPS2;
            case STEER -> at[STEER] - value;
            case SLIP -> frontSlip + rearSlip - value;
        };
    }

    private static double largest(double[] values) {
        double most = 0.0;
        for (double value : values) {
            most = Double.isNaN(value) ? Double.NaN : Math.max(most, Math.abs(value));
        }
        return most;
    }

    /** Tells whether both axles would give more with more slip: before the limit, not beyond it. */
    boolean risesStill() {
        double side = Math.signum(unknown[LATERAL]);
        return growth(End.FRONT, side) > 0.0 && growth(End.REAR, side) > 0.0;
    }

    End nearerToItsPeak() {
        double front = growth(End.FRONT, 1.0)
                / car.front().corneringStiffness(car.body().staticFrontN());
        double rear =
                growth(End.REAR, 1.0) / car.rear().corneringStiffness(car.body().staticRearN());
        return front < rear ? End.FRONT : End.REAR;
    }

    /** Lateral force of an axle per slip angle, N/rad, with everything else as it is. */
    private double growth(End end, double side) {
        return wheels.slope(end == End.FRONT, side >= 0.0 ? DIFFERENCE : -DIFFERENCE);
    }

    SteadyState result(double speedMps) {
        return new SteadyState(
                speedMps,
                forwardInCar,
                lateralInCar,
                yawRate,
                unknown[SIDESLIP],
                unknown[STEER],
                frontSlip,
                rearSlip,
                List.of(wheels.loads[0], wheels.loads[1], wheels.loads[2], wheels.loads[3]),
                wheels.use(true),
                wheels.use(false),
                engine,
                brake,
                unknown[BODY],
                unknown[BODY + 1],
                unknown[BODY + 2]);
    }
}
