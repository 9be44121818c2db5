package setwright.core.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.Axes;
import setwright.core.car.model.Equilibrium.Limit;
import setwright.core.car.model.SteadyState;

final class EnvelopeTest {
    private static final long SEED = 20240611L;
    private static final int STATES = 300;

    static Stream<CarModel> cars() {
        return Stream.of(LapCars.winged(), LapCars.plain(DrivenAxle.REAR), LapCars.plain(DrivenAxle.FRONT));
    }

    /** What docs/simulation.md says of accuracy: over all of the envelope that the engine can reach. */
    @ParameterizedTest
    @MethodSource("cars")
    void betweenItsNodesItAgreesWithTheEquilibrium(CarModel car) {
        Envelope envelope = Envelope.of(car);
        Equilibrium direct = new Equilibrium(car, Axes.PATH);
        Random random = new Random(SEED);
        List<Double> limits = new ArrayList<>();
        List<Double> balances = new ArrayList<>();
        List<Double> forces = new ArrayList<>();
        for (int i = 0; i < STATES; i++) {
            double speed = 10.0 + random.nextDouble() * (envelope.topSpeedMps() - 10.0);
            double low = envelope.hardestBrakingMps2(speed);
            double forward = low + random.nextDouble() * (envelope.drivingMps2(speed, 0.0) - low);
            double share = random.nextDouble();
            Optional<Limit> limit = direct.greatestLateral(speed, forward);
            if (limit.isEmpty()) {
                continue;
            }
            limits.add(Math.abs(envelope.greatestLateralMps2(speed, forward)
                            - limit.get().lateralMps2())
                    / envelope.corneringMps2(speed));
            double lateral = share * limit.get().lateralMps2();
            SteadyState solved = direct.at(speed, forward, lateral).orElseThrow();
            CarState read = envelope.at(speed, forward, lateral);
            balances.add(Math.toDegrees(Math.abs(read.balanceRad() - solved.balanceRad())));
            forces.add(Math.abs(read.engineN() - read.brakeN() - solved.engineN() + solved.brakeN())
                    / (car.body().massKg() * 9.81));
        }
        assertThat(limits.size()).isGreaterThan(STATES * 9 / 10);
        assertThat(quantile(limits, 0.5)).isLessThan(0.002);
        // some of it is a second limit, higher than the one met from straight ahead
        assertThat(quantile(limits, 0.95)).isLessThan(0.025);
        assertThat(quantile(balances, 0.5)).isLessThan(0.02);
        assertThat(quantile(balances, 0.95)).isLessThan(0.5);
        assertThat(quantile(forces, 0.95)).isLessThan(0.025);
    }

    @ParameterizedTest
    @MethodSource("cars")
    void nodesAreTheEquilibriumItself(CarModel car) {
        Envelope envelope = Envelope.of(car);
        Equilibrium direct = new Equilibrium(car, Axes.PATH);
        double speed = 10.0;
        assertThat(envelope.corneringMps2(speed))
                .isCloseTo(direct.greatestLateral(speed, 0.0).orElseThrow().lateralMps2(), within(0.01));
    }

    @Test
    void aNeighbouringSetupIsTheSameWarmAsCold() {
        Envelope present = Envelope.of(LapCars.winged());
        for (SetupChange change : List.of(
                new SetupChange("front_bar", 4.0, 6.0),
                new SetupChange("rear_wing", 6.0, 9.0),
                new SetupChange("brake_bias_front", 60.0, 63.0),
                new SetupChange("rear_spring", 140.0, 110.0))) {
            CarModel changed = LapCars.winged(change);
            double cold = LapSimulator.lap(Envelope.of(changed), Loops.circuit(2500), 2.0)
                    .timeS();
            double warm = LapSimulator.lap(Envelope.of(changed, present), Loops.circuit(2500), 2.0)
                    .timeS();
            assertThat(warm).as(change.item()).isCloseTo(cold, within(0.02));
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void brakingAndDrivingLeaveLessForCorneringAndTheOtherWayRound(CarModel car) {
        Envelope envelope = Envelope.of(car);
        for (double speed = 5.0; speed < envelope.topSpeedMps(); speed += 3.7) {
            double most = envelope.corneringMps2(speed);
            double braking = Double.NEGATIVE_INFINITY;
            double traction = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= 50; i++) {
                double lateral = most * i / 50.0;
                assertThat(envelope.brakingMps2(speed, lateral)).isBetween(Math.max(braking, -40.0), 0.0);
                assertThat(envelope.tractionMps2(speed, lateral)).isBetween(-1e-9, traction);
                braking = envelope.brakingMps2(speed, lateral) - 0.01;
                traction = envelope.tractionMps2(speed, lateral) + 0.01;
            }
            assertThat(envelope.tractionMps2(speed, most)).isCloseTo(0.0, within(0.02));
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void atTopSpeedTheEngineHoldsWhatResists(CarModel car) {
        double top = Envelope.of(car).topSpeedMps();
        double limiter = car.powertrain().limitMps(car.powertrain().gears() - 1);
        if (top < limiter - 1e-6) {
            assertThat(car.powertrain().driveN(top)).isCloseTo(car.resistanceN(top), within(1.0));
        } else {
            assertThat(car.powertrain().driveN(top - 0.01)).isGreaterThan(car.resistanceN(top - 0.01));
        }
    }

    private static double quantile(List<Double> values, double share) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }
}
