package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.List;
import setwright.core.handling.HandsEvent.Kind;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;

/*
 * Design note. What the trade means by a gesture, looked for in the signals of the simulation: no sensor, no filter, no car sheet
 * and the true use of each axle. Written apart from the finder on purpose, bend by bend instead of pass by pass. Sizes are
 * shares of the bend's own most, as a driver sees them; a gesture moves the wheel by 8 % of the most lock, some 4 deg at the
 * steering wheel and more than the reversals of 1 to 3 deg of SAE J2944 (value from memory).
 */

/**
 * Gestures by their definition.
 *
 * <ul>
 *   <li><b>Hold</b>: before the path is tightest, with a quarter of the most lock on, the wheel moves slower than a tenth of the fastest
 *       turning in for 0.1 to 0.6 s while the curvature (yaw rate over speed) grows by 8 % of its most; within 0.2 s before it was
 *       turned in, and within 0.2 s after it is moved either way, at twice that rate or more.
 *   <li><b>Correction</b>: the wheel goes back by 8 % of the most lock and comes in again by as much, while the car still corners with
 *       0.4 of its most; at least half of the movement is none that the path asked for (lock less wheelbase times curvature); and
 *       the rear is at its limit between 0.3 s before and the turning point.
 *   <li><b>Winding on</b>: lock grows by 8 % of its most while the curvature does not, with the front at its limit and the car cornering
 *       with 0.6 of its most.
 * </ul>
 */
final class DefinedHands {
    static final double STEP_S = 0.02;

    /** Slip over slip at the peak beyond which an axle gives 0.95 of its greatest force, by sin(1.4 atan(B x)). */
    static final double LIMIT_USE = 0.6;

    private static final double GESTURE = 0.08;
    private static final double BEND_MPS2 = 3.0;
    private static final double STRAIGHT_MPS2 = 1.0;
    private static final double STILL = 0.1;
    private static final double TURNED_IN = 0.25;
    private static final double SHORTEST_S = 0.1;
    private static final double LONGEST_HOLD_S = 0.6;
    private static final double BESIDE_S = 0.2;
    private static final double REACTION_S = 0.3;

    private final double wheelbaseM;
    private final int from;
    /** Of a bend, positive into it. */
    private final double[] lock;

    private final double[] curvature;
    private final double[] lateral;
    private final double[] frontUse;
    private final double[] rearUse;
    private final double mostLock;
    private final double mostLateral;
    private final int apex;
    private final List<TrueGesture> found = new ArrayList<>();

    private DefinedHands(Means means, int from, int to, double wheelbaseM) {
        this.wheelbaseM = wheelbaseM;
        this.from = from;
        double side = Math.signum(means.lateral[(from + to) / 2]);
        int n = to - from;
        this.lock = new double[n];
        this.curvature = new double[n];
        this.lateral = new double[n];
        this.frontUse = new double[n];
        this.rearUse = new double[n];
        for (int k = 0; k < n; k++) {
            lock[k] = side * means.steer[from + k];
            curvature[k] = side * means.yawRate[from + k] / Math.max(means.speed[from + k], 3.0);
            lateral[k] = side * means.lateral[from + k];
            frontUse[k] = means.frontUse[from + k];
            rearUse[k] = means.rearUse[from + k];
        }
        this.mostLock = lock[most(lock)];
        this.mostLateral = lateral[most(lateral)];
        this.apex = most(curvature);
    }

    /** Signals as means over each step. */
    private static final class Means {
        private final double[] steer;
        private final double[] yawRate;
        private final double[] speed;
        private final double[] lateral;
        private final double[] frontUse;
        private final double[] rearUse;

        Means(DriveHistory history) {
            this.steer = of(history, Signal.STEER);
            this.yawRate = of(history, Signal.YAW_RATE);
            this.speed = of(history, Signal.FORWARD_SPEED);
            this.lateral = of(history, Signal.LATERAL_ACCELERATION);
            this.frontUse = of(history, Signal.USE_FRONT);
            this.rearUse = of(history, Signal.USE_REAR);
        }

        private static double[] of(DriveHistory history, Signal signal) {
            int every = (int) Math.round(STEP_S / history.stepS());
            double[] means = new double[history.count() / every];
            for (int i = 0; i < means.length; i++) {
                for (int k = 0; k < every; k++) {
                    means[i] += history.at(signal, i * every + k) / every;
                }
            }
            return means;
        }
    }

