package setwright.core.car.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import setwright.core.car.body.Body;
import setwright.core.car.tyre.Tyre;

/*
 * Design note. Eight unknowns: lateral acceleration, sideslip, steer, force along, the front axle's lateral force, heave, pitch,
 * roll. Eight equations: forces along and across, yaw moment, that the front axle gives what was assumed, three sums of the
 * body, and one that says which state is wanted. Newton with differences for derivatives.
 *
 * The limit is a fold: seen over lateral acceleration the equations become singular there. Seen over the sum of both slip
 * angles they do not, whichever axle gives out, so the limit is the greatest lateral acceleration over that sum.
 */

/** Steady states of the car of {@link VehicleEquations}; workspace, for one thread. */
public final class Equilibrium {
    private static final int LATERAL = 0;
    private static final int SIDESLIP = 1;
    private static final int STEER = 2;
    private static final int ALONG = 3;
    private static final int FRONT = 4;
    private static final int BODY = 5;
    private static final int COUNT = 8;
    private static final int NEWTON_STEPS = 25;
    private static final int BACKWARD_STEPS = 4;
    private static final double DIFFERENCE = 1.0e-6;
    private static final double ACCURACY = 1.0e-10;
    /** Longest step of an angle, rad, that Newton is allowed. */
    private static final double LONGEST = 0.04;

    /** The way to the limit goes in steps of this share of the sum of both peak slip angles, up to a sum far beyond them. */
    private static final double STRIDE = 0.1;

    private static final double FARTHEST = 2.5;
    private static final double SHORTEST = 0.002;
    private static final int REFINEMENTS = 40;
    private static final double GOLDEN = 0.5 * (3.0 - Math.sqrt(5.0));
    private static final double SAME_SLIPS = 5.0e-4;

    /** In which axes the accelerations are prescribed. */
    public enum Axes {
        /** Along and across the car, as a recorder on board reads them. */
        CAR,
        /** Along and across the path: with no acceleration along, the speed stays. */
        PATH
    }

    /** The axle that gives out first. */
    public enum End {
        FRONT,
        REAR
    }

    /**
     * The greatest lateral acceleration.
     *
     * @param lateralMps2  m/s²
     * @param end          the axle that can give no more
     * @param state        there
     */
    public record Limit(double lateralMps2, End end, SteadyState state) {}

    private enum Wanted {
        LATERAL,
        STEER,
        SLIP
    }

    private final CarModel car;
    private final Axes axes;
    private final FourWheels wheels;
    private final double peakSlips;
    private final double[] scale = new double[COUNT];
    private final double[] unknown = new double[COUNT];
    private final double[] residual = new double[COUNT];
    private final double[] moved = new double[COUNT];
    private final double[][] jacobian = new double[COUNT][COUNT];
    private final double[] attitude = new double[3];
    private static final double[] AT_REST = new double[3];
    private double engine;
    private double brake;
    private double frontSlip;
    private double rearSlip;
    private double forwardInCar;
    private double lateralInCar;
    private double yawRate;

    /** Makes a solver with accelerations along and across the car. */
    public Equilibrium(CarModel car) {
        this(car, Axes.CAR);
    }

    /** Makes a solver. */
    public Equilibrium(CarModel car, Axes axes) {
        this(car, axes, car.front().tyre(), car.rear().tyre());
    }

    /** Makes a solver for a car on other tyres; camber and pressure stay those of the car. */
    public Equilibrium(CarModel car, Axes axes, Tyre frontTyre, Tyre rearTyre) {
        this.car = car;
        this.axes = axes;
        this.wheels = new FourWheels(car, frontTyre, rearTyre);
        Body body = car.body();
        this.peakSlips = frontTyre.peakSlipAngle(
                        body.staticFrontN(),
                        car.front().inclination(),
                        car.front().pressure())
                + rearTyre.peakSlipAngle(
                        body.staticRearN(), car.rear().inclination(), car.rear().pressure());
        double weight = body.massKg() * Body.GRAVITY;
        scale[LATERAL] = Body.GRAVITY;
        scale[SIDESLIP] = 0.1;
        scale[STEER] = 0.1;
        scale[ALONG] = weight;
        scale[FRONT] = weight;
        Arrays.fill(scale, BODY, COUNT, 0.01);
    }

    /**
     * Returns the state with a lateral acceleration.
     *
     * @param speedMps     m/s, above 3
     * @param forwardMps2  acceleration along, m/s²
     * @param lateralMps2  acceleration across, m/s²
     * @return empty when the tyres cannot give it
     */
    public Optional<SteadyState> at(double speedMps, double forwardMps2, double lateralMps2) {
        guess(speedMps, forwardMps2, lateralMps2);
        if (solve(Wanted.LATERAL, lateralMps2, speedMps, forwardMps2) && risesStill()) {
            return Optional.of(result(speedMps));
        }
        return beyondTheFirstGuess(speedMps, forwardMps2, lateralMps2);
    }

