package setwright.core.car.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Controls;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.model.PlainCars;
import setwright.core.car.model.SingleTrack;
import setwright.core.car.model.SteadyState;
import setwright.core.car.model.StepResponse;
import setwright.core.car.model.VehicleEquations;
import setwright.core.car.sums.Gravity;
import setwright.core.car.tyre.RaceTyre;

/**
 * The four-wheel car in its linear range against the single-track car in closed form, by the manoeuvres of ISO 4138 (steady
 * circle: constant radius 100 m, constant speed, constant steer) and ISO 7401 (step steer), quantities from memory. Roll is
 * stiff and the centre of gravity on the ground, so that neither roll nor load transfer enters.
 */
final class LinearRangeAgainstSingleTrackTest {
    private static final double STIFFNESS = 60_000.0;
    private static final double RACING = 240_000.0;

    private static SingleTrack track(double a, double b) {
        return new SingleTrack(1600.0, 3600.0, a, b, STIFFNESS, STIFFNESS);
    }

    /** Mass 1600 kg, 3600 kg m2, 60 kN/rad an axle: H. B. Pacejka, Tire and Vehicle Dynamics, Table 1.1, from memory. */
    private static CarModel car(double a, double b) {
        return car(a, b, STIFFNESS);
    }

    private static CarModel car(double a, double b, double stiffness) {
        Axle axle = PlainCars.axle(PlainCars.RIGID * 1.0e-2, PlainCars.RIGID * 1.0e-2, 20_000.0);
        Body body = new Body(1600.0, a, b, 0.01, axle, axle, 500.0, 2500.0);
        return PlainCars.car(
                body,
                PlainCars.linear(1600.0 * 9.81 * 0.25, 0.5 * stiffness),
                PlainCars.linear(1600.0 * 9.81 * 0.25, 0.5 * stiffness),
                0.0,
                0.6,
                3600.0);
    }

    /** Slope of steer over lateral acceleration on 100 m between 2 and 4 m/s2; dL/dR is nothing on a constant radius. */
    @ParameterizedTest
    @CsvSource({"1.4, 1.6", "1.6, 1.4", "1.3, 1.7"})
    void constantRadius(double a, double b) {
        // four times the textbook's stiffness: a racing tyre, hardly bent at 4 m/s2
        Equilibrium stiff = new Equilibrium(car(a, b, RACING), Equilibrium.Axes.PATH);
        double gradient = (steerOnCircle(stiff, 4.0) - steerOnCircle(stiff, 2.0)) / 2.0;
        // stiffness is that of the tyre's own curve between the same forces
        double frontStiffness = axleStiffness(1600.0 * b / (a + b));
        double rearStiffness = axleStiffness(1600.0 * a / (a + b));
        double closed = 1600.0 / (a + b) * (b / frontStiffness - a / rearStiffness);
        assertThat(gradient).isCloseTo(closed, within(0.01 * Math.abs(closed)));
        // and in the limit of gentle driving the textbook's number itself
        Equilibrium equilibrium = new Equilibrium(car(a, b), Equilibrium.Axes.PATH);
        double gentle = (steerOnCircle(equilibrium, 0.2) - steerOnCircle(equilibrium, 0.1)) / 0.1;
        assertThat(gentle)
                .isCloseTo(
                        track(a, b).understeerGradient(),
                        within(0.01 * Math.abs(track(a, b).understeerGradient())));
    }

    private static double steerOnCircle(Equilibrium equilibrium, double lateral) {
        return equilibrium
                .at(Math.sqrt(100.0 * lateral), 0.0, lateral)
                .orElseThrow()
                .steerRad();
    }

    private static double axleStiffness(double axleMass) {
        RaceTyre tyre = car(1.5, 1.5, RACING).front().tyre();
        double load = 0.5 * axleMass * Gravity.STANDARD_MPS2;
        double low = tyre.slipAngleGiven(0.5 * axleMass * 2.0, 0.0, load, 0.0, 1.0);
        double high = tyre.slipAngleGiven(0.5 * axleMass * 4.0, 0.0, load, 0.0, 1.0);
        return axleMass * 2.0 / (high - low);
    }

