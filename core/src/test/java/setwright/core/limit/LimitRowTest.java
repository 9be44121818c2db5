package setwright.core.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.Axes;
import setwright.core.car.model.Equilibrium.Limit;

/** That a car with two limits is given the higher one, on a car with a locking differential that has both at some speeds. */
final class LimitRowTest {
    private static final CarModel CAR = LapCars.winged();

    @Test
    void aHigherLimitIsNotMissedWhereTheNextOneHasIt() {
        LimitGrid grid = new LimitGrid(CAR, Optional.empty());
        Equilibrium equilibrium = new Equilibrium(CAR, Axes.PATH);
        int limits = 0;
        int missed = 0;
        int several = 0;
        for (int i = 0; i < LimitGrid.SPEEDS; i++) {
            for (int k = 1; k < LimitGrid.COUNT; k++) {
                double own = grid.nodes[i][k].limit.lateralMps2();
                Limit beside = grid.nodes[i][k - 1].limit;
                double forward = grid.forward(i, k);
                double straight = equilibrium
                        .greatestLateral(grid.speeds[i], forward)
                        .map(Limit::lateralMps2)
                        .orElse(0.0);
                double about = equilibrium
                        .limitNear(grid.speeds[i], forward, beside.state(), Optional.empty())
                        .map(Limit::lateralMps2)
                        .orElse(0.0);
                limits++;
                several += own > straight * 1.005 ? 1 : 0;
                missed += Math.max(straight, about) > own * 1.005 ? 1 : 0;
            }
        }
        assertThat(several).as("of %d limits", limits).isPositive();
        assertThat(missed).as("of %d limits", limits).isZero();
    }
}
