package setwright.core.limit;

import java.util.Optional;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.Axes;
import setwright.core.car.model.Equilibrium.Limit;

/*
 * Design note. Over the acceleration along, the limit falls to nothing as steeply as a circle does; over the angle whose sine is the
 * share of the hardest braking or drive it does so smoothly. Nodes lie at equal angles, with one at constant speed.
 */

/** Solved limits of a car over speed and acceleration along. */
final class LimitGrid {
    static final int SPEEDS = 12;
    static final int BRAKING = 12;
    static final int DRIVING = 9;
    static final int COUNT = BRAKING + 1 + DRIVING;

    /** Slower than any corner of a circuit but for the tightest hairpins; below, only the radius changes. */
    private static final double SLOWEST_MPS = 10.0;

    private static final double NARROWEST_MPS = 5.0;
    /** The car's equations stop short of a wheel that locks or spins: at 0.9887 of its peak. */
    private static final double NEARLY_LOCKED = 0.985;
    /** Beyond what the engine gives, the envelope does not matter. */
    private static final double BEYOND_ENGINE = 1.25;

    private static final double BEYOND_ENGINE_MPS2 = 1.5;
    private static final double FARTHEST_MPS2 = 120.0;
    private static final int STEPS = 40;
    private static final double SAME_USE = 5.0e-4;
    private static final double SAME_MPS2 = 1.0e-3;

    final CarModel car;
    final double topMps;
    final double[] speeds = new double[SPEEDS];
    /** Hardest braking and drive straight ahead at each speed, m/s², both positive. */
    final double[] braking = new double[SPEEDS];

    final double[] driving = new double[SPEEDS];
    final LimitNode[][] nodes = new LimitNode[SPEEDS][COUNT];
    private final Equilibrium equilibrium;

    LimitGrid(CarModel car, Optional<LimitGrid> near) {
        this.car = car;
        this.equilibrium = new Equilibrium(car, Axes.PATH);
        this.topMps = TopSpeed.of(car);
        double power = BEYOND_ENGINE * TopSpeed.powerW(car, topMps) / car.body().massKg();
        double fastest = Math.max(topMps, SLOWEST_MPS + NARROWEST_MPS);
        LimitRow[] rows = new LimitRow[SPEEDS];
        for (int i = 0; i < SPEEDS; i++) {
            speeds[i] = SLOWEST_MPS + (fastest - SLOWEST_MPS) * i / (SPEEDS - 1);
            int speed = i;
            double before = i == 0 ? 5.0 : braking[i - 1];
            braking[i] = hardest(
                    speeds[i],
                    -1.0,
                    FARTHEST_MPS2,
                    near.map(grid -> grid.braking[speed]).orElse(before));
            double engine = power / speeds[i] + BEYOND_ENGINE_MPS2;
            driving[i] = hardest(
                    speeds[i],
                    1.0,
                    engine,
                    near.map(grid -> grid.driving[speed]).orElse(engine));
            rows[i] = new LimitRow(equilibrium, speeds[i]);
            for (int k = 0; k < COUNT; k++) {
                rows[i].find(forward(i, k), node(near, i, k).map(node -> node.limit.state()));
            }
        }
        settle(rows);
        for (int i = 0; i < SPEEDS; i++) {
            Limit[] limits = rows[i].limits(BRAKING);
            for (int k = 0; k < COUNT; k++) {
                nodes[i][k] = new LimitNode(car, equilibrium, limits[k], node(near, i, k));
            }
        }
    }

    /** Returns the angle of a node: 0 at constant speed, -pi/2 at the hardest braking, pi/2 at the hardest drive. */
    static double angle(int node) {
        int away = node - BRAKING;
        return 0.5 * Math.PI * away / (away < 0 ? BRAKING : DRIVING);
    }

    private static Optional<LimitNode> node(Optional<LimitGrid> grid, int speed, int node) {
        return grid.map(there -> there.nodes[speed][node]);
    }

    private static void settle(LimitRow[] rows) {
        boolean risen = true;
        while (risen) {
            for (LimitRow row : rows) {
                row.settle();
            }
            risen = false;
            for (int i = 1; i < SPEEDS; i++) {
                risen |= rows[i].raise(BRAKING, rows[i - 1]);
            }
            for (int i = SPEEDS - 2; i >= 0; i--) {
                risen |= rows[i].raise(BRAKING, rows[i + 1]);
            }
        }
    }

    /** Returns the acceleration along of a node, m/s². */
    double forward(int speed, int node) {
        double angle = angle(node);
        return Math.sin(angle) * (angle < 0.0 ? braking[speed] : driving[speed]);
    }

    /** Hardest acceleration straight ahead before an axle locks or spins, or {@code most}, m/s², positive. */
    private double hardest(double speed, double sign, double most, double guess) {
        double low = 0.0;
        double high = most;
        double lowUse = use(speed, 0.0);
        double next = Math.min(guess, most);
        for (int i = 0; i < STEPS && high - low > SAME_MPS2; i++) {
            double use = use(speed, sign * next);
            if (Math.abs(use - NEARLY_LOCKED) < SAME_USE || (next == most && use < NEARLY_LOCKED)) {
                return next;
            }
            if (use > NEARLY_LOCKED) {
                high = next;
                next = 0.5 * (low + high);
                continue;
            }
            double straight = next + (next - low) * (NEARLY_LOCKED - use) / Math.max(use - lowUse, SAME_USE);
            low = next;
            lowUse = use;
            next = straight < high ? straight : 0.5 * (low + high);
        }
        return low;
    }

    private double use(double speed, double forward) {
        return equilibrium
                .at(speed, forward, 0.0)
                .map(state -> Math.max(state.frontUse(), state.rearUse()))
                .orElse(2.0);
    }
}