    /** Constant radius, constant speed and constant steer tell the same gradient. */
    @ParameterizedTest
    @CsvSource({"1.4, 1.6", "1.3, 1.7"})
    void threeMethodsAgree(double a, double b) {
        double gradient = track(a, b).understeerGradient();
        Equilibrium equilibrium = new Equilibrium(car(a, b), Equilibrium.Axes.PATH);
        double speed = 25.0;
        double wheelbase = a + b;
        SteadyState one = equilibrium.at(speed, 0.0, 0.2).orElseThrow();
        SteadyState two = equilibrium.at(speed, 0.0, 0.4).orElseThrow();
        double constantSpeed = (two.steerRad() - one.steerRad()) / 0.2 - wheelbase / (speed * speed);
        assertThat(constantSpeed).isCloseTo(gradient, within(0.01 * gradient));
        double steer = 0.002;
        SteadyState slow = equilibrium.atSteer(10.0, 0.0, steer).orElseThrow();
        SteadyState fast = equilibrium.atSteer(20.0, 0.0, steer).orElseThrow();
        double slowLength = wheelbase * slow.yawRate() / slow.speedMps();
        double fastLength = wheelbase * fast.yawRate() / fast.speedMps();
        double constantSteer = -(fastLength - slowLength) / (fast.lateralMps2() - slow.lateralMps2());
        assertThat(constantSteer).isCloseTo(gradient, within(0.01 * gradient));
    }

    /** 100 m at 25 m/s is 6.25 m/s2: balance 0.011111 rad, steer 0.041111 rad for linear tyres; here driven gently. */
    @Test
    void gainsOfTheTextbookCar() {
        Equilibrium equilibrium = new Equilibrium(car(1.4, 1.6), Equilibrium.Axes.PATH);
        SteadyState state = equilibrium.at(25.0, 0.0, 0.625).orElseThrow();
        assertThat(state.balanceRad()).isCloseTo(0.0011111, within(1.0e-2 * 0.0011111));
        assertThat(state.steerRad()).isCloseTo(0.0041111, within(5.0e-3 * 0.0041111));
        SteadyState atTwenty = equilibrium.atSteer(20.0, 0.0, 0.001).orElseThrow();
        assertThat(atTwenty.yawRate()).isCloseTo(0.001 * 5.3892, within(1.0e-3 * 0.0053892));
        assertThat(atTwenty.sideslipRad()).isCloseTo(-0.001 * 0.91018, within(2.0e-3 * 0.00091018));
    }

    /** Response time, time and height of the first peak of yaw rate after a step of steer. */
    @ParameterizedTest
    @ValueSource(doubles = {22.2222, 30.0, 40.0})
    void stepSteer(double speed) {
        double steer = 0.0005;
        StepResponse closed = track(1.4, 1.6).yawRateStep(speed).orElseThrow();
        VehicleEquations equations = new VehicleEquations(car(1.4, 1.6), Controls.held(steer, 0.0, 0.0));
        double step = 0.002;
        double[] state = VehicleEquations.straight(speed);
        double steady = steer * closed.steady();
        double responded = Double.NaN;
        double peak = 0.0;
        double peakTime = 0.0;
        double before = 0.0;
        for (int k = 1; k <= 2500; k++) {
            state = new DormandPrince853Integrator(1.0e-9, 0.02, 1.0e-11, 1.0e-11)
                    .integrate(equations, new ODEState(0.0, state), step)
                    .getPrimaryState();
            double yawRate = state[VehicleEquations.YAW_RATE];
            if (Double.isNaN(responded) && yawRate >= 0.9 * steady) {
                responded = step * (k - 1 + (0.9 * steady - before) / (yawRate - before));
            }
            if (yawRate > peak) {
                peak = yawRate;
                peakTime = step * k;
            }
            before = yawRate;
        }
        assertThat(before).isCloseTo(steady, within(2.0e-3 * steady));
        assertThat(responded).isCloseTo(closed.responseTimeS(), within(0.005));
        assertThat(peakTime).isCloseTo(closed.peakTimeS().orElseThrow(), within(0.01));
        assertThat(peak / steady - 1.0).isCloseTo(closed.overshoot(), within(0.005));
    }

    /** A steady state of the solver is one of the equations in time. */
    @Test
    void equilibriumStaysWhereItIs() {
        Axle axle = PlainCars.axle(40_000.0, 20_000.0, PlainCars.damper(2000.0), 0.08, 0.2, 1.5);
        Body body = new Body(1200.0, 1.25, 1.35, 0.5, axle, axle, 400.0, 1500.0);
        MountedTyre tyre = PlainCars.linear(3000.0, 60_000.0);
        CarModel car = PlainCars.car(body, tyre, tyre, 0.0, 0.6, 1500.0, 0.5, 0.6, 1.2);
        for (double lateral : new double[] {-6.0, 3.0, 8.0}) {
            SteadyState state = new Equilibrium(car, Equilibrium.Axes.PATH)
                    .at(35.0, 0.0, lateral)
                    .orElseThrow();
            double[] change = new VehicleEquations(car, state.controls()).computeDerivatives(0.0, state.state());
            for (int i = VehicleEquations.FORWARD; i < change.length; i++) {
                assertThat(change[i])
                        .as("derivative %d at %.0f m/s2", i, lateral)
                        .isCloseTo(0.0, within(1.0e-6));
            }
            assertThat(state.state()[VehicleEquations.YAW_RATE]).isCloseTo(lateral / 35.0, within(1.0e-9));
        }
    }
}
