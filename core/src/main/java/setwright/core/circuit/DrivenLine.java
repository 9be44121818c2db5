package setwright.core.circuit;

/** A reference line with the speed it is driven at; nodes are counted round and round. */
final class DrivenLine {
    private final ReferenceLine line;
    private final double[] speed;

    /**
     * Makes one.
     *
     * @param speedMps  at each node, &gt; 0
     */
    DrivenLine(ReferenceLine line, double[] speedMps) {
        if (speedMps.length != line.nodeCount()) {
            throw new IllegalArgumentException(
                    "one speed per node is needed, got " + speedMps.length + " for " + line.nodeCount() + " nodes");
        }
        this.line = line;
        this.speed = speedMps.clone();
    }

    int nodes() {
        return speed.length;
    }

    double stepM() {
        return line.stepM();
    }

    /** Speed at a node, m/s. */
    double speed(int node) {
        return speed[Math.floorMod(node, speed.length)];
    }

    /** Curvature at a node, 1/m, left positive. */
    double curvature(int node) {
        return line.curvature(Math.floorMod(node, speed.length));
    }

    /** Lateral acceleration that the line asks for at a node, m/s2, left positive. */
    double demand(int node) {
        double v = speed(node);
        return curvature(node) * v * v;
    }

    /** Time from one node to another further on, s. */
    double seconds(int from, int to) {
        double seconds = 0.0;
        for (int i = from; i < to; i++) {
            seconds += stepM() / speed(i);
        }
        return seconds;
    }

    /** The node that lies a time before another, at most a lap. */
    int earlier(int node, double secondsBefore) {
        int i = node;
        double left = secondsBefore;
        while (left > 0.0 && node - i < nodes()) {
            i--;
            left -= stepM() / speed(i);
        }
        return i;
    }

    /** The node that lies a time after another, at most a lap. */
    int later(int node, double secondsAfter) {
        int i = node;
        double left = secondsAfter;
        while (left > 0.0 && i - node < nodes()) {
            left -= stepM() / speed(i);
            i++;
        }
        return i;
    }
}
