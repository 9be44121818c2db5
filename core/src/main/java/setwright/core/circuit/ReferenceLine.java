package setwright.core.circuit;

/**
 * The line that stations are measured along: a closed curve sampled at equal steps. Immutable.
 *
 * <p>Station 0 is the start line and grows in driving direction; node {@code i} lies at {@code i * stepM()}.
 */
public final class ReferenceLine {
    private final double stepM;
    private final double[] x;
    private final double[] y;
    private final double[] heading;
    private final double[] curvature;

    /**
     * Makes a line from nodes at equal steps; the first node is not repeated at the end.
     *
     * @param stepM      distance between nodes along the line, m, &gt; 0
     * @param x          first coordinate of each node, m
     * @param y          second coordinate of each node, m
     * @param heading    direction of travel at each node, rad, unwrapped
     * @param curvature  of each node, 1/m, left positive
     */
    public ReferenceLine(double stepM, double[] x, double[] y, double[] heading, double[] curvature) {
        if (!(stepM > 0.0) || x.length < 8) {
            throw new IllegalArgumentException(
                    "a reference line needs a positive step and 8 nodes, got " + stepM + " m and " + x.length);
        }
        if (y.length != x.length || heading.length != x.length || curvature.length != x.length) {
            throw new IllegalArgumentException("a reference line's arrays must have equal lengths");
        }
        this.stepM = stepM;
        this.x = x.clone();
        this.y = y.clone();
        this.heading = heading.clone();
        this.curvature = curvature.clone();
    }

    /** Returns the distance between nodes, m. */
    public double stepM() {
        return stepM;
    }

    /** Returns the number of nodes. */
    public int nodeCount() {
        return x.length;
    }

    /** Returns the length of the closed line, m. */
    public double lengthM() {
        return stepM * x.length;
    }

    /** Returns the first coordinate of a node, m. */
    public double x(int node) {
        return x[node];
    }

    /** Returns the second coordinate of a node, m. */
    public double y(int node) {
        return y[node];
    }

    /** Returns the direction of travel at a node, rad, unwrapped along the lap. */
    public double heading(int node) {
        return heading[node];
    }

    /** Returns the curvature at a node, 1/m, left positive. */
    public double curvature(int node) {
        return curvature[node];
    }

    /** Returns the curvature at a station, 1/m, linearly between nodes; any station is taken round the lap. */
    public double curvatureAt(double stationM) {
        double position = wrap(stationM) / stepM;
        int node = (int) Math.floor(position);
        double share = position - node;
        return curvature[node % x.length] * (1.0 - share) + curvature[(node + 1) % x.length] * share;
    }

    /** Returns the station brought into [0, length). */
    public double wrap(double stationM) {
        double length = lengthM();
        double wrapped = stationM - length * Math.floor(stationM / length);
        return wrapped >= length ? 0.0 : wrapped;
    }
}
