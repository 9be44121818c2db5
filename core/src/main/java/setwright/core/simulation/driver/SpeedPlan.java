package setwright.core.simulation.driver;

import setwright.core.circuit.ReferenceLine;

/** The speed that a driver means to have at every node of the line, and the acceleration on the way. */
final class SpeedPlan {
    private static final double SLOWEST = 6.0;

    private final ReferenceLine line;
    private final double[] speed;
    private final double[] acceleration;

    /**
     * Plans a lap.
     *
     * @param line   the line
     * @param feel   what the car can do
     * @param style  how much of it is used at once
     * @param trust  share of it that is used at each node: entry, middle, exit
     */
    SpeedPlan(ReferenceLine line, CarFeel feel, DriverStyle style, Trust trust) {
        this.line = line;
        int n = line.nodeCount();
        speed = new double[n];
        acceleration = new double[n];
        int slowest = 0;
        for (int i = 0; i < n; i++) {
            speed[i] = cornering(Math.abs(line.curvature(i)), feel, trust.middle()[i]);
            slowest = speed[i] < speed[slowest] ? i : slowest;
        }
        double step = line.stepM();
        for (int k = 0; k < n; k++) {
            int i = (slowest + k) % n;
            int next = (i + 1) % n;
            double used = used(i, feel, trust);
            double a = feel.drivingMps2(speed[i]) * trust.exit()[i] * left(used, style.power());
            speed[next] = Math.min(speed[next], Math.sqrt(speed[i] * speed[i] + 2.0 * Math.max(a, 0.0) * step));
        }
        for (int k = 0; k < n; k++) {
            int i = Math.floorMod(slowest - k, n);
            int before = Math.floorMod(i - 1, n);
            double used = used(i, feel, trust);
            double a = feel.brakingMps2(speed[i]) * style.brakeShare() * trust.entry()[i] * left(used, style.trail());
            double floor = feel.coastingMps2(speed[i]);
            double most = Math.max(a, Math.min(floor, 1.0));
            speed[before] = Math.min(speed[before], Math.sqrt(speed[i] * speed[i] + 2.0 * most * step));
        }
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            acceleration[i] = (speed[next] * speed[next] - speed[i] * speed[i]) / (2.0 * step);
        }
    }

    /**
     * How much of the car a driver dares to use at each node, 1 for all that he knows of.
     */
    @SuppressWarnings("ArrayRecordComponent") // long columns that only this package reads
    record Trust(double[] entry, double[] middle, double[] exit) {}

    private double used(int i, CarFeel feel, Trust trust) {
        double used =
                Math.abs(line.curvature(i)) * speed[i] * speed[i] / (feel.lateralMps2(speed[i]) * trust.middle()[i]);
        return Math.min(used, 1.0);
    }

    /** Share of the grip lengthwise that is left beside a share sideways. */
    static double left(double used, double exponent) {
        return Math.pow(Math.max(0.0, 1.0 - Math.pow(used, exponent)), 1.0 / exponent);
    }

    private static double cornering(double curvature, CarFeel feel, double trust) {
        double high = feel.topMps();
        if (curvature * high * high <= trust * feel.lateralMps2(high)) {
            return high;
        }
        double low = SLOWEST;
        for (int k = 0; k < 40; k++) {
            double middle = 0.5 * (low + high);
            boolean holds = curvature * middle * middle <= trust * feel.lateralMps2(middle);
            low = holds ? middle : low;
            high = holds ? high : middle;
        }
        return low;
    }

    /** Returns the planned speed at a station, m/s. */
    double speedAt(double stationM) {
        return at(speed, stationM);
    }

    /** Returns the planned acceleration at a station, m/s². */
    double accelerationAt(double stationM) {
        return at(acceleration, stationM);
    }

    /** Returns a copy of the speeds at the nodes. */
    double[] speeds() {
        return speed.clone();
    }

    private double at(double[] values, double stationM) {
        double place = line.wrap(stationM) / line.stepM();
        int i = (int) place % values.length;
        double rest = place - Math.floor(place);
        return (1.0 - rest) * values[i] + rest * values[(i + 1) % values.length];
    }
}