    static List<TrueGesture> in(DriveHistory history, double wheelbaseM) {
        Means means = new Means(history);
        List<TrueGesture> all = new ArrayList<>();
        int k = 0;
        while (k < means.lateral.length) {
            int begin = k;
            double most = 0.0;
            double side = Math.signum(means.lateral[k]);
            while (k < means.lateral.length && side * means.lateral[k] > STRAIGHT_MPS2) {
                most = Math.max(most, side * means.lateral[k]);
                k++;
            }
            if (most > BEND_MPS2 && (k - begin) * STEP_S > LONGEST_HOLD_S) {
                all.addAll(new DefinedHands(means, begin, k, wheelbaseM).gestures());
            }
            k = Math.max(k, begin + 1);
        }
        return all;
    }

    private List<TrueGesture> gestures() {
        if (mostLock > 0.0) {
            holds();
            corrections();
            windingOn();
        }
        return found;
    }

    private void holds() {
        double fastest = 0.0;
        for (int k = 1; k <= apex; k++) {
            fastest = Math.max(fastest, lock[k] - lock[k - 1]);
        }
        int beside = (int) Math.round(BESIDE_S / STEP_S);
        int begin = 1;
        for (int k = 1; k <= apex; k++) {
            if (k < apex && Math.abs(lock[k] - lock[k - 1]) < STILL * fastest) {
                continue;
            }
            double seconds = (k - begin) * STEP_S;
            boolean moved = movedIn(begin - beside, begin, 2.0 * STILL * fastest)
                    && moves(k, k + beside, 2.0 * STILL * fastest);
            if (moved
                    && lock[begin] > TURNED_IN * mostLock
                    && seconds >= SHORTEST_S
                    && seconds <= LONGEST_HOLD_S
                    && curvature[k] - curvature[begin] >= GESTURE * curvature[apex]) {
                add(Kind.HOLD, begin, k);
            }
            begin = k + 1;
        }
    }

    private boolean movedIn(int begin, int end, double step) {
        for (int k = Math.max(begin, 1); k < Math.min(end, lock.length); k++) {
            if (lock[k] - lock[k - 1] >= step) {
                return true;
            }
        }
        return false;
    }

    private boolean moves(int begin, int end, double step) {
        for (int k = Math.max(begin, 1); k < Math.min(end, lock.length); k++) {
            if (Math.abs(lock[k] - lock[k - 1]) >= step) {
                return true;
            }
        }
        return false;
    }

    private void corrections() {
        double least = GESTURE * mostLock;
        int top = 0;
        int low = 0;
        for (int k = 1; k < lock.length; k++) {
            if (lock[k] < lock[low]) {
                low = k;
            }
            boolean fell = lock[top] - lock[low] >= least;
            if (!fell && lock[k] > lock[top]) {
                top = k;
                low = k;
            } else if (fell && lock[k] - lock[low] >= least) {
                if (notThePath(top, low) && lateral[low] > 0.4 * mostLateral && slides(top, low)) {
                    add(Kind.CORRECTION, top, k);
                }
                top = k;
                low = k;
            }
        }
    }

    private boolean notThePath(int top, int low) {
        double dip = lock[top] - lock[low];
        return dip - wheelbaseM * (curvature[top] - curvature[low]) > 0.5 * dip;
    }

    private boolean slides(int top, int low) {
        for (int k = Math.max(0, top - (int) Math.round(REACTION_S / STEP_S)); k <= low; k++) {
            if (rearUse[k] >= LIMIT_USE) {
                return true;
            }
        }
        return false;
    }

    private void windingOn() {
        int begin = 0;
        for (int k = 1; k < lock.length; k++) {
            boolean winds = lock[k] > lock[k - 1]
                    && curvature[k] <= curvature[begin]
                    && frontUse[k] >= LIMIT_USE
                    && lateral[k] > 0.6 * mostLateral;
            if (!winds || k == lock.length - 1) {
                if (lock[k - 1] - lock[begin] >= GESTURE * mostLock) {
                    add(Kind.WIND_ON, begin, k - 1);
                }
                begin = k;
            }
        }
    }

    private void add(Kind kind, int begin, int end) {
        found.add(new TrueGesture(kind, (from + begin) * STEP_S, (from + end) * STEP_S));
    }

    private static int most(double[] values) {
        int most = 0;
        for (int k = 1; k < values.length; k++) {
            most = values[k] > values[most] ? k : most;
        }
        return most;
    }
}
