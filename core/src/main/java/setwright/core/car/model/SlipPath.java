package setwright.core.car.model;

import setwright.core.car.model.SteadySolver.Wanted;

/** Steady states at one speed and one acceleration along, walked over the sum of both axles' slip angles. */
final class SlipPath {
    private static final double SHORTEST = 0.002;
    private static final int MOST_STEPS = 8;

    final SteadySolver solver;
    /** Sum of both axles' slip angles at their peaks, rad. */
    final double peakSlips;

    private double speedMps;
    private double forwardMps2;

    SlipPath(SteadySolver solver, double peakSlips) {
        this.solver = solver;
        this.peakSlips = peakSlips;
    }

    /** A state on the way to the limit; its lateral acceleration is minus infinity once an axle is past its own peak. */
    @SuppressWarnings("ArrayRecordComponent") // never changed once made
    record Point(double slips, double rear, double lateral, double[] unknowns) {
        boolean lost() {
            return Double.isInfinite(lateral);
        }
    }

    /** Goes to another speed, m/s, and acceleration along, m/s². */
    void to(double speed, double forward) {
        this.speedMps = speed;
        this.forwardMps2 = forward;
    }

    /** Goes straight ahead; tells whether the tyres can give the acceleration. */
    boolean straight() {
        solver.guess(speedMps, forwardMps2, 0.0);
        return solver.solve(Wanted.LATERAL, 0.0, speedMps, forwardMps2);
    }

    /** Solves from the unknowns as they are. */
    boolean solve(double slips) {
        return solver.solve(Wanted.SLIP, slips, speedMps, forwardMps2);
    }

    /** Returns where the car is. */
    Point point() {
        double lateral = solver.risesStill() ? solver.unknown[SteadySolver.LATERAL] : Double.NEGATIVE_INFINITY;
        return new Point(solver.frontSlip + solver.rearSlip, solver.rearSlip, lateral, solver.unknown.clone());
    }

    void goTo(Point point) {
        solver.put(point.unknowns(), Wanted.SLIP, point.slips(), speedMps, forwardMps2);
    }

    /**
     * Goes on along the branch on which the car is, by the direction of the last step. Near a neutral limit there are other branches
     * (drifts) close by; a state that is not where the direction points is taken again with a shorter step.
     */
    Point next(Point before, Point here, double stride) {
        for (double step = stride; step > SHORTEST * peakSlips; step *= 0.5) {
            double slips = here.slips() + step;
            double over = here.slips() - before.slips();
            double ratio = over > 0.0 ? step / over : 0.0;
            for (int i = 0; i < SteadySolver.COUNT; i++) {
                solver.unknown[i] = here.unknowns()[i] + ratio * (here.unknowns()[i] - before.unknowns()[i]);
            }
            boolean found = solve(slips);
            double rearStep = solver.rearSlip - here.rear();
            double expected = over > 0.0 ? ratio * (here.rear() - before.rear()) : 0.5 * step;
            if (found && (over == 0.0 || Math.abs(rearStep - expected) < 0.6 * step)) {
                return point();
            }
        }
        return new Point(here.slips() + SHORTEST * peakSlips, here.rear(), Double.NEGATIVE_INFINITY, here.unknowns());
    }

    /** Solves for a lateral acceleration, m/s², from the unknowns as they are; tells whether it found it short of the limit. */
    boolean turning(double lateral) {
        return solver.solve(Wanted.LATERAL, lateral, speedMps, forwardMps2) && solver.risesStill();
    }

    /** Goes from a state to more lateral acceleration, m/s², in as few steps as will do; tells whether it came there. */
    boolean turnIn(Point from, double lateral) {
        for (int steps = 1; steps <= MOST_STEPS; steps *= 2) {
            System.arraycopy(from.unknowns(), 0, solver.unknown, 0, SteadySolver.COUNT);
            double before = solver.unknown[SteadySolver.LATERAL];
            boolean found = true;
            for (int i = 1; i <= steps && found; i++) {
                found = turning(before + (lateral - before) * i / steps);
            }
            if (found) {
                return true;
            }
        }
        return false;
    }

    Point between(Point left, Point right, double slips) {
        double share = (slips - left.slips()) / (right.slips() - left.slips());
        for (int i = 0; i < SteadySolver.COUNT; i++) {
            solver.unknown[i] = left.unknowns()[i] + share * (right.unknowns()[i] - left.unknowns()[i]);
        }
        return solve(slips) ? point() : new Point(slips, right.rear(), Double.NEGATIVE_INFINITY, left.unknowns());
    }
}
