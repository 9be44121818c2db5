package setwright.core.limit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.Axes;
import setwright.core.car.model.Equilibrium.Limit;
import setwright.core.car.model.SteadyState;

/*
 * Design note. Over the acceleration along, the limit falls to nothing as steeply as a circle does; over the angle whose sine is the
 * share of the hardest braking or drive it does so smoothly. Nodes lie at equal angles, with one at constant speed.
 *
 * A car with a locking differential can have two limits at one speed and acceleration, one on which it pushes and one on which it
 * turns in; they need not be joined. The grid takes the highest of what is found from straight ahead, from the node before, and with
 * the slip angles of front and rear exchanged; a changed setup starts from there.
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
    private static final double NEAR_PEAK = 0.85;
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
            solve(i, near);
        }
    }

    /** Returns the angle of a node: 0 at constant speed, -pi/2 at the hardest braking, pi/2 at the hardest drive. */
    static double angle(int node) {
        int away = node - BRAKING;
        return 0.5 * Math.PI * away / (away < 0 ? BRAKING : DRIVING);
    }

    private void solve(int speed, Optional<LimitGrid> near) {
        node(speed, BRAKING, near, Optional.empty());
        for (int i = BRAKING - 1; i >= 0; i--) {
            node(speed, i, near, Optional.of(nodes[speed][i + 1]));
        }
        for (int i = BRAKING + 1; i < COUNT; i++) {
            node(speed, i, near, Optional.of(nodes[speed][i - 1]));
        }
    }

    private void node(int speed, int node, Optional<LimitGrid> near, Optional<LimitNode> before) {
        double v = speeds[speed];
        double forward = forward(speed, node);
        Optional<Limit> first = near.isPresent()
                ? equilibrium.greatestLateral(
                        v, forward, near.get().nodes[speed][node].limit.state())
                : equilibrium.greatestLateral(v, forward);
        boolean bothMayGiveOut = near.map(grid -> grid.nodes[speed][node].severalLimits)
                .orElse(first.filter(LimitGrid::bothNearTheirPeaks).isPresent());
        List<Limit> limits = Stream.of(
                        first,
                        before.filter(last -> near.isEmpty())
                                .flatMap(last -> equilibrium.limitNear(v, forward, last.limit.state())),
                        first.filter(limit -> bothMayGiveOut)
                                .flatMap(limit -> equilibrium.limitNear(v, forward, exchanged(limit.state()))),
                        first.filter(limit -> bothMayGiveOut)
                                .flatMap(limit -> equilibrium.limitNear(v, forward, levelled(limit.state()))))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Limit::lateralMps2))
                .toList();
        nodes[speed][node] = last(limits)
                .filter(limit -> limit.lateralMps2() > 0.0)
                .map(limit -> new LimitNode(
                        car, equilibrium, limit, several(limits), near.map(grid -> grid.nodes[speed][node])))
                // no turning at all left there: the last one that could stands in, and the envelope ends with it
                .or(() -> before)
                .orElseThrow(() -> new IllegalArgumentException("the car cannot corner at " + v + " m/s"));
    }

    private static Optional<Limit> last(List<Limit> limits) {
        return limits.isEmpty() ? Optional.empty() : Optional.of(limits.get(limits.size() - 1));
    }

    private static boolean several(List<Limit> limits) {
        return limits.size() > 1
                && limits.get(limits.size() - 1).lateralMps2() - limits.get(0).lateralMps2() > SAME_MPS2;
    }

    /** Only then can the other axle as well be the one that gives out. */
    private static boolean bothNearTheirPeaks(Limit limit) {
        return Math.min(limit.state().frontUse(), limit.state().rearUse()) > NEAR_PEAK;
    }

    /** The state with the slip angles of front and rear exchanged: a guess of where the other axle gives out. */
    private static SteadyState exchanged(SteadyState state) {
        return slipping(state, state.rearSlipRad(), state.frontSlipRad());
    }

    /** The state with the slip angle of either axle raised to that of the other: a guess of where both give out. */
    private static SteadyState levelled(SteadyState state) {
        double most = Math.max(state.frontSlipRad(), state.rearSlipRad());
        return slipping(state, most, most);
    }

    private static SteadyState slipping(SteadyState state, double front, double rear) {
        double turned = state.rearSlipRad() - rear;
        return new SteadyState(
                state.speedMps(),
                state.forwardMps2(),
                state.lateralMps2(),
                state.yawRate(),
                state.sideslipRad() + turned,
                state.steerRad() + turned + front - state.frontSlipRad(),
                front,
                rear,
                state.loadsN(),
                state.frontUse(),
                state.rearUse(),
                state.engineN(),
                state.brakeN(),
                state.heaveM(),
                state.pitchRad(),
                state.rollRad());
    }

    private double forward(int speed, int node) {
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
