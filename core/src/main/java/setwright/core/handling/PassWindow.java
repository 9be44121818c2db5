package setwright.core.handling;

import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;

/**
 * The samples of one lap through one corner, with the sign of the turn removed: steering, yaw and lateral acceleration
 * are positive into the corner. Arrays of equal length; read-only by agreement within the package.
 */
@SuppressWarnings("ArrayRecordComponent") // package-private, never changed after it is built
record PassWindow(
        int lap,
        Corner corner,
        double stepS,
        double startTimeS,
        double[] station,
        double[] offset,
        double[] speed,
        double[] steer,
        double[] yawRate,
        double[] inward,
        double[] forward,
        double[] brake,
        double[] throttle,
        double[] balance,
        double[] reference,
        double[] limit) {

    private static final int LEAST_SAMPLES = 12;
    /** Share by which the curvature must grow before the path counts as tightening. */
    private static final double TIGHTENS = 0.02;

    /** Cuts a pass out of the stint; empty (no samples) when the recording does not hold it whole or has a gap in it. */
    static PassWindow of(Stint stint, HandlingTrace trace, Lap lap, Corner corner) {
        double length = stint.circuit().line().lengthM();
        int count = stint.recording().sampleCount();
        int from = lap.from();
        while (from > 0 && unwrapped(stint, lap, from - 1, length) >= corner.startM() && lap.from() - from < count) {
            from--;
        }
        while (from < lap.to() && !(unwrapped(stint, lap, from, length) >= corner.startM())) {
            from++;
        }
        int to = from;
        while (to < count && unwrapped(stint, lap, to, length) <= corner.endM()) {
            to++;
        }
        boolean whole = to < count && to - from >= LEAST_SAMPLES;
        return cut(stint, trace, lap, corner, from, whole ? to : from, length);
    }

    private static PassWindow cut(
            Stint stint, HandlingTrace trace, Lap lap, Corner corner, int from, int to, double length) {
        int n = to - from;
        double side = corner.sign();
        double[] station = new double[n];
        double[] balance = new double[n];
        double[] limit = new double[n];
        boolean gap = false;
        for (int k = 0; k < n; k++) {
            station[k] = unwrapped(stint, lap, from + k, length);
            double traced = trace.balance().get(from + k);
            balance[k] = trace.lateral().get(from + k) * side >= 0.0 ? traced : -traced;
            limit[k] = trace.car().grip().at(trace.speed().get(from + k));
            gap |= Double.isNaN(balance[k]) || Double.isNaN(station[k]);
        }
        if (gap) {
            return cut(stint, trace, lap, corner, from, from, length);
        }
        double[] reference = trace.reference().slice(from, to);
        for (int k = 0; k < n; k++) {
            if (trace.lateral().get(from + k) * side < 0.0) {
                reference[k] = -reference[k];
            }
        }
        double step = stint.recording().stepS();
        return new PassWindow(
                lap.number(),
                corner,
                step,
                from * step,
                station,
                stint.offset().slice(from, to),
                trace.speed().slice(from, to),
                signed(trace.steer().slice(from, to), side),
                signed(trace.yawRate().slice(from, to), side),
                signed(trace.lateral().slice(from, to), side),
                trace.forward().slice(from, to),
                trace.brake().slice(from, to),
                trace.throttle().slice(from, to),
                balance,
                reference,
                limit);
    }

    int size() {
        return station.length;
    }

    boolean isEmpty() {
        return station.length == 0;
    }

    /** Curvature of the motion into the corner, 1/m: yaw rate over speed. */
    double curvature(int k) {
        return yawRate[k] / Math.max(speed[k], 3.0);
    }

    /** Tells whether the path tightens from one sample to another, by more than the noise of the speed makes. */
    boolean tightens(int from, int to) {
        return curvature(to) > (1.0 + TIGHTENS) * curvature(from);
    }

    /** The part of the longitudinal acceleration that brakes or engine put through the tyres, m/s². */
    double tyre(int k) {
        return Pedals.throughTyres(brake[k], throttle[k], forward[k]);
    }

    double timeS(int k) {
        return startTimeS + k * stepS;
    }

    /** Time from the corner's start to its end, s, interpolated between samples. */
    double durationS() {
        int last = size() - 1;
        double before = (station[0] - corner.startM()) / Math.max(speed[0], 1.0);
        double behind = (corner.endM() - station[last]) / Math.max(speed[last], 1.0);
        return last * stepS + before + behind;
    }

    /** Samples that last about this long, at least one. */
    int samples(double seconds) {
        return Math.max(1, (int) Math.round(seconds / stepS));
    }

    /** First sample at or behind a station; the last one when none is. */
    int indexAt(double stationM) {
        int k = 0;
        while (k < size() - 1 && station[k] < stationM) {
            k++;
        }
        return k;
    }

    /** Where a sample begins to stand for the road: half way from the one before; the first and the last sample have no neighbour. */
    double edgeM(int k) {
        return k <= 0 ? station[0] : k >= size() ? station[size() - 1] : 0.5 * (station[k - 1] + station[k]);
    }

    int indexOfMost(double[] values, int from, int to) {
        int best = from;
        for (int k = from; k < to; k++) {
            if (values[k] > values[best]) {
                best = k;
            }
        }
        return best;
    }

    /** Station of a sample as if the lap had begun at 0 and went on past the line. */
    private static double unwrapped(Stint stint, Lap lap, int sample, double length) {
        double station = stint.station().get(sample);
        if (sample < lap.from()) {
            return station > 0.5 * length ? station - length : station;
        }
        if (sample >= lap.to()) {
            return station < 0.5 * length ? station + length : station;
        }
        double progress = (sample - lap.from()) / (double) (lap.to() - lap.from());
        // the samples next to the line may be mapped to either side of it
        if (progress < 0.1 && station > 0.5 * length) {
            return station - length;
        }
        return progress > 0.9 && station < 0.5 * length ? station + length : station;
    }

    private static double[] signed(double[] values, double side) {
        for (int k = 0; k < values.length; k++) {
            values[k] *= side;
        }
        return values;
    }
}