    /**
     * Returns the state with a steering angle.
     *
     * @param speedMps     m/s, above 3
     * @param forwardMps2  acceleration along, m/s²
     * @param steerRad     mean angle of the front wheels, rad
     * @return empty when there is none or none was found
     */
    public Optional<SteadyState> atSteer(double speedMps, double forwardMps2, double steerRad) {
        if (!solveStraight(speedMps, forwardMps2)) {
            return Optional.empty();
        }
        double start = unknown[STEER];
        int pieces = 1 + (int) (Math.abs(steerRad - start) / (0.25 * LONGEST));
        for (int i = 1; i <= pieces; i++) {
            if (!solve(Wanted.STEER, start + (steerRad - start) * i / pieces, speedMps, forwardMps2)) {
                return Optional.empty();
            }
        }
        return Optional.of(result(speedMps));
    }

    /**
     * Returns the greatest lateral acceleration to the left.
     *
     * @param speedMps     m/s, above 3
     * @param forwardMps2  acceleration along, m/s²
     * @return empty when the tyres cannot even give the acceleration along
     */
    public Optional<Limit> greatestLateral(double speedMps, double forwardMps2) {
        if (!solveStraight(speedMps, forwardMps2)) {
            return Optional.empty();
        }
        Point left = point();
        Point best = left;
        Point right = next(left, left, STRIDE * peakSlips, speedMps, forwardMps2);
        while (right.lateral() > best.lateral() && right.slips() < FARTHEST * peakSlips) {
            left = best;
            best = right;
            right = next(left, best, STRIDE * peakSlips, speedMps, forwardMps2);
        }
        for (int i = 0; i < REFINEMENTS && right.slips() - left.slips() > SAME_SLIPS * peakSlips; i++) {
            boolean above = right.slips() - best.slips() > best.slips() - left.slips();
            double size = above ? right.slips() - best.slips() : best.slips() - left.slips();
            double slips = best.slips() + (above ? GOLDEN : -GOLDEN) * size;
            Point middle = between(above ? best : left, above ? right : best, slips, speedMps, forwardMps2);
            if (middle.lateral() > best.lateral()) {
                left = above ? best : left;
                right = above ? right : best;
                best = middle;
            } else {
                left = above ? left : middle;
                right = above ? middle : right;
            }
        }
        goTo(best, speedMps, forwardMps2);
        return Optional.of(new Limit(best.lateral(), nearerToItsPeak(), result(speedMps)));
    }

    /** A state on the way to the limit, beyond it (lateral acceleration minus infinity) once an axle is past its own peak: sum of slip angles, lateral acceleration, unknowns. */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made
    private record Point(double slips, double rear, double lateral, double[] unknowns) {}

    private Point point() {
        double lateral = risesStill() ? unknown[LATERAL] : Double.NEGATIVE_INFINITY;
        return new Point(frontSlip + rearSlip, rearSlip, lateral, unknown.clone());
    }

    private boolean solveStraight(double speedMps, double forwardMps2) {
        guess(speedMps, forwardMps2, 0.0);
        return solve(Wanted.LATERAL, 0.0, speedMps, forwardMps2);
    }

    private void goTo(Point point, double speedMps, double forwardMps2) {
        System.arraycopy(point.unknowns(), 0, unknown, 0, COUNT);
        evaluate(Wanted.SLIP, point.slips(), speedMps, forwardMps2, unknown, residual);
    }

    /**
     * Goes on along the branch on which the car is, by the direction of the last step. Near a neutral limit there are other branches
     * (drifts) close by; a state that is not where the direction points is taken again with a shorter step.
     */
    private Point next(Point before, Point here, double stride, double speedMps, double forwardMps2) {
        for (double step = stride; step > SHORTEST * peakSlips; step *= 0.5) {
            double slips = here.slips() + step;
            double over = here.slips() - before.slips();
            double ratio = over > 0.0 ? step / over : 0.0;
            for (int i = 0; i < COUNT; i++) {
                unknown[i] = here.unknowns()[i] + ratio * (here.unknowns()[i] - before.unknowns()[i]);
            }
            boolean found = solve(Wanted.SLIP, slips, speedMps, forwardMps2);
            double rearStep = rearSlip - here.rear();
            double expected = over > 0.0 ? ratio * (here.rear() - before.rear()) : 0.5 * step;
            if (found && (over == 0.0 || Math.abs(rearStep - expected) < 0.6 * step)) {
                return point();
            }
        }
        return new Point(here.slips() + SHORTEST * peakSlips, here.rear(), Double.NEGATIVE_INFINITY, here.unknowns());
    }

