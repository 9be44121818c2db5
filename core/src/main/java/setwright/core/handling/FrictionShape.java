package setwright.core.handling;

import java.util.Arrays;
import org.hipparchus.analysis.solvers.BrentSolver;
import setwright.core.numerics.Robust;

/*
 * Design note. How much somebody asks of the tyres lengthwise beside what they give sideways is read as the exponent p of
 * x^p + y^p = 1, with x and y the shares of the most along and across: 1 brakes before the bend, 2 follows a round friction circle,
 * beyond it more is asked than tyres have. Each share is of what this grip limit gives at that speed, so that downforce is no skill.
 * A whole car leaves less than a round circle, as load leaves the rear axle while it brakes: the steady state of the four invented
 * cars lies at 1.3 to 1.9, 1.65 in the mean.
 */

/** How much a driver asks along the car beside the cornering, as the exponent of an ellipse of friction. */
final class FrictionShape {
    /** Below it hardly any grip is used sideways, above it hardly any is left: both say nothing of the exponent. */
    private static final double LEAST_ACROSS = 0.5;

    private static final double MOST_ACROSS = 0.9;

    /** The engine drives from where the car has hardly begun to leave the bend. */
    private static final double LEAST_DRIVEN = 0.4;

    private static final double MOST_DRIVEN = 0.95;
    /** Fully open, the engine sets the acceleration and not the foot. */
    private static final double FULL = 0.97;

    /** Who brakes with less than two thirds of what the tyres give sideways has some left for whatever he does. */
    private static final double HARD_BRAKING = 0.65;

    /** Range of exponents that are told apart. */
    private static final double LEAST = 0.3;

    private static final double MOST = 6.0;
    private static final double NOTHING = 0.02;
    private static final double ACCURACY = 1.0e-4;

    private FrictionShape() {}

    /** Returns the median exponent from turn-in to the most lateral acceleration, with the hardest braking of the pass as the whole; NaN without. */
    static double braking(PassWindow pass, PassMarks marks, int top) {
        double hardest = 0.0;
        for (int k = 0; k <= top; k++) {
            hardest = Math.max(hardest, -pass.tyre(k) / pass.limit()[k]);
        }
        double most = pass.inward()[top] / pass.limit()[top];
        double[] found = new double[pass.size()];
        int count = 0;
        for (int k = marks.turnIn(); k <= top; k++) {
            double across = pass.inward()[k] / pass.limit()[k] / most;
            if (pass.brake()[k] > Pedals.PRESSED && across > LEAST_ACROSS && across < MOST_ACROSS) {
                found[count++] = exponent(Math.max(0.0, -pass.tyre(k)) / pass.limit()[k] / hardest, across);
            }
        }
        return count == 0 || hardest < HARD_BRAKING ? Double.NaN : Robust.median(Arrays.copyOf(found, count));
    }

    /** Returns the median exponent from the pick-up to the exit while the foot decides, with what the driven tyres can give as the whole; NaN without. */
    static double driving(PassWindow pass, PassMarks marks, int top, int straight, Traction traction) {
        if (marks.throttlePickUp() < 0) {
            return Double.NaN;
        }
        double most = pass.inward()[top] / pass.limit()[top];
        double[] found = new double[pass.size()];
        int count = 0;
        for (int k = Math.max(marks.turnIn(), marks.throttlePickUp()); k <= straight; k++) {
            double across = pass.inward()[k] / pass.limit()[k] / most;
            boolean foot = pass.throttle()[k] > Pedals.PRESSED && pass.throttle()[k] < FULL;
            if (foot && across > LEAST_DRIVEN && across < MOST_DRIVEN) {
                found[count++] = exponent(pass.tyre(k) / traction.mps2(pass.limit()[k]), across);
            }
        }
        return count == 0 ? Double.NaN : Robust.median(Arrays.copyOf(found, count));
    }

    /** Returns the exponent of the ellipse through a point; the ends of the range where it lies at either side of all. */
    static double exponent(double along, double across) {
        if (!(along > NOTHING) || excess(along, across, LEAST) <= 0.0) {
            return LEAST;
        }
        if (excess(along, across, MOST) >= 0.0) {
            return MOST;
        }
        return new BrentSolver(ACCURACY).solve(100, p -> excess(along, across, p), LEAST, MOST);
    }

    private static double excess(double along, double across, double exponent) {
        return Math.pow(Math.min(along, 1.0), exponent) + Math.pow(across, exponent) - 1.0;
    }
}
