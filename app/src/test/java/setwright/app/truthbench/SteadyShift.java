package setwright.app.truthbench;

import java.util.Optional;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.SteadyState;
import setwright.core.handling.Phase;
import setwright.core.judgement.SpeedRange;

/** How the steady state of other cars differs from that of one, asked for a share of what the one can do. */
final class SteadyShift {
    private static final double USED = 0.93;

    private final double speed;
    private final double along;
    private final double lateral;
    private final Optional<SteadyState> steady;

    /**
     * Makes a comparison.
     *
     * @param car    to compare with
     * @param range  of speeds that matter
     * @param phase  of a corner that matters
     */
    SteadyShift(CarModel car, SpeedRange range, Phase phase) {
        this.speed = switch (range) {
            case LOW -> 20.0;
            case ALL -> 30.0;
            case HIGH -> 50.0;
        };
        this.along = switch (phase) {
            case BRAKING -> -5.0;
            case ENTRY -> -3.0;
            case MID -> 0.0;
            case EXIT -> 2.0;
        };
        Equilibrium equilibrium = new Equilibrium(car, Equilibrium.Axes.PATH);
        this.lateral = USED
                * equilibrium
                        .greatestLateral(speed, along)
                        .map(Equilibrium.Limit::lateralMps2)
                        .orElse(1.0);
        this.steady = equilibrium.at(speed, along, lateral);
    }

    /** Returns slip of the front less that of the rear, the other car's less this one's, rad; empty where one of them cannot do it. */
    Optional<Double> to(CarModel other) {
        Optional<SteadyState> after = new Equilibrium(other, Equilibrium.Axes.PATH).at(speed, along, lateral);
        return steady.flatMap(before -> after.map(state -> difference(state) - difference(before)));
    }

    private static double difference(SteadyState state) {
        return state.frontSlipRad() - state.rearSlipRad();
    }
}
