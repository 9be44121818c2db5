package setwright.core.car.model.validation.signs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Cornering;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.Limit;
import setwright.core.car.model.Moment;
import setwright.core.car.model.SteadyState;
import setwright.core.car.sums.Gravity;

/** The same state by the equations of motion and by the replay, which reads forces off the motion and inverts the tyres. */
final class EquilibriumAgainstReplayTest {

    @ParameterizedTest
    @CsvSource({
        "TOURER, 0.5, 0", "TOURER, 0.85, 0", "TOURER, 0.6, 2.5", "TOURER, 0.6, -4", "HATCH, 0.5, 0", "HATCH, 0.85, 0",
        "HATCH, 0.6, 2.5", "HATCH, 0.6, -4", "WINGED, 0.5, 0", "WINGED, 0.85, 0", "WINGED, 0.6, 2.5", "WINGED, 0.6, -4"
    })
    void slipAnglesAgree(InventedCar which, double share, double forward) {
        CarModel car = which.car();
        Equilibrium equilibrium = new Equilibrium(car);
        double speed = which.speedMps;
        double lateral =
                share * equilibrium.greatestLateral(speed, 0.0).orElseThrow().lateralMps2();
        SteadyState state = equilibrium.at(speed, forward, lateral).orElseThrow();
        Moment moment = new Moment(
                speed,
                forward,
                lateral,
                state.yawRate(),
                0.0,
                state.steerRad(),
                state.engineN() > 0.0 ? 0.4 : 0.0,
                state.brakeN() > 0.0 ? 0.5 : 0.0);
        double[] loads =
                state.loadsN().stream().mapToDouble(Double::doubleValue).toArray();
        Cornering cornering = new Cornering(car);
        cornering.at(moment, loads, 0, 1.0);
        // the replay's tyre is the full one to 2 % in its slip angle, and has one slip angle for both wheels of an axle
        double tolerance = Math.toRadians(0.05) + 0.04 * state.frontSlipRad();
        assertThat(cornering.frontSlip()).isCloseTo(state.frontSlipRad(), within(tolerance));
        assertThat(cornering.rearSlip()).isCloseTo(state.rearSlipRad(), within(tolerance));
        double weight = car.body().massKg() * Gravity.STANDARD_MPS2;
        double lift = car.liftFrontN(speed, rise(state, car, true), rise(state, car, false))
                + car.liftRearN(speed, rise(state, car, true), rise(state, car, false));
        assertThat(state.loadsN().stream().mapToDouble(Double::doubleValue).sum())
                .isCloseTo(weight + lift, within(1.0e-6 * weight));
    }

    private static double rise(SteadyState state, CarModel car, boolean front) {
        return front
                ? state.heaveM() - car.body().toFrontM() * state.pitchRad()
                : state.heaveM() + car.body().toRearM() * state.pitchRad();
    }

    /** Up to its limit there is a state, beyond it there is none; braking and driving cost lateral force. */
    @ParameterizedTest
    @EnumSource(InventedCar.class)
    void thereIsAStateUpToTheLimitOnly(InventedCar which) {
        Equilibrium equilibrium = new Equilibrium(which.car());
        double free =
                equilibrium.greatestLateral(which.speedMps, 0.0).orElseThrow().lateralMps2();
        for (double forward : new double[] {-6.0, -3.0, 0.0, 2.0}) {
            Limit limit = equilibrium.greatestLateral(which.speedMps, forward).orElseThrow();
            double most = limit.lateralMps2();
            assertThat(most).isLessThan(free + 0.3);
            for (double share : new double[] {0.2, 0.6, 0.9, 0.99, 0.999}) {
                Optional<SteadyState> state = equilibrium.at(which.speedMps, forward, share * most);
                assertThat(state)
                        .as("at %.3f of the limit with %.0f m/s2", share, forward)
                        .isPresent();
                assertThat(state.orElseThrow().lateralMps2()).isCloseTo(share * most, within(1.0e-4));
            }
            assertThat(equilibrium.at(which.speedMps, forward, -0.999 * most)).isPresent();
            assertThat(equilibrium.at(which.speedMps, forward, 1.001 * most)).isEmpty();
        }
        assertThat(equilibrium.greatestLateral(which.speedMps, -40.0)).isEmpty();
    }

    /** A steering angle and the lateral acceleration that comes of it name the same state. */
    @ParameterizedTest
    @EnumSource(InventedCar.class)
    void steerAndLateralAccelerationNameTheSameState(InventedCar which) {
        Equilibrium equilibrium = new Equilibrium(which.car());
        SteadyState state = equilibrium.at(which.speedMps, 0.0, 6.0).orElseThrow();
        SteadyState same =
                equilibrium.atSteer(which.speedMps, 0.0, state.steerRad()).orElseThrow();
        assertThat(same.lateralMps2()).isCloseTo(6.0, within(1.0e-6));
        assertThat(same.sideslipRad()).isCloseTo(state.sideslipRad(), within(1.0e-8));
    }
}
