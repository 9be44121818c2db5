package setwright.core.simulation.driver;

import setwright.core.circuit.ReferenceLine;

/** Where a point is on a closed line, and where the line goes from there. Follows one car; mutable. */
final class LinePath {
    private final ReferenceLine line;
    private final double[] target;
    /** Places of the driven line at each node, m: worked out once a lap, asked for in every step. */
    private final double[] targetX;

    private final double[] targetY;
    private int node;
    private double station;
    private double offset;

    /**
     * Starts at the start line.
     *
     * @param targetM  offset of the driven line at each node, m, left positive
     */
    LinePath(ReferenceLine line, double[] targetM) {
        this.line = line;
        this.target = targetM;
        this.targetX = new double[targetM.length];
        this.targetY = new double[targetM.length];
        for (int i = 0; i < targetM.length; i++) {
            targetX[i] = line.x(i) - targetM[i] * Math.sin(line.heading(i));
            targetY[i] = line.y(i) + targetM[i] * Math.cos(line.heading(i));
        }
    }

    /** Finds the place of a point near the last one. */
    void follow(double x, double y) {
        int count = line.nodeCount();
        for (int hops = 0; hops < count; hops++) {
            double along = along(x, y);
            if (along >= line.stepM()) {
                node = (node + 1) % count;
            } else if (along < 0.0) {
                node = (node + count - 1) % count;
            } else {
                break;
            }
        }
        double along = Math.max(0.0, Math.min(along(x, y), line.stepM()));
        station = line.wrap(node * line.stepM() + along);
        double heading = line.heading(node);
        offset = -(x - line.x(node)) * Math.sin(heading)
                + (y - line.y(node)) * Math.cos(heading)
                - 0.5 * line.curvature(node) * along * along;
    }

    private double along(double x, double y) {
        double heading = line.heading(node);
        return (x - line.x(node)) * Math.cos(heading) + (y - line.y(node)) * Math.sin(heading);
    }

    /** Returns the station, m. */
    double stationM() {
        return station;
    }

    /** Returns the offset from the reference line, m, left positive. */
    double offsetM() {
        return offset;
    }

    /** Returns the offset that is meant here, m. */
    double meantM() {
        return target[node];
    }

    /** Returns the direction of the reference line at a station, rad. */
    double directionAt(double at) {
        double place = line.wrap(at) / line.stepM();
        int i = (int) place % line.nodeCount();
        return line.heading(i) + (place - Math.floor(place)) * line.stepM() * line.curvature(i);
    }

    /** Returns the curvature of the reference line at a station, 1/m. */
    double curvatureAt(double at) {
        return line.curvatureAt(at);
    }

    /** Returns the first coordinate of the driven line at a station. */
    double targetX(double at) {
        return between(targetX, at);
    }

    /** Returns the second coordinate of the driven line at a station. */
    double targetY(double at) {
        return between(targetY, at);
    }

    private double between(double[] values, double at) {
        double place = line.wrap(at) / line.stepM();
        int i = (int) place % values.length;
        double rest = place - Math.floor(place);
        return (1.0 - rest) * values[i] + rest * values[(i + 1) % values.length];
    }
}
