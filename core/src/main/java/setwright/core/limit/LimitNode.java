package setwright.core.limit;

import java.util.List;
import java.util.Optional;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.Limit;
import setwright.core.car.model.SteadyState;
import setwright.core.numerics.MonotoneCubic;

/** A solved limit with what the car does on the way to it, over the share of its lateral acceleration. */
final class LimitNode {
    /** Shares of the limit that are solved besides: where most tyres have a quarter, a half and three quarters of their peak's slip. */
    private static final double[] SHARES = {0.54, 0.85, 0.97};

    final Limit limit;

    private final List<SteadyState> below;
    private final MonotoneCubic balance;
    private final MonotoneCubic scrub;

    LimitNode(CarModel car, Equilibrium equilibrium, Limit limit, Optional<LimitNode> near) {
        this.limit = limit;
        this.below = equilibrium.below(limit, near.map(node -> node.below).orElse(List.of()), SHARES);
        int count = below.size();
        double[] share = new double[count + 2];
        double[] balances = new double[count + 2];
        double[] scrubs = new double[count + 2];
        int used = 1;
        for (int i = 0; i <= count; i++) {
            SteadyState state = i == count ? limit.state() : below.get(i);
            double lateral = state.yawRate() * state.speedMps() / limit.lateralMps2();
            if (lateral > share[used - 1] + 1.0e-6) {
                share[used] = lateral;
                balances[used] = state.balanceRad();
                scrubs[used] = scrubN(car, state);
                used++;
            }
        }
        this.balance =
                MonotoneCubic.through(java.util.Arrays.copyOf(share, used), java.util.Arrays.copyOf(balances, used));
        this.scrub = MonotoneCubic.through(java.util.Arrays.copyOf(share, used), java.util.Arrays.copyOf(scrubs, used));
    }

    /** Returns front less rear slip angle, rad, at a share of the limit's lateral acceleration. */
    double balanceRad(double share) {
        return balance.at(share);
    }

    /** Returns the force along the path that the slip angles cost, N. */
    double scrubN(double share) {
        return scrub.at(share);
    }

    /** What engine and brakes do besides accelerating the car along its path and pushing it through the air. */
    private static double scrubN(CarModel car, SteadyState state) {
        double along = state.forwardMps2() * Math.cos(state.sideslipRad())
                + state.lateralMps2() * Math.sin(state.sideslipRad());
        return state.engineN() - state.brakeN() - car.body().massKg() * along - car.resistanceN(state.speedMps());
    }
}
