package setwright.core.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import setwright.core.car.drive.Powertrain;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Moment;

final class TimeGainTest {
    private static final double RADIUS_M = 60.0;
    private static final double STRAIGHT = Double.POSITIVE_INFINITY;
    /** As the replay reads its force table: a logger and a limiter disagree by about this share. */
    private static final double SLACK = 1.02;

    /** One gear, so that force is smooth over speed. */
    private final CarModel car = Moments.withPowertrain(
            Moments.car(),
            new Powertrain(
                    new double[] {50.0, 400.0, 800.0},
                    new double[] {350.0, 330.0, 300.0},
                    new double[] {1.0},
                    3.0,
                    0.3,
                    800.0,
                    790.0,
                    0.9));

    @Test
    void whatChangesNothingIsWorthExactlyNothing() {
        DrivenLap lap = Moments.lap(cornerStraightBrake(car, 200));
        TimeGain gain = new TimeGain(lap, car);
        assertThat(gain.faster(new double[lap.size()], car)).containsOnly(0.0);
        assertThat(gain.time()).containsOnly(0.0);
    }

    @Test
    void onACircleTheTimeGoesWithTheRootOfTheScale() {
        double speed = 30.0;
        DrivenLap lap = Moments.lap(Collections.nCopies(300, Moments.moment(speed, 0.0, RADIUS_M, 0.5, 0.0)));
        for (double scale : new double[] {-0.02, 0.005, 0.02}) {
            double[] scales = new double[lap.size()];
            Arrays.fill(scales, scale);
            TimeGain gain = new TimeGain(lap, car);
            gain.faster(scales, car);
            double change = Arrays.stream(gain.time()).sum() / (lap.size() * Moments.STEP_S);
            // t = 2 pi sqrt(R / (lambda a)); the law is linear in the scale, so it is off by its square; and the tyres
            // also
            // hold against the air, whose share of the whole acceleration is squared
            double air = car.resistanceN(speed) / car.body().massKg() * RADIUS_M / speed / speed;
            assertThat(change)
                    .as("scale %s", scale)
                    .isCloseTo(Math.exp(-0.5 * scale) - 1.0, within(scale * scale + air * air * Math.abs(scale)));
        }
    }

    @Test
    void lessDragOnAStraightIsWorthWhatTheEquationOfMotionSays() {
        CarModel slippery = Moments.withDrag(car, 0.8 * car.aero().dragM2());
        int moments = 250;
        DrivenLap lap = Moments.lap(cornerStraightBrake(car, moments));
        TimeGain gain = new TimeGain(lap, car);
        double[] faster = gain.faster(new double[lap.size()], slippery);
        int end = 100 + moments - 1;
        double start = lap.moments().get(100).speed();
        double length = lap.station()[end] - lap.station()[100];
        double driven = lap.moments().get(end).speed();
        double other = speedAfter(slippery, start, length);
        double expected = other * other / driven / driven - 1.0;
        assertThat(expected).isGreaterThan(0.02);
        // steps of a logger against an exact integration: half a step times the rate 2 a / v at the start, about 1 %,
        // twice
        assertThat(faster[end]).isCloseTo(expected, within(0.02 * expected));
    }

    @Test
    void gripInACornerIsCarriedDownTheStraightAndFades() {
        DrivenLap lap = Moments.lap(cornerStraightBrake(car, 200));
        double[] scale = new double[lap.size()];
        Arrays.fill(scale, 0, 100, 0.01);
        double[] faster = new TimeGain(lap, car).faster(scale, car);
        assertThat(faster[99]).isCloseTo(0.01, within(0.001));
        for (int k = 101; k < 300; k++) {
            assertThat(faster[k]).isPositive().isLessThan(faster[k - 1]);
        }
    }

    /** A corner of 100 moments at constant speed, a straight at full throttle, and the brake back to the corner's speed. */
    private static List<Moment> cornerStraightBrake(CarModel car, int straight) {
        double speed = 30.0;
        List<Moment> moments =
                new ArrayList<>(Collections.nCopies(100, Moments.moment(speed, 0.0, RADIUS_M, 0.5, 0.0)));
        for (int k = 0; k < straight; k++) {
            // mean acceleration over the step, so that distance and speed go together
            double next = speedAfterTime(car, speed, Moments.STEP_S);
            moments.add(Moments.moment(speed, (next - speed) / Moments.STEP_S, STRAIGHT, 1.0, 0.0));
            speed = next;
        }
        while (speed > 30.0) {
            moments.add(Moments.moment(speed, -9.0, STRAIGHT, 0.0, 0.8));
            speed -= 9.0 * Moments.STEP_S;
        }
        return moments;
    }

    private static double acceleration(CarModel car, double speed) {
        return (car.powertrain().driveN(speed / SLACK) - car.resistanceN(speed))
                / car.body().massKg();
    }

    private static double speedAfterTime(CarModel car, double speed, double time) {
        return integrated(speed, time, v -> acceleration(car, v));
    }

    private static double speedAfter(CarModel car, double speed, double length) {
        return integrated(speed, length, v -> acceleration(car, v) / v);
    }

    private static double integrated(double from, double to, DoubleUnaryOperator slope) {
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                return new double[] {slope.applyAsDouble(y[0])};
            }
        };
        return new DormandPrince853Integrator(1.0e-6, to, 1.0e-9, 1.0e-9)
                .integrate(equation, new ODEState(0.0, new double[] {from}), to)
                .getPrimaryState()[0];
    }
}
