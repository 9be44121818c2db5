package setwright.core.car.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.car.model.Equilibrium.Axes;
import setwright.core.car.model.Equilibrium.Limit;

/** That a limit sought about another is the one that is found from straight ahead. */
final class LimitSearchTest {
    private static final double[] FORWARD = {-9.0, -5.0, -2.0, 0.0, 2.0, 4.0};

    private static Equilibrium car() {
        CarSheet sheet = Sheets.adjustable();
        return new Equilibrium(new CarAssembler(sheet).build(CarPrior.of(sheet).middle()), Axes.PATH);
    }

    @Test
    void startingFromAnotherSetupOrSpeedMakesNoDifference() {
        CarSheet sheet = Sheets.adjustable();
        CarAssembler assembler = new CarAssembler(sheet);
        double[] parameters = CarPrior.of(sheet).middle();
        Equilibrium present = new Equilibrium(assembler.build(parameters), Axes.PATH);
        for (SetupChange change : List.of(
                new SetupChange("front_bar", 4.0, 7.0),
                new SetupChange("rear_wing", 6.0, 9.0),
                new SetupChange("rear_spring", 140.0, 100.0))) {
            Equilibrium changed = new Equilibrium(assembler.build(sheet.with(List.of(change)), parameters), Axes.PATH);
            for (double speed : new double[] {15.0, 30.0, 55.0}) {
                for (double forward : FORWARD) {
                    Limit before = present.greatestLateral(speed - 1.0, forward).orElseThrow();
                    Limit cold = changed.greatestLateral(speed, forward).orElseThrow();
                    Limit warm = changed.greatestLateral(speed, forward, before.state())
                            .orElseThrow();
                    assertThat(warm.lateralMps2())
                            .as(change.item() + " at " + speed + " m/s and " + forward + " m/s2")
                            // another branch may lie a little higher, never lower
                            .isBetween(cold.lateralMps2() - 0.003, cold.lateralMps2() * 1.02);
                }
            }
        }
    }

    @Test
    void statesBelowALimitAreThoseOfTheirLateralAcceleration() {
        Equilibrium car = car();
        Limit limit = car.greatestLateral(30.0, 1.0).orElseThrow();
        double[] shares = {0.3, 0.6, 0.95};
        List<SteadyState> below = car.below(limit, shares);
        assertThat(below).hasSize(3);
        for (int i = 0; i < shares.length; i++) {
            SteadyState state = below.get(i);
            double lateral = state.yawRate() * state.speedMps();
            assertThat(lateral).isCloseTo(shares[i] * limit.lateralMps2(), within(1e-6));
            SteadyState solved = car.at(30.0, 1.0, lateral).orElseThrow();
            assertThat(state.frontSlipRad()).isCloseTo(solved.frontSlipRad(), within(1e-6));
            assertThat(state.rearSlipRad()).isCloseTo(solved.rearSlipRad(), within(1e-6));
            assertThat(state.engineN()).isCloseTo(solved.engineN(), within(0.1));
        }
    }

    @Test
    void statesBelowALimitAreTheSameFromGuessesThatMislead() {
        Equilibrium car = car();
        Limit limit = car.greatestLateral(30.0, 1.0).orElseThrow();
        List<SteadyState> below = car.below(limit, 0.5, 0.9);
        // the limit itself, and a state of less acceleration
        SteadyState far = limit.state();
        List<SteadyState> misled = car.below(limit, List.of(far, below.get(0)), 0.5, 0.9);
        for (int i = 0; i < below.size(); i++) {
            assertThat(misled.get(i).balanceRad()).isCloseTo(below.get(i).balanceRad(), within(1e-6));
        }
    }

    @Test
    void withoutALimitThereIsNoneFromAnotherEither() {
        Equilibrium car = car();
        Limit limit = car.greatestLateral(30.0, 0.0).orElseThrow();
        assertThat(car.greatestLateral(30.0, -60.0, limit.state())).isEmpty();
    }
}
