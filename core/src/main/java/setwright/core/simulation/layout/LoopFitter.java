package setwright.core.simulation.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import setwright.core.simulation.layout.CircuitElement.Bend;
import setwright.core.simulation.layout.CircuitElement.Straight;

/*
 * Design note. A drawing in round figures misses its own beginning by metres. Three conditions (two coordinates and the direction) are
 * to be met by many lengths and angles; of all ways to meet them the one with the least weighted sum of squared changes is
 * taken (Newton steps on the conditions, each from the drawing as given). Radii and clothoids stay as drawn.
 */

/** Makes a drawn loop meet its own beginning by small changes of straights and angles. */
final class LoopFitter {
    /** A change of an angle that weighs as much as a straight's by {@link #STRAIGHT_SHARE}. */
    private static final double ANGLE_RAD = Math.toRadians(1.5);

    private static final double STRAIGHT_SHARE = 0.15;
    private static final double STRAIGHT_LEAST_M = 5.0;
    /** Beyond these changes it is another circuit than the one drawn. */
    private static final double MOST_SHARE = 0.4;

    private static final double MOST_LEAST_M = 15.0;
    private static final double MOST_ANGLE_RAD = Math.toRadians(6.0);
    private static final int STEPS = 30;
    private static final double CLOSED = 1.0e-9;
    private static final double NUDGE = 1.0e-6;

    private final String name;
    private final List<CircuitElement> drawn;

    private LoopFitter(String name, List<CircuitElement> drawn) {
        this.name = name;
        this.drawn = drawn;
    }

    /**
     * Returns the elements, changed a little so that they close.
     *
     * @throws IllegalArgumentException when small changes do not suffice
     */
    static List<CircuitElement> close(String name, List<CircuitElement> drawn) {
        return new LoopFitter(name, drawn).closed();
    }

    private List<CircuitElement> closed() {
        double[] start = drawn.stream().mapToDouble(LoopFitter::free).toArray();
        double[] values = start.clone();
        double[] first = miss(values);
        for (int step = 0; step < STEPS; step++) {
            double[] miss = miss(values);
            if (Math.hypot(miss[0], miss[1]) < CLOSED && Math.abs(miss[2]) < CLOSED) {
                return with(values);
            }
            values = stepped(start, values, miss);
            refuseLarge(start, values, first);
        }
        throw refused(first, "no change of its straights and angles was found that closes it");
    }

    private double[] stepped(double[] start, double[] values, double[] miss) {
        int count = values.length;
        double[][] slopes = new double[3][count];
        for (int i = 0; i < count; i++) {
            double nudge = NUDGE * (drawn.get(i) instanceof Straight ? 1.0e2 : 1.0);
            double[] moved = values.clone();
            moved[i] += nudge;
            double[] there = miss(moved);
            for (int row = 0; row < 3; row++) {
                slopes[row][i] = (there[row] - miss[row]) / nudge;
            }
        }
        double[] wanted = new double[3];
        double[][] square = new double[3][3];
        for (int row = 0; row < 3; row++) {
            wanted[row] = -miss[row];
            for (int i = 0; i < count; i++) {
                wanted[row] += slopes[row][i] * (values[i] - start[i]);
                for (int column = 0; column < 3; column++) {
                    square[row][column] += slopes[row][i] * slopes[column][i] * variance(i);
                }
            }
        }
        double[] pull = new LUDecomposition(new Array2DRowRealMatrix(square))
                .getSolver()
                .solve(new org.hipparchus.linear.ArrayRealVector(wanted))
                .toArray();
        double[] next = start.clone();
        for (int i = 0; i < count; i++) {
            for (int row = 0; row < 3; row++) {
                next[i] += variance(i) * slopes[row][i] * pull[row];
            }
        }
        return next;
    }

    private double variance(int i) {
        double deviation = drawn.get(i) instanceof Straight straight
                ? Math.max(STRAIGHT_SHARE * straight.lengthM(), STRAIGHT_LEAST_M)
                : ANGLE_RAD;
        return deviation * deviation;
    }

    private void refuseLarge(double[] start, double[] values, double[] first) {
        for (int i = 0; i < values.length; i++) {
            double change = values[i] - start[i];
            if (drawn.get(i) instanceof Straight straight) {
                double most = Math.max(MOST_SHARE * straight.lengthM(), MOST_LEAST_M);
                if (!(Math.abs(change) <= most) || values[i] <= 0.0) {
                    throw refused(
                            first,
                            String.format(
                                    Locale.ROOT,
                                    "straight %d would have to be %.0f m instead of %.0f m",
                                    i + 1,
                                    values[i],
                                    start[i]));
                }
            } else if (!(Math.abs(change) <= MOST_ANGLE_RAD) || !(values[i] * start[i] > 0.0)) {
                throw refused(
                        first,
                        String.format(
                                Locale.ROOT,
                                "bend %d would have to turn %.1f degrees instead of %.1f",
                                i + 1,
                                Math.toDegrees(values[i]),
                                Math.toDegrees(start[i])));
            }
        }
    }

    private IllegalArgumentException refused(double[] first, String why) {
        return new IllegalArgumentException(String.format(
                Locale.ROOT,
                "circuit %s does not close: it ends %.1f m beside its beginning and %.1f degrees from its direction, and %s"
                        + " (elements counted from 1). Change its straights or angles.",
                name,
                Math.hypot(first[0], first[1]),
                Math.toDegrees(first[2]),
                why));
    }

    private double[] miss(double[] values) {
        Pen pen = new Pen();
        with(values).forEach(element -> pen.draw(element.pieces()));
        double turns = Math.rint(pen.heading() / (2.0 * Math.PI));
        return new double[] {pen.x(), pen.y(), pen.heading() - 2.0 * Math.PI * turns};
    }

    private List<CircuitElement> with(double[] values) {
        List<CircuitElement> changed = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            changed.add(
                    drawn.get(i) instanceof Bend bend
                            ? new Bend(bend.radiusM(), values[i], bend.inM(), bend.outM())
                            : new Straight(values[i]));
        }
        return changed;
    }

    private static double free(CircuitElement element) {
        return element instanceof Bend bend ? bend.angleRad() : element.lengthM();
    }
}
