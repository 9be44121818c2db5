package setwright.core.simulation.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.layout.CircuitElement.Bend;
import setwright.core.simulation.layout.CircuitElement.Straight;

/*
 * Design note. Corners of a dented ring of points are rounded off: such a polygon closes by itself and does not cross itself, and
 * dents turn the other way. What is no plausible circuit (all corners alike, parts of the road on top of each other) is
 * drawn again.
 */

/** Draws circuits. */
final class RandomPlan {
    private static final int MOST_TRIES = 20_000;
    /** Line to line, so that two roads with their run-off fit, m. */
    private static final double CLOSEST_M = 35.0;

    private static final double LENGTH_TOLERANCE = 0.12;
    private static final double SLIGHTEST_RAD = Math.toRadians(9.0);
    private static final double SHARPEST_RAD = Math.toRadians(165.0);
    private static final double TIGHTEST_M = 15.0;
    private static final double SHORTEST_M = 8.0;
    /** Radius times angle that a racing line takes for a kink: half a second and more at the speeds of kinks. */
    private static final double GENTLE_M = 40.0;

    private static final double SUDDEN_M = 25.0;
    private static final double MAIN_STRAIGHT_M = 300.0;

    private static final List<Bump.Wheels> WHEELS = List.of(Bump.Wheels.LEFT, Bump.Wheels.RIGHT, Bump.Wheels.BOTH);

    private final RandomGenerator random;
    private final double lengthM;
    private final int bends;

    private RandomPlan(RandomGenerator random, double lengthM, int bends) {
        this.random = random;
        this.lengthM = lengthM;
        this.bends = bends;
    }

    static CircuitPlan draw(long seed) {
        Random random = new Random(seed);
        return draw(seed, random.nextDouble(2600.0, 5800.0), random.nextInt(8, 17));
    }

    static CircuitPlan draw(long seed, double lengthM, int bends) {
        if (!(lengthM >= 1500.0 && lengthM <= 8000.0 && bends >= 6 && bends <= 20)) {
            throw new IllegalArgumentException(
                    "a random circuit has 1500 to 8000 m and 6 to 20 bends, got " + lengthM + " m and " + bends);
        }
        // bends need room
        int most = (int) Math.min(bends, lengthM / 180.0);
        RandomPlan plan = new RandomPlan(new Random(seed), lengthM, most);
        for (int i = 0; i < MOST_TRIES; i++) {
            List<CircuitElement> elements = plan.elements();
            if (!elements.isEmpty()) {
                CircuitPlan closed = CircuitPlan.of("random " + seed, elements, List.of());
                if (plan.isPlausible(closed)) {
                    return CircuitPlan.of(closed.name(), closed.elements(), plan.bumps(closed.lengthM()));
                }
            }
        }
        throw new IllegalStateException("no plausible circuit found for seed " + seed + ", " + lengthM + " m, " + most
                + " bends in " + MOST_TRIES + " tries");
    }

    /** Empty when the points drawn leave no room for their corners. */
    private List<CircuitElement> elements() {
        double[][] points = points();
        double[] edge = new double[bends];
        double[] direction = new double[bends];
        for (int i = 0; i < bends; i++) {
            double[] next = points[(i + 1) % bends];
            edge[i] = Math.hypot(next[0] - points[i][0], next[1] - points[i][1]);
            direction[i] = Math.atan2(next[1] - points[i][1], next[0] - points[i][0]);
        }
        Bend[] corners = new Bend[bends];
        double[] left = edge.clone();
        for (int i = 0; i < bends; i++) {
            int before = (i + bends - 1) % bends;
            double angle = Math.IEEEremainder(direction[i] - direction[before], 2.0 * Math.PI);
            if (Math.abs(angle) < SLIGHTEST_RAD || Math.abs(angle) > SHARPEST_RAD) {
                return List.of();
            }
            corners[i] = bend(angle, 0.48 * edge[before], 0.48 * edge[i]);
            if (corners[i].radiusM() < TIGHTEST_M || corners[i].radiusM() * Math.abs(angle) < SUDDEN_M) {
                return List.of();
            }
            double[] tangents = tangents(corners[i]);
            left[before] -= tangents[0];
            left[i] -= tangents[1];
        }
        return inOrder(corners, left);
    }

    private List<CircuitElement> inOrder(Bend[] corners, double[] left) {
        int main = 0;
        for (int i = 0; i < bends; i++) {
            main = left[i] > left[main] ? i : main;
        }
        if (left[main] < MAIN_STRAIGHT_M) {
            return List.of();
        }
        double share = random.nextDouble(0.3, 0.6);
        List<CircuitElement> elements = new ArrayList<>();
        elements.add(new Straight((1.0 - share) * left[main]));
        for (int k = 1; k <= bends; k++) {
            int i = (main + k) % bends;
            elements.add(corners[i]);
            double straight = k == bends ? share * left[main] : left[i];
            if (straight < SHORTEST_M) {
                return List.of();
            }
            elements.add(new Straight(straight));
        }
        return elements;
    }

