package setwright.core.car.model;

import java.util.Optional;
import java.util.function.Supplier;
import setwright.core.car.model.SlipPath.Point;

/*
 * Design note. The limit is a fold: seen over lateral acceleration the equations become singular there. Seen over the sum of both slip
 * angles they do not, whichever axle gives out, so the limit is the greatest lateral acceleration over that sum.
 */

/** Looks for the greatest lateral acceleration on a {@link SlipPath}, from straight ahead or from a limit close by. */
final class LimitSearch {
    /** The way to the limit goes in steps of this share of the sum of both peak slip angles, up to a sum far beyond them. */
    static final double STRIDE = 0.1;

    private static final double FARTHEST = 2.5;
    private static final int REFINEMENTS = 40;
    private static final double GOLDEN = 0.5 * (3.0 - Math.sqrt(5.0));
    private static final double SAME_SLIPS = 5.0e-4;
    /** Twice as far as a limit is told: either end of a search may be off by that. */
    private static final double SAME_STATE = 2.0 * SAME_SLIPS;

    /** From a limit close by, steps are shorter, and few of them must do. */
    private static final double NEAR_STRIDE = 0.03;

    private static final int NEAR_STEPS = 8;
    /** A limit that differs by more is none close by, but perhaps on another branch. */
    private static final double NEAR_CHANGE = 0.2;

    private final SlipPath path;
    private final SteadySolver solver;
    private final CarModel car;

    LimitSearch(SlipPath path, CarModel car) {
        this.path = path;
        this.solver = path.solver;
        this.car = car;
    }

    /** Returns the limit, seen from straight ahead; empty when the tyres cannot give the acceleration along. */
    Optional<Point> fromStraight() {
        if (!path.straight()) {
            return Optional.empty();
        }
        Point left = path.point();
        Point best = left;
        Point right = path.next(left, left, STRIDE * path.peakSlips);
        while (right.lateral() > best.lateral() && right.slips() < FARTHEST * path.peakSlips) {
            left = best;
            best = right;
            right = path.next(left, best, STRIDE * path.peakSlips);
        }
        return Optional.of(refined(left, best, right, false));
    }

    /** Returns the limit, sought about a limit of another speed, acceleration or car; empty when it is not close. */
    Optional<Point> near(SteadyState other, double speedMps, double forwardMps2) {
        return onAWalk(() -> about(other, speedMps, forwardMps2));
    }

    /** Lets derivatives of what was solved before serve; about a third quicker. */
    private <T> T onAWalk(Supplier<T> search) {
        solver.walk(true);
        try {
            return search.get();
        } finally {
            solver.walk(false);
        }
    }

    private Optional<Point> about(SteadyState other, double speedMps, double forwardMps2) {
        put(other, speedMps, forwardMps2);
        double slips = other.frontSlipRad() + other.rearSlipRad();
        double stride = NEAR_STRIDE * path.peakSlips;
        double start = slips - stride;
        if (!path.solve(start)) {
            return Optional.empty();
        }
        Point left = path.point();
        for (int i = 0; left.lost() && i < NEAR_STEPS; i++) {
            if (!path.solve(solver.frontSlip + solver.rearSlip - 2.0 * stride)) {
                return Optional.empty();
            }
            left = path.point();
        }
        if (left.lost() || left.slips() <= 0.0) {
            return Optional.empty();
        }
        Point best = path.next(left, left, stride);
        for (int i = 0; best.lateral() < left.lateral(); i++) {
            // the limit is before: turn round and see where it rises no more
            path.goTo(left);
            if (i == NEAR_STEPS || !path.solve(left.slips() - 2.0 * stride)) {
                return Optional.empty();
            }
            Point before = path.point();
            if (before.lateral() < left.lateral()) {
                return close(refined(before, left, best, true), other);
            }
            best = left;
            left = before;
        }
        Point right = path.next(left, best, stride);
        for (int i = 0; right.lateral() > best.lateral(); i++) {
            if (i == NEAR_STEPS) {
                return Optional.empty();
            }
            left = best;
            best = right;
            right = path.next(left, best, stride);
        }
        return close(refined(left, best, right, true), other);
    }

