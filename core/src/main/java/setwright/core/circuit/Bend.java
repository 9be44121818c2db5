package setwright.core.circuit;

/**
 * A stretch of a line that turns one way.
 *
 * @param first  node where it begins, in [0, nodes)
 * @param last   node where it ends, not before {@code first}; beyond the last node when it spans the start line
 * @param sign   +1 to the left, -1 to the right
 * @param peak   highest lateral acceleration asked for, m/s2, positive
 * @param speed  speed there, m/s
 */
record Bend(int first, int last, double sign, double peak, double speed) {
    static Bend of(DrivenLine line, int first, int last, double sign) {
        int round = Math.floorDiv(first, line.nodes()) * line.nodes();
        int peak = first;
        for (int i = first; i <= last; i++) {
            if (sign * line.demand(i) > sign * line.demand(peak)) {
                peak = i;
            }
        }
        return new Bend(first - round, last - round, sign, sign * line.demand(peak), line.speed(peak));
    }

    /**
     * Node at the centre of the tight part: the mean place, weighted by the fourth power of curvature. The place of the
     * highest curvature itself would jump from lap to lap along a corner of even radius.
     */
    int apex(DrivenLine line) {
        double weights = 0.0;
        double sum = 0.0;
        for (int i = first; i <= last; i++) {
            double weight = Math.pow(Math.max(0.0, sign * line.curvature(i)), 4.0);
            weights += weight;
            sum += weight * (i - first);
        }
        return first + (weights > 0.0 ? (int) Math.round(sum / weights) : 0);
    }

    /** Angle it turns by, rad, positive. */
    double angle(DrivenLine line) {
        double angle = 0.0;
        for (int i = first; i <= last; i++) {
            angle += sign * line.curvature(i) * line.stepM();
        }
        return angle;
    }
}
