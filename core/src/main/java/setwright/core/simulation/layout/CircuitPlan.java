package setwright.core.simulation.layout;

import java.util.ArrayList;
import java.util.List;
import setwright.core.circuit.ReferenceLine;

/**
 * An invented circuit: its racing line in driving order from the start line on, closed exactly, and its bumps. Immutable.
 */
public final class CircuitPlan {
    private final String name;
    private final List<CircuitElement> elements;
    private final List<Bump> bumps;
    private final double lengthM;
    private final int turns;

    private CircuitPlan(String name, List<CircuitElement> elements, List<Bump> bumps) {
        this.name = name;
        this.elements = elements;
        this.bumps = List.copyOf(bumps);
        this.lengthM = elements.stream().mapToDouble(CircuitElement::lengthM).sum();
        this.turns = (int) Math.rint(finish().heading() / (2.0 * Math.PI));
    }

    /**
     * Makes a plan; straights and angles are changed a little so that the line ends where and in the direction in which it begins.
     *
     * @param name   what people call it
     * @param drawn  first element after the start line first; three or more
     * @param bumps  may be empty
     * @throws IllegalArgumentException when small changes do not close it, it winds more than once, or a bump lies beyond its end
     */
    public static CircuitPlan of(String name, List<CircuitElement> drawn, List<Bump> bumps) {
        if (drawn.size() < 3) {
            throw new IllegalArgumentException(
                    "circuit " + name + " needs three elements or more, got " + drawn.size());
        }
        CircuitPlan plan = new CircuitPlan(name, List.copyOf(LoopFitter.close(name, drawn)), bumps);
        if (Math.abs(plan.turns) > 1) {
            throw new IllegalArgumentException("circuit " + name + " winds " + Math.abs(plan.turns)
                    + " times round: a circuit turns by 360 degrees in all, a figure eight by 0");
        }
        for (Bump bump : bumps) {
            if (bump.stationM() >= plan.lengthM) {
                throw new IllegalArgumentException("circuit " + name + " is " + Math.round(plan.lengthM)
                        + " m long; a bump at " + bump.stationM() + " m lies beyond its end");
            }
        }
        return plan;
    }

    /** Returns a plausible circuit of 2.5 to 6 km with 8 to 16 bends and some bumps; the same seed gives the same one. */
    public static CircuitPlan random(long seed) {
        return RandomPlan.draw(seed);
    }

    /**
     * Returns a plausible circuit.
     *
     * @param seed     the same gives the same circuit
     * @param lengthM  about, m; 1500 to 8000
     * @param bends    how many; 6 to 20
     */
    public static CircuitPlan random(long seed, double lengthM, int bends) {
        return RandomPlan.draw(seed, lengthM, bends);
    }

    /** Returns what people call it. */
    public String name() {
        return name;
    }

    /** Returns the elements, closed. */
    public List<CircuitElement> elements() {
        return elements;
    }

    /** Returns the bumps. */
    public List<Bump> bumps() {
        return bumps;
    }

    /** Returns the length of the line, m. */
    public double lengthM() {
        return lengthM;
    }

    /** Returns how often the line turns to the left in a lap: 1 anticlockwise, -1 clockwise, 0 for a figure eight. */
    public int turns() {
        return turns;
    }

    /** Returns the distance between the end of the line and its beginning, m. */
    public double gapM() {
        Pen finish = finish();
        return Math.hypot(finish.x(), finish.y());
    }

    /** Returns the height of the road under the wheels of one side at a station, m. */
    public double roadHeight(double stationM, boolean left) {
        double height = 0.0;
        for (Bump bump : bumps) {
            height += bump.isUnder(left) ? bump.heightAt(stationM, lengthM) : 0.0;
        }
        return height;
    }

    /** Returns the mean height of the road under the two wheels of an axle, m: a kerb under one counts half. */
    public double axleHeight(double stationM) {
        return 0.5 * (roadHeight(stationM, true) + roadHeight(stationM, false));
    }

    /**
     * Returns the line, which begins at the origin along x.
     *
     * @param stepM  wanted distance between nodes, m; made a little smaller or larger so that a whole number of them fits
     */
    public ReferenceLine line(double stepM) {
        if (!(stepM > 0.0 && stepM <= 0.1 * lengthM)) {
            throw new IllegalArgumentException(
                    "a step must lie above 0 m and be at most a tenth of the " + lengthM + " m, got " + stepM + " m");
        }
        int count = (int) Math.max(8, Math.rint(lengthM / stepM));
        double step = lengthM / count;
        double[] x = new double[count];
        double[] y = new double[count];
        double[] heading = new double[count];
        double[] curvature = new double[count];
        Pen pen = new Pen();
        double begin = 0.0;
        int node = 0;
        for (CurvaturePiece piece : pieces()) {
            double drawn = 0.0;
            while (node < count && node * step < begin + piece.lengthM()) {
                double along = node * step - begin;
                pen.draw(piece, drawn, along);
                drawn = along;
                x[node] = pen.x();
                y[node] = pen.y();
                heading[node] = pen.heading();
                curvature[node] = piece.curvature(along);
                node++;
            }
            pen.draw(piece, drawn, piece.lengthM());
            begin += piece.lengthM();
        }
        return new ReferenceLine(step, x, y, heading, curvature);
    }

    private List<CurvaturePiece> pieces() {
        List<CurvaturePiece> pieces = new ArrayList<>();
        elements.forEach(element -> pieces.addAll(element.pieces()));
        return pieces;
    }

    private Pen finish() {
        Pen pen = new Pen();
        pen.draw(pieces());
        return pen;
    }
}