    /** Tells whether a guess leads to the branch of a limit already known: at the sum of its slip angles, to the same share of either axle. */
    boolean sameBranch(SteadyState guess, SteadyState known, double speedMps, double forwardMps2) {
        put(guess, speedMps, forwardMps2);
        return onAWalk(() -> path.solve(known.frontSlipRad() + known.rearSlipRad())
                && Math.abs(solver.rearSlip - known.rearSlipRad()) < SAME_STATE * path.peakSlips);
    }

    private static Optional<Point> close(Point limit, SteadyState other) {
        double before = other.yawRate() * other.speedMps();
        return Math.abs(limit.lateral() - before) < NEAR_CHANGE * before ? Optional.of(limit) : Optional.empty();
    }

    /** Takes another state's unknowns as a guess. */
    void put(SteadyState other, double speedMps, double forwardMps2) {
        double mass = car.body().massKg();
        double lateral = other.yawRate() * other.speedMps();
        double before = other.forwardMps2() * Math.cos(other.sideslipRad())
                + other.lateralMps2() * Math.sin(other.sideslipRad());
        solver.guess(speedMps, forwardMps2, lateral);
        double turning = lateral / speedMps - other.yawRate();
        solver.unknown[SteadySolver.SIDESLIP] = other.sideslipRad() + car.body().toRearM() * turning / speedMps;
        solver.unknown[SteadySolver.STEER] = other.steerRad() + car.body().wheelbaseM() * turning / speedMps;
        solver.unknown[SteadySolver.ALONG] = other.engineN() - other.brakeN() + mass * (forwardMps2 - before);
        solver.unknown[SteadySolver.BODY] = other.heaveM();
        solver.unknown[SteadySolver.BODY + 1] = other.pitchRad();
        solver.unknown[SteadySolver.BODY + 2] = other.rollRad();
    }

    private Point refined(Point from, Point middle, Point to, boolean parabola) {
        Point left = from;
        Point best = middle;
        Point right = to;
        double same = SAME_SLIPS * path.peakSlips;
        boolean curved = parabola;
        for (int i = 0; i < REFINEMENTS && right.slips() - left.slips() > same; i++) {
            boolean above = right.slips() - best.slips() > best.slips() - left.slips();
            double size = above ? right.slips() - best.slips() : best.slips() - left.slips();
            double slips = best.slips() + (above ? GOLDEN : -GOLDEN) * size;
            curved = parabola && !curved;
            if (parabola && !curved && !left.lost() && !right.lost()) {
                double top = vertex(left, best, right);
                if (Math.abs(top - best.slips()) < 0.5 * same) {
                    // close both ends up to what is as good as the top: the parabola is flat there
                    break;
                }
                slips = top;
                above = top > best.slips();
            }
            Point next = path.between(above ? best : left, above ? right : best, slips);
            if (next.lateral() > best.lateral()) {
                left = above ? best : left;
                right = above ? right : best;
                best = next;
            } else {
                left = above ? left : next;
                right = above ? next : right;
            }
        }
        path.goTo(best);
        return best;
    }

    /** Returns the sum of slip angles at the top of the parabola through three points, the middle one highest. */
    private static double vertex(Point left, Point best, Point right) {
        double a = best.slips() - left.slips();
        double b = best.slips() - right.slips();
        double fa = best.lateral() - left.lateral();
        double fb = best.lateral() - right.lateral();
        double bottom = a * fb - b * fa;
        double top = best.slips() - 0.5 * (a * a * fb - b * b * fa) / (bottom == 0.0 ? Double.MIN_NORMAL : bottom);
        return Math.max(left.slips() + 0.02 * a, Math.min(top, right.slips() + 0.02 * b));
    }
}
