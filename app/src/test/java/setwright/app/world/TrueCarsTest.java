package setwright.app.world;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Parameter;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.simulation.fault.BalancedTruth;
import setwright.core.simulation.fault.Fault;
import setwright.core.simulation.fault.FaultCatalogue;

/** True cars drawn from the prior can be balanced, and faults then show with the sign that they are meant to have. */
final class TrueCarsTest {
    private static final long SEED = 20_240_917L;
    private static final int DRAWS = 8;
    /** Light throttle adds some understeer to the steady margin of 7 %; twice that would be a car that pushes. */
    private static final double MOST_ON_THE_THROTTLE = 0.14;

    static List<String> cars() {
        return World.cars();
    }

    @ParameterizedTest
    @MethodSource("cars")
    void drawnCarsAreBalancedByThreeOfTheirValues(String name) {
        CarSheet sheet = World.car(name).orElseThrow().sheet();
        double[][] draws = CarBelief.of(CarPrior.of(sheet)).draw(DRAWS, SEED);
        int balanced = 0;
        for (double[] draw : draws) {
            BalancedTruth truth = BalancedTruth.balance(sheet, draw);
            double[] parameters = truth.parameters();
            for (Parameter parameter : Parameter.values()) {
                if (parameter != Parameter.GRIP_SPLIT
                        && parameter != Parameter.LIFT_BALANCE
                        && parameter != Parameter.BRAKE_SHARE) {
                    assertThat(parameters[parameter.index()]).isEqualTo(draw[parameter.index()]);
                }
            }
            balanced += truth.isBalanced() ? 1 : 0;
            if (truth.isBalanced()) {
                onTheThrottleAndOnTheBrakes(sheet, parameters, name);
            }
        }
        // some draws would need a grip split or an aerodynamic balance far outside what the sheet says
        assertThat(balanced).as(name + ", seed " + SEED).isGreaterThanOrEqualTo(3);
    }

    private static void onTheThrottleAndOnTheBrakes(CarSheet sheet, double[] parameters, String name) {
        CarModel car = new CarAssembler(sheet).build(parameters);
        double light = BalancedTruth.margin(car, BalancedTruth.SLOW_MPS, 1.0);
        if (sheet.drivenAxle() == DrivenAxle.REAR) {
            assertThat(light).as(name + ", light throttle").isBetween(0.0, MOST_ON_THE_THROTTLE);
        } else {
            assertThat(light).as(name + ", light throttle").isPositive();
        }
        assertThat(BalancedTruth.brakeLead(car, 30.0, 0.6))
                .as(name + ", light braking")
                .isPositive();
    }

    @ParameterizedTest
    @MethodSource("cars")
    void aBalancedCarStaysAsItIs(String name) {
        WorldCar car = World.car(name).orElseThrow();
        double[] before = car.trueParameters();
        double[] after = BalancedTruth.balance(car.sheet(), before).parameters();
        for (Parameter parameter : Parameter.values()) {
            if (parameter != Parameter.LIFT_BALANCE) {
                assertThat(Math.abs(after[parameter.index()] - before[parameter.index()]))
                        .as(name + ", " + parameter)
                        .isLessThan(0.003);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void faultsOfSteadyCornersTurnTheBalanceTheirWay(String name) {
        WorldCar car = World.car(name).orElseThrow();
        CarModel balanced = car.trueCar(car.sheet());
        for (Fault fault : FaultCatalogue.of(car.sheet())) {
            if (fault.phase() != Phase.MID) {
                continue;
            }
            CarModel faulty = car.trueCar(car.sheet().with(fault.changes(car.sheet(), 1.0)));
            for (double speed : new double[] {BalancedTruth.SLOW_MPS, BalancedTruth.FAST_MPS}) {
                double moved = BalancedTruth.margin(faulty, speed, 0.0) - BalancedTruth.margin(balanced, speed, 0.0);
                assertThat(fault.balance() == BalanceSign.UNDERSTEER ? moved : -moved)
                        .as(name + ", " + fault.name() + " at " + speed + " m/s")
                        .isGreaterThan(0.001);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void brakeFaultsTurnTheBrakesTheirWay(String name) {
        WorldCar car = World.car(name).orElseThrow();
        Fault rearward = FaultCatalogue.find("brake bias much too far rearward").orElseThrow();
        Fault forward = FaultCatalogue.find("brake bias too far forward").orElseThrow();
        CarModel locksRear = car.trueCar(car.sheet().with(rearward.changes(car.sheet(), 1.0)));
        CarModel locksFront = car.trueCar(car.sheet().with(forward.changes(car.sheet(), 1.0)));
        assertThat(BalancedTruth.brakeLead(locksRear, 30.0, 0.85)).isLessThan(-0.1);
        assertThat(BalancedTruth.brakeLead(locksFront, 30.0, 0.85)).isGreaterThan(0.2);
    }
}
