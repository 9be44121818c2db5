package setwright.core.limit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.Limit;
import setwright.core.car.model.SteadyState;

/*
 * Design note. A car with a locking differential can have two limits at one speed and acceleration, one on which it pushes and one on
 * which it turns in; they need not be joined, and a search from anywhere finds either. Each is therefore sought from straight ahead, or
 * from that of another setup, and with the slip angles of the axles exchanged and levelled; then every limit is taken as a guess for the
 * two beside it, and at constant speed for those of the next speeds, until none of them rises any more. So a limit that exists over several accelerations has to be met at one of them only.
 */

/** The highest limits at one speed over accelerations along. */
final class LimitRow {
    private static final double NEAR_PEAK = 0.85;
    private static final double SAME_MPS2 = 1.0e-3;

    private final Equilibrium equilibrium;
    private final double speedMps;
    private final List<Double> forwards = new ArrayList<>();
    private final List<Optional<Limit>> limits = new ArrayList<>();
    private boolean settled;

    LimitRow(Equilibrium equilibrium, double speedMps) {
        this.equilibrium = equilibrium;
        this.speedMps = speedMps;
    }

    /** Looks for the limit at the next acceleration along, m/s²; about that of another setup, where there is one. */
    void find(double forwardMps2, Optional<SteadyState> near) {
        Optional<Limit> first = near.isPresent()
                ? equilibrium.greatestLateral(speedMps, forwardMps2, near.get())
                : equilibrium.greatestLateral(speedMps, forwardMps2);
        forwards.add(forwardMps2);
        limits.add(first);
        first.filter(limit -> near.isEmpty() || forwardMps2 == 0.0)
                .filter(LimitRow::bothNearTheirPeaks)
                .map(Limit::state)
                .ifPresent(state -> {
                    raise(limits.size() - 1, exchanged(state));
                    raise(limits.size() - 1, levelled(state));
                });
    }

    /** Takes limits as guesses for those beside them until none rises any more. */
    void settle() {
        int last = limits.size() - 1;
        while (!settled) {
            settled = true;
            for (int i = 1; i <= last; i++) {
                raise(i, limits.get(i - 1));
            }
            for (int i = last - 1; i >= 0; i--) {
                raise(i, limits.get(i + 1));
            }
        }
    }

    /** Takes another row's limit as a guess for that in the same place; tells whether it rose. */
    boolean raise(int place, LimitRow other) {
        return raise(place, other.limits.get(place));
    }

    /** Returns the limits, m/s²; where the car cannot turn at all, that of the acceleration before on the way from one to the outside. */
    Limit[] limits(int from) {
        int last = limits.size() - 1;
        Limit[] highest = new Limit[limits.size()];
        highest[from] = turning(from)
                .orElseThrow(() -> new IllegalArgumentException("the car cannot corner at " + speedMps + " m/s"));
        for (int i = from - 1; i >= 0; i--) {
            highest[i] = turning(i).orElse(highest[i + 1]);
        }
        for (int i = from + 1; i <= last; i++) {
            highest[i] = turning(i).orElse(highest[i - 1]);
        }
        return highest;
    }

    private Optional<Limit> turning(int place) {
        return limits.get(place).filter(limit -> limit.lateralMps2() > 0.0);
    }

    private boolean raise(int place, Optional<Limit> beside) {
        return beside.isPresent() && raise(place, beside.get().state());
    }

    /** Looks for a limit about a guess; tells whether it is higher than the one so far. */
    private boolean raise(int place, SteadyState guess) {
        Optional<Limit> known = limits.get(place);
        double least = known.map(Limit::lateralMps2).orElse(0.0) + SAME_MPS2;
        Optional<Limit> higher = equilibrium
                .limitNear(speedMps, forwards.get(place), guess, known.map(Limit::state))
                .filter(limit -> limit.lateralMps2() > least);
        if (higher.isPresent()) {
            limits.set(place, higher);
            settled = false;
        }
        return higher.isPresent();
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
}