    private double[][] points() {
        double aspect = random.nextDouble(1.1, 1.9);
        double dent = random.nextDouble(0.25, 0.55);
        // a lap runs clockwise more often than not
        int way = random.nextDouble() < 0.65 ? -1 : 1;
        double[][] points = new double[bends][2];
        for (int i = 0; i < bends; i++) {
            double angle = way * 2.0 * Math.PI * (i + random.nextDouble(-0.35, 0.35)) / bends;
            double radius = 1.0 - dent + 2.0 * dent * random.nextDouble();
            points[i][0] = aspect * radius * Math.cos(angle);
            points[i][1] = radius * Math.sin(angle);
        }
        double around = 0.0;
        for (int i = 0; i < bends; i++) {
            double[] next = points[(i + 1) % bends];
            around += Math.hypot(next[0] - points[i][0], next[1] - points[i][1]);
        }
        // rounding off saves about a twelfth of the way
        double scale = 1.08 * lengthM / around;
        for (double[] point : points) {
            point[0] *= scale;
            point[1] *= scale;
        }
        return points;
    }

    /** A bend of a radius usual for its angle, or smaller where the edges are short. */
    private Bend bend(double angle, double roomIn, double roomOut) {
        double size = Math.abs(angle);
        double usual = size > 1.9
                ? between(17.0, 45.0)
                : size > 1.0 ? between(22.0, 110.0) : size > 0.5 ? between(50.0, 220.0) : between(120.0, 400.0);
        double radius = Math.max(usual, GENTLE_M / size);
        double in = random.nextDouble(0.3, 0.75);
        double out = random.nextDouble(0.4, 0.95);
        Bend bend = bend(radius, angle, in, out);
        double[] tangents = tangents(bend);
        double room = Math.min(roomIn / tangents[0], roomOut / tangents[1]);
        return room >= 1.0 ? bend : bend(room * radius, angle, in, out);
    }

    /** All lengths of a bend are in proportion to its radius. */
    private static Bend bend(double radius, double angle, double in, double out) {
        double whole = radius * Math.abs(angle);
        return new Bend(radius, angle, in * whole, out * whole);
    }

    /** Evenly in the logarithm: radii differ by factors. */
    private double between(double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }

    /** Distances from where the bend begins and ends to where the straights beside it would meet, m. */
    private static double[] tangents(Bend bend) {
        Pen pen = new Pen();
        pen.draw(bend.pieces());
        double out = pen.y() / Math.sin(bend.angleRad());
        return new double[] {pen.x() - out * Math.cos(bend.angleRad()), out};
    }

    private boolean isPlausible(CircuitPlan plan) {
        List<Bend> corners = plan.elements().stream()
                .filter(Bend.class::isInstance)
                .map(Bend.class::cast)
                .toList();
        long lefts = corners.stream().filter(bend -> bend.angleRad() > 0.0).count();
        boolean slow = corners.stream().anyMatch(bend -> bend.radiusM() < 35.0 && Math.abs(bend.angleRad()) > 1.0);
        boolean medium = corners.stream().anyMatch(bend -> bend.radiusM() >= 35.0 && bend.radiusM() < 100.0);
        boolean fast = corners.stream().anyMatch(bend -> bend.radiusM() > 110.0 && Math.abs(bend.angleRad()) > 0.35);
        return Math.abs(plan.lengthM() / lengthM - 1.0) < LENGTH_TOLERANCE
                && lefts >= 2
                && lefts <= bends - 2
                && slow
                && medium
                && fast
                && keepsApart(plan);
    }

    private static boolean keepsApart(CircuitPlan plan) {
        ReferenceLine line = plan.line(10.0);
        int count = line.nodeCount();
        // round a hairpin the road may come this close to itself and is the same road
        int near = (int) (160.0 / line.stepM());
        for (int i = 0; i < count; i++) {
            for (int j = i + near; j < Math.min(count, i + count - near); j++) {
                if (Math.hypot(line.x(i) - line.x(j), line.y(i) - line.y(j)) < CLOSEST_M) {
                    return false;
                }
            }
        }
        return true;
    }

    private List<Bump> bumps(double length) {
        List<Bump> bumps = new ArrayList<>();
        int count = random.nextInt(0, 4);
        for (int i = 0; i < count; i++) {
            Bump.Wheels wheels = WHEELS.get(random.nextInt(WHEELS.size()));
            bumps.add(new Bump(
                    random.nextDouble() * length,
                    random.nextDouble(3.0, 10.0),
                    random.nextDouble(0.006, 0.018),
                    wheels));
        }
        return bumps;
    }
}
