package setwright.core.limit;

/*
 * Design note. The square of the speed over distance is what accelerations add up to. A step takes the mean of the accelerations at
 * both ends (Heun's method), so that the error falls with the square of the step. A pass ends where it began: it
 * is repeated until it meets itself, which drag sees to in a few laps; one lap does where a corner sets the speed.
 */

/** The fastest run round a closed line: highest speeds in corners, a pass forward with drive, a pass backward with brakes. */
final class SpeedPass {
    private static final int MOST_LAPS = 60;
    private static final double SAME_SQUARE = 1.0e-9;
    private static final int SAMPLES = 128;
    private static final int BISECTIONS = 36;
    private static final double CRAWL = 1.0;

    private final GripEnvelope car;
    private final double[] curvature;
    private final double step;
    private final double topSquare;
    private final double[] cap;
    private final double[] forward;
    private final double[] backward;

    /**
     * Runs.
     *
     * @param curvature  magnitude at each node of a closed line, 1/m
     * @param step       between nodes, m
     */
    SpeedPass(GripEnvelope car, double[] curvature, double step) {
        this.car = car;
        this.curvature = curvature;
        this.step = step;
        this.topSquare = car.topSpeedMps() * car.topSpeedMps();
        this.cap = caps();
        this.forward = cap.clone();
        this.backward = cap.clone();
        int slowest = 0;
        for (int i = 1; i < cap.length; i++) {
            slowest = cap[i] < cap[slowest] ? i : slowest;
        }
        drive(slowest);
        brake(slowest);
    }

    /** Returns the square of the speed at a node, m²/s². */
    double square(int node) {
        return Math.min(forward[node], backward[node]);
    }

    /** Returns the acceleration along at a node, m/s². */
    double alongMps2(int node) {
        double square = square(node);
        double speed = Math.sqrt(square);
        double lateral = curvature[node] * square;
        if (driven(node)) {
            return car.drivingMps2(speed, lateral);
        }
        if (backward[node] < cap[node]) {
            return car.brakingMps2(speed, lateral);
        }
        int count = cap.length;
        double slope = (square((node + 1) % count) - square((node + count - 1) % count)) / (4.0 * step);
        return Math.max(car.brakingMps2(speed, lateral), Math.min(slope, car.drivingMps2(speed, lateral)));
    }

    /** Tells whether a node is on the way from a corner to the next braking, and neither in the corner nor braking. */
    boolean driven(int node) {
        return forward[node] <= backward[node] && (forward[node] < cap[node] || cap[node] >= topSquare);
    }

    private double[] caps() {
        double top = car.topSpeedMps();
        double[] speeds = new double[SAMPLES + 1];
        double[] tightest = new double[SAMPLES + 1];
        for (int i = 0; i <= SAMPLES; i++) {
            speeds[i] = CRAWL + (top - CRAWL) * i / SAMPLES;
            tightest[i] = car.corneringMps2(speeds[i]) / (speeds[i] * speeds[i]);
            // where downforce grows faster than the speed squared, a corner is taken at the lower speed: nobody gets
            // past it
            tightest[i] = i == 0 ? tightest[i] : Math.min(tightest[i], tightest[i - 1]);
        }
        double[] caps = new double[curvature.length];
        for (int node = 0; node < caps.length; node++) {
            double speed = curvature[node] <= tightest[SAMPLES] ? top : cornering(curvature[node], speeds, tightest);
            caps[node] = speed * speed;
        }
        return caps;
    }

    private double cornering(double bend, double[] speeds, double[] tightest) {
        int low = 0;
        int high = SAMPLES;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (tightest[middle] >= bend) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double slow = tightest[low] >= bend ? speeds[low] : 0.0;
        double fast = tightest[low] >= bend ? speeds[high] : speeds[low];
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (slow + fast);
            if (car.corneringMps2(middle) >= bend * middle * middle) {
                slow = middle;
            } else {
                fast = middle;
            }
        }
        return slow;
    }

    private void drive(int start) {
        forward[start] = sustained(start);
        for (int lap = 0; lap < MOST_LAPS; lap++) {
            double before = forward[start];
            int node = start;
            for (int i = 0; i < cap.length; i++) {
                int next = node + 1 == cap.length ? 0 : node + 1;
                double now = forward[node];
                double here = drive(node, now);
                double guess = within(now + 2.0 * step * here, next);
                forward[next] = within(now + step * (here + drive(next, guess)), next);
                node = next;
            }
            if (Math.abs(forward[start] - before) <= SAME_SQUARE * (1.0 + before)) {
                return;
            }
        }
    }

    /** Square of the speed that the engine can hold at a node, no more than the corner allows. */
    private double sustained(int node) {
        double low = 0.0;
        double high = cap[node];
        if (drive(node, high) >= 0.0) {
            return high;
        }
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (drive(node, middle) >= 0.0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void brake(int start) {
        int node = start;
        for (int i = 0; i < cap.length; i++) {
            int next = node == 0 ? cap.length - 1 : node - 1;
            double now = backward[node];
            double here = brake(node, now);
            double guess = within(now - 2.0 * step * here, next);
            backward[next] = within(now - step * (here + brake(next, guess)), next);
            node = next;
        }
    }

    private double drive(int node, double square) {
        return car.drivingMps2(Math.sqrt(square), curvature[node] * square);
    }

    private double brake(int node, double square) {
        return car.brakingMps2(Math.sqrt(square), curvature[node] * square);
    }

    private double within(double square, int node) {
        return Math.max(CRAWL, Math.min(square, cap[node]));
    }
}