    private Point between(Point left, Point right, double slips, double speedMps, double forwardMps2) {
        double share = (slips - left.slips()) / (right.slips() - left.slips());
        for (int i = 0; i < COUNT; i++) {
            unknown[i] = left.unknowns()[i] + share * (right.unknowns()[i] - left.unknowns()[i]);
        }
        return solve(Wanted.SLIP, slips, speedMps, forwardMps2)
                ? point()
                : new Point(slips, right.rear(), Double.NEGATIVE_INFINITY, left.unknowns());
    }

    private Optional<SteadyState> beyondTheFirstGuess(double speedMps, double forwardMps2, double lateralMps2) {
        double wanted = Math.abs(lateralMps2);
        Optional<Limit> limit = greatestLateral(speedMps, forwardMps2);
        if (limit.isEmpty() || limit.get().lateralMps2() < wanted) {
            return Optional.empty();
        }
        Point high = point();
        if (!solveStraight(speedMps, forwardMps2)) {
            return Optional.empty();
        }
        Point here = point();
        Point before = here;
        while (here.lateral() < wanted && here.slips() < high.slips()) {
            Point further = next(before, here, STRIDE * peakSlips, speedMps, forwardMps2);
            before = here;
            here = further;
        }
        high = here.lateral() < wanted ? high : here;
        Point low = before;
        for (int i = 0; i < REFINEMENTS; i++) {
            Point middle = between(low, high, 0.5 * (low.slips() + high.slips()), speedMps, forwardMps2);
            low = middle.lateral() < wanted ? middle : low;
            high = middle.lateral() < wanted ? high : middle;
        }
        goTo(high, speedMps, forwardMps2);
        SteadyState state = result(speedMps);
        return Optional.of(lateralMps2 < 0.0 ? mirrored(state) : state);
    }

    private static SteadyState mirrored(SteadyState s) {
        return new SteadyState(
                s.speedMps(),
                s.forwardMps2(),
                -s.lateralMps2(),
                -s.yawRate(),
                -s.sideslipRad(),
                -s.steerRad(),
                -s.frontSlipRad(),
                -s.rearSlipRad(),
                List.of(
                        s.loadsN().get(1),
                        s.loadsN().get(0),
                        s.loadsN().get(3),
                        s.loadsN().get(2)),
                s.frontUse(),
                s.rearUse(),
                s.engineN(),
                s.brakeN(),
                s.heaveM(),
                s.pitchRad(),
                -s.rollRad());
    }

    /** Starts from linear tyres. */
    private void guess(double speedMps, double forwardMps2, double lateralMps2) {
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

    private boolean solve(Wanted wanted, double value, double speedMps, double forwardMps2) {
        evaluate(wanted, value, speedMps, forwardMps2, unknown, residual);
        for (int step = 0; step < NEWTON_STEPS; step++) {
            double size = largest(residual);
            if (size < ACCURACY) {
                return true;
            }
            if (!Double.isFinite(size)) {
                return false;
            }
            for (int j = 0; j < COUNT; j++) {
                double kept = unknown[j];
                unknown[j] = kept + DIFFERENCE * scale[j];
                evaluate(wanted, value, speedMps, forwardMps2, unknown, moved);
                unknown[j] = kept;
                for (int i = 0; i < COUNT; i++) {
                    jacobian[i][j] = (moved[i] - residual[i]) / DIFFERENCE;
                }
            }
            double[] change;
            try {
                change = new LUDecomposition(new Array2DRowRealMatrix(jacobian, false))
                        .getSolver()
                        .solve(new ArrayRealVector(residual, false))
                        .toArray();
            } catch (MathRuntimeException singular) {
                return false;
            }
            double longest = Math.max(Math.abs(change[SIDESLIP]), Math.abs(change[STEER])) * scale[STEER];
            double share = Math.min(1.0, LONGEST / Math.max(longest, 1.0e-12));
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
        }
        return largest(residual) < 100.0 * ACCURACY;
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
        double weight = mass * Body.GRAVITY;
        out[0] = (wheels.forwardSum - mass * forwardInCar) / weight;
        out[1] = (wheels.lateralSum - mass * lateralInCar) / weight;
        out[2] = wheels.yawSum / (weight * body.wheelbaseM());
        out[3] = (wheels.frontLateral - at[FRONT]) / weight;
        out[4] = wheels.bodySum[0] / weight;
        out[5] = wheels.bodySum[1] / (weight * body.wheelbaseM());
        out[6] = wheels.bodySum[2] / (weight * body.front().trackM());
        out[7] = switch (wanted) {
            case LATERAL -> (at[LATERAL] - value) / Body.GRAVITY;
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
    private boolean risesStill() {
        double side = Math.signum(unknown[LATERAL]);
        return growth(End.FRONT, side) > 0.0 && growth(End.REAR, side) > 0.0;
    }

    private End nearerToItsPeak() {
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

    private SteadyState result(double speedMps) {
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
