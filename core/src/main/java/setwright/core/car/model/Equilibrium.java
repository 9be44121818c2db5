package setwright.core.car.model;

import java.util.List;
import java.util.Optional;
import setwright.core.car.body.Body;
import setwright.core.car.model.SteadySolver.Wanted;
import setwright.core.car.tyre.Tyre;

/*
 * Design note. The limit is a fold: seen over lateral acceleration the equations become singular there. Seen over the sum of both slip
 * angles they do not, whichever axle gives out, so the limit is the greatest lateral acceleration over that sum.
 */

/** Steady states of the car of {@link VehicleEquations}; workspace, for one thread. */
public final class Equilibrium {
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

    private final SteadySolver solver;
    private final double peakSlips;

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
        this.solver = new SteadySolver(car, axes, new FourWheels(car, frontTyre, rearTyre));
        Body body = car.body();
        this.peakSlips = frontTyre.peakSlipAngle(
                        body.staticFrontN(),
                        car.front().inclination(),
                        car.front().pressure())
                + rearTyre.peakSlipAngle(
                        body.staticRearN(), car.rear().inclination(), car.rear().pressure());
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
        solver.guess(speedMps, forwardMps2, lateralMps2);
        if (solver.solve(Wanted.LATERAL, lateralMps2, speedMps, forwardMps2) && solver.risesStill()) {
            return Optional.of(solver.result(speedMps));
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
        double start = solver.unknown[SteadySolver.STEER];
        int pieces = 1 + (int) (Math.abs(steerRad - start) / (0.25 * SteadySolver.LONGEST));
        for (int i = 1; i <= pieces; i++) {
            if (!solver.solve(Wanted.STEER, start + (steerRad - start) * i / pieces, speedMps, forwardMps2)) {
                return Optional.empty();
            }
        }
        return Optional.of(solver.result(speedMps));
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
        return Optional.of(new Limit(best.lateral(), solver.nearerToItsPeak(), solver.result(speedMps)));
    }

    /** A state on the way to the limit; its lateral acceleration is minus infinity once an axle is past its own peak. */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made
    private record Point(double slips, double rear, double lateral, double[] unknowns) {}

    private Point point() {
        double lateral = solver.risesStill() ? solver.unknown[SteadySolver.LATERAL] : Double.NEGATIVE_INFINITY;
        return new Point(solver.frontSlip + solver.rearSlip, solver.rearSlip, lateral, solver.unknown.clone());
    }

    private boolean solveStraight(double speedMps, double forwardMps2) {
        solver.guess(speedMps, forwardMps2, 0.0);
        return solver.solve(Wanted.LATERAL, 0.0, speedMps, forwardMps2);
    }

    private void goTo(Point point, double speedMps, double forwardMps2) {
        solver.put(point.unknowns(), Wanted.SLIP, point.slips(), speedMps, forwardMps2);
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
            for (int i = 0; i < SteadySolver.COUNT; i++) {
                solver.unknown[i] = here.unknowns()[i] + ratio * (here.unknowns()[i] - before.unknowns()[i]);
            }
            boolean found = solver.solve(Wanted.SLIP, slips, speedMps, forwardMps2);
            double rearStep = solver.rearSlip - here.rear();
            double expected = over > 0.0 ? ratio * (here.rear() - before.rear()) : 0.5 * step;
            if (found && (over == 0.0 || Math.abs(rearStep - expected) < 0.6 * step)) {
                return point();
            }
        }
        return new Point(here.slips() + SHORTEST * peakSlips, here.rear(), Double.NEGATIVE_INFINITY, here.unknowns());
    }

    private Point between(Point left, Point right, double slips, double speedMps, double forwardMps2) {
        double share = (slips - left.slips()) / (right.slips() - left.slips());
        for (int i = 0; i < SteadySolver.COUNT; i++) {
            solver.unknown[i] = left.unknowns()[i] + share * (right.unknowns()[i] - left.unknowns()[i]);
        }
        return solver.solve(Wanted.SLIP, slips, speedMps, forwardMps2)
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
            if (Double.isInfinite(middle.lateral())) {
                break;
            }
            low = middle.lateral() < wanted ? middle : low;
            high = middle.lateral() < wanted ? high : middle;
        }
        goTo(high, speedMps, forwardMps2);
        SteadyState state = solver.result(speedMps);
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
}
