package setwright.core.car.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.model.SingleTrack;
import setwright.core.car.model.StepResponse;

/**
 * The closed forms against the equations of motion themselves (single-track model, e.g. Milliken and Milliken, Race Car
 * Vehicle Dynamics, SAE 1995, ch. 5, from memory), integrated in time. The car is the example of H. B. Pacejka, Tire and
 * Vehicle Dynamics, Table 1.1 (from memory).
 */
final class SingleTrackAgainstIntegrationTest {
    private static final double MASS = 1600.0;
    private static final double INERTIA = 3600.0;
    private static final double A = 1.4;
    private static final double B = 1.6;
    private static final double FRONT = 60_000.0;
    private static final double REAR = 60_000.0;
    private static final SingleTrack CAR = new SingleTrack(MASS, INERTIA, A, B, FRONT, REAR);

    private record Motion(double speed, double steer) implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return 2;
        }

        @Override
        public double[] computeDerivatives(double time, double[] state) {
            double beta = state[0];
            double yawRate = state[1];
            double front = FRONT * (steer - beta - A * yawRate / speed);
            double rear = REAR * (B * yawRate / speed - beta);
            return new double[] {
                (front + rear) / (MASS * speed) - yawRate, (A * front - B * rear) / INERTIA,
            };
        }

        double[] after(double seconds) {
            return new DormandPrince853Integrator(1.0e-9, 0.1, 1.0e-12, 1.0e-12)
                    .integrate(this, new ODEState(0.0, new double[2]), seconds)
                    .getPrimaryState();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {5.0, 15.0, 22.2, 30.0, 60.0})
    void stepResponseIsTheMotion(double speed) {
        StepResponse step = CAR.yawRateStep(speed).orElseThrow();
        Motion motion = new Motion(speed, 1.0);
        for (double time : new double[] {0.02, 0.1, 0.3, 0.7, 1.5, 4.0}) {
            assertThat(step.at(time)).isCloseTo(motion.after(time)[1], within(1.0e-8));
        }
        double responseTime = step.responseTimeS();
        assertThat(motion.after(responseTime)[1]).isCloseTo(0.9 * CAR.yawGain(speed), within(1.0e-8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10.0, 25.0, 40.0})
    void steadyGainsAreTheEndOfTheMotion(double speed) {
        double[] end = new Motion(speed, 0.02).after(60.0);
        assertThat(end[1]).isCloseTo(0.02 * CAR.yawGain(speed), within(1.0e-9));
        assertThat(end[0]).isCloseTo(0.02 * CAR.sideslipGain(speed), within(1.0e-9));
    }

    /** Constant radius of ISO 4138: 100 m at 25 m/s; the balance is the gradient times the lateral acceleration. */
    @Test
    void balanceOnACircleIsGradientTimesLateralAcceleration() {
        double speed = 25.0;
        double radius = 100.0;
        double steer = CAR.steerAngle(radius, speed);
        assertThat(steer).isCloseTo(0.041111, within(1.0e-4 * 0.041111));
        double[] end = new Motion(speed, steer).after(60.0);
        double yawRate = end[1];
        assertThat(yawRate * speed).isCloseTo(6.25, within(1.0e-4 * 6.25));
        double balance = steer - (A + B) * yawRate / speed;
        assertThat(balance).isCloseTo(0.011111, within(1.0e-4 * 0.011111));
        assertThat(Math.toDegrees(balance)).isCloseTo(0.6366, within(1.0e-4));
        assertThat(CAR.slipDifference(6.25, 0.0)).isCloseTo(balance, within(1.0e-9));
    }
}
