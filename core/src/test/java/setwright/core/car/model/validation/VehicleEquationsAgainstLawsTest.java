package setwright.core.car.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.body.Body.Action;
import setwright.core.car.body.BodyMotion;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Controls;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.model.PlainCars;
import setwright.core.car.model.VehicleEquations;
import setwright.core.car.sums.Gravity;
import setwright.core.car.tyre.Tyre;

/**
 * The equations in time against conservation of momentum and energy, free oscillation in closed form (W. T. Thomson, Theory of
 * Vibration with Applications, from memory) and the order of integrators (E. Hairer, S. P. Norsett, G. Wanner, Solving
 * Ordinary Differential Equations I, from memory).
 */
final class VehicleEquationsAgainstLawsTest {
    private static final Controls NOTHING = Controls.held(0.0, 0.0, 0.0);
    private static final double SPRUNG = 1000.0;
    private static final double ROLL_INERTIA = 400.0;
    private static final double PITCH_INERTIA = 1500.0;
    private static final double HEIGHT = 0.475;
    private static final double TRACK = PlainCars.TRACK;

    /** Roll stiffness of both axles 70 000 N m/rad, 1000 kg 0.475 m above the roll axis, damping as asked. */
    private static CarModel swinging(double damper) {
        double roll = 2.0 * 35_000.0 / (TRACK * TRACK);
        Axle axle = PlainCars.axle(16_000.0, roll - 16_000.0, damper);
        Body body = new Body(SPRUNG, 1.25, 1.35, HEIGHT, axle, axle, ROLL_INERTIA, PITCH_INERTIA);
        MountedTyre tyre = PlainCars.linear(2500.0, 60_000.0);
        return PlainCars.car(body, tyre, tyre, 0.0, 0.6, 1800.0);
    }

    private static double[] after(OrdinaryDifferentialEquation equations, double[] start, double seconds) {
        return new DormandPrince853Integrator(1.0e-9, 0.02, 1.0e-11, 1.0e-11)
                .integrate(equations, new ODEState(0.0, start), seconds)
                .getPrimaryState();
    }

    /** A tyre on ice. */
    private static final class NoTyre implements Tyre {
        @Override
        public double lateral(double slipAngle, double loadN, double inclination, double pressure) {
            return 0.0;
        }

        @Override
        public double longitudinal(double slipRatio, double loadN, double inclination, double pressure) {
            return 0.0;
        }

        @Override
        public double lateralPeak(double loadN, double inclination, double pressure) {
            return 0.0;
        }

        @Override
        public double longitudinalPeak(double loadN, double inclination, double pressure) {
            return 0.0;
        }

        @Override
        public double peakSlipAngle(double loadN, double inclination, double pressure) {
            return 0.1;
        }

        @Override
        public double peakSlipRatio(double loadN, double inclination, double pressure) {
            return 0.1;
        }
    }

    /** Newton's first law: without forces the centre of gravity goes straight on at its speed, however the car spins. */
    @Test
    void withoutTyreForcesTheCarGoesStraightOn() {
        VehicleEquations equations =
                new VehicleEquations(swinging(2000.0), Controls.held(0.2, 3000.0, 1000.0), new NoTyre(), new NoTyre());
        double[] start = VehicleEquations.straight(30.0);
        start[VehicleEquations.LATERAL] = 2.0;
        start[VehicleEquations.YAW_RATE] = 0.3;
        start[VehicleEquations.ROLL] = 0.02;
        double[] end = after(equations, start, 3.0);
        assertThat(end[VehicleEquations.X]).isCloseTo(90.0, within(1.0e-7));
        assertThat(end[VehicleEquations.Y]).isCloseTo(6.0, within(1.0e-7));
        assertThat(Math.hypot(end[VehicleEquations.FORWARD], end[VehicleEquations.LATERAL]))
                .isCloseTo(Math.hypot(30.0, 2.0), within(1.0e-8));
        assertThat(end[VehicleEquations.YAW_RATE]).isCloseTo(0.3, within(1.0e-12));
        assertThat(end[VehicleEquations.HEADING]).isCloseTo(0.9, within(1.0e-9));
    }

    /** Angular momentum about the ground's origin and momentum change by what the tyres give: impulse over a turn. */
    @Test
    void impulseOfTheTyresTurnsThePath() {
        CarModel car = swinging(2000.0);
        VehicleEquations equations = new VehicleEquations(car, Controls.held(0.02, 0.0, 0.0));
        double[] state = VehicleEquations.straight(25.0);
        double impulseX = 0.0;
        double impulseY = 0.0;
        double step = 1.0e-3;
        for (int k = 0; k < 1500; k++) {
            double[] middle = after(equations, state, 0.5 * step);
            Action action = equations.action(0.0, middle);
            double heading = middle[VehicleEquations.HEADING];
            double mass = car.body().massKg();
            impulseX +=
                    step * mass * (action.forwardMps2() * Math.cos(heading) - action.lateralMps2() * Math.sin(heading));
            impulseY +=
                    step * mass * (action.forwardMps2() * Math.sin(heading) + action.lateralMps2() * Math.cos(heading));
            state = after(equations, state, step);
        }
        double heading = state[VehicleEquations.HEADING];
        double vx = state[VehicleEquations.FORWARD] * Math.cos(heading)
                - state[VehicleEquations.LATERAL] * Math.sin(heading);
        double vy = state[VehicleEquations.FORWARD] * Math.sin(heading)
                + state[VehicleEquations.LATERAL] * Math.cos(heading);
        assertThat(vy).isGreaterThan(3.0);
        assertThat(car.body().massKg() * (vx - 25.0)).isCloseTo(impulseX, within(0.5));
        assertThat(car.body().massKg() * vy).isCloseTo(impulseY, within(0.5));
    }

    private static double energy(CarModel car, double[] s) {
        Body body = car.body();
        double front = s[VehicleEquations.HEAVE] - body.toFrontM() * s[VehicleEquations.PITCH];
        double rear = s[VehicleEquations.HEAVE] + body.toRearM() * s[VehicleEquations.PITCH];
        double roll = s[VehicleEquations.ROLL];
        double moving = 0.5 * SPRUNG * Math.pow(s[VehicleEquations.HEAVE_RATE], 2)
                + 0.5 * PITCH_INERTIA * Math.pow(s[VehicleEquations.PITCH_RATE], 2)
                + 0.5 * ROLL_INERTIA * Math.pow(s[VehicleEquations.ROLL_RATE], 2);
        double springs = 16_000.0 * (front * front + rear * rear) + 0.5 * 70_000.0 * roll * roll;
        return moving + springs - 0.5 * SPRUNG * Gravity.STANDARD_MPS2 * HEIGHT * roll * roll;
    }

    private static double[] swung() {
        double[] start = VehicleEquations.straight(20.0);
        start[VehicleEquations.HEAVE] = 0.02;
        start[VehicleEquations.PITCH] = -0.01;
        start[VehicleEquations.ROLL] = 0.03;
        start[VehicleEquations.PITCH_RATE] = 0.1;
        return start;
    }

    @Test
    void withoutDampersEnergyStays() {
        CarModel car = swinging(0.0);
        double[] end = after(new VehicleEquations(car, NOTHING), swung(), 10.0);
        assertThat(energy(car, end)).isCloseTo(energy(car, swung()), within(1.0e-6 * energy(car, swung())));
        assertThat(end[VehicleEquations.FORWARD]).isCloseTo(20.0, within(1.0e-9));
    }

    @Test
    void dampersTakeWhatEnergyFallsBy() {
        double slope = 1500.0;
        CarModel car = swinging(slope);
        VehicleEquations equations = new VehicleEquations(car, NOTHING);
        Body body = car.body();
        double[] state = swung();
        double step = 1.0e-3;
        double work = 0.0;
        for (int k = 0; k < 600; k++) {
            double[] next = after(equations, state, step);
            double[] middle = after(equations, state, 0.5 * step);
            work += step
                    / 6.0
                    * (power(body, slope, state) + 4.0 * power(body, slope, middle) + power(body, slope, next));
            state = next;
        }
        double lost = energy(car, swung()) - energy(car, state);
        assertThat(lost).isGreaterThan(0.5 * energy(car, swung()));
        assertThat(lost).isCloseTo(work, within(1.0e-6 * work));
    }

    private static double power(Body body, double slope, double[] s) {
        double sum = 0.0;
        for (double x : new double[] {body.toFrontM(), -body.toRearM()}) {
            for (double y : new double[] {0.5 * TRACK, -0.5 * TRACK}) {
                double speed = s[VehicleEquations.HEAVE_RATE]
                        - x * s[VehicleEquations.PITCH_RATE]
                        + y * s[VehicleEquations.ROLL_RATE];
                sum += slope * speed * speed;
            }
        }
        return sum;
    }

    /**
     * Roll: I 400 kg m2, 70 000 N m/rad, 1000 kg 0.475 m above its axis, 4000 N m s/rad: 12.781 rad/s undamped, ratio 0.3912. Four
     * dampers c at half the track make {@code c t^2}.
     */
    @Test
    void rollSwingsAsInClosedForm() {
        CarModel car = swinging(4000.0 / (TRACK * TRACK));
        double natural = 12.781;
        double ratio = 0.3912;
        double damped = natural * Math.sqrt(1.0 - ratio * ratio);
        double[] start = VehicleEquations.straight(20.0);
        start[VehicleEquations.ROLL] = 0.03;
        for (double time : new double[] {0.05, 0.15, 0.3, 0.6}) {
            double expected = 0.03
                    * Math.exp(-ratio * natural * time)
                    * (Math.cos(damped * time) + ratio * natural / damped * Math.sin(damped * time));
            double[] end = after(new VehicleEquations(car, NOTHING), start, time);
            // the published figures are rounded to four digits
            assertThat(end[VehicleEquations.ROLL]).isCloseTo(expected, within(2.0e-5));
        }
    }

    /** Heave: 250 kg a corner on 16 000 N/m; 4000 N s/m would be critical, so 1600 N s/m is a ratio of 0.4. */
    @Test
    void heaveDiesAtItsDampingRatio() {
        Axle axle = PlainCars.axle(16_000.0, 0.0, 1600.0);
        Body body = new Body(SPRUNG, 1.3, 1.3, HEIGHT, axle, axle, ROLL_INERTIA, PITCH_INERTIA);
        MountedTyre tyre = PlainCars.linear(2500.0, 60_000.0);
        CarModel car = PlainCars.car(body, tyre, tyre, 0.0, 0.6, 1800.0);
        double[] start = VehicleEquations.straight(20.0);
        start[VehicleEquations.HEAVE] = 0.02;
        double damped = 8.0 * Math.sqrt(1.0 - 0.16);
        double[] end = after(new VehicleEquations(car, NOTHING), start, 2.0 * Math.PI / damped);
        assertThat(end[VehicleEquations.HEAVE])
                .isCloseTo(0.02 * Math.exp(-2.0 * Math.PI * 0.4 / Math.sqrt(0.84)), within(1.0e-8));
    }

    private static final Controls WEAVE = new Controls() {
        @Override
        public double steerRad(double timeS) {
            return 0.03 * Math.sin(4.0 * timeS);
        }

        @Override
        public double engineN(double timeS) {
            return 1500.0 + 500.0 * Math.cos(3.0 * timeS);
        }

        @Override
        public double brakeN(double timeS) {
            return 0.0;
        }
    };

    /** Halving the step of the classical Runge-Kutta method divides the error by sixteen. */
    @Test
    void errorsFallWithTheFourthPowerOfTheStep() {
        VehicleEquations equations = new VehicleEquations(swinging(1500.0), WEAVE);
        double[] start = VehicleEquations.straight(25.0);
        double[] exact = after(equations, start, 1.0);
        List<Double> errors = new ArrayList<>();
        for (double step : new double[] {0.02, 0.01, 0.005}) {
            double[] end = new ClassicalRungeKuttaIntegrator(step)
                    .integrate(equations, new ODEState(0.0, start), 1.0)
                    .getPrimaryState();
            errors.add(Math.hypot(
                    end[VehicleEquations.YAW_RATE] - exact[VehicleEquations.YAW_RATE],
                    end[VehicleEquations.ROLL] - exact[VehicleEquations.ROLL]));
        }
        assertThat(order(errors.get(0), errors.get(1))).isCloseTo(4.0, within(0.4));
        assertThat(order(errors.get(1), errors.get(2))).isCloseTo(4.0, within(0.4));
    }

    /** The step of the replay is of first order, and goes to where the equations go. */
    @Test
    void stepOfTheReplayTendsToTheEquations() {
        CarModel car = swinging(1500.0);
        VehicleEquations equations = new VehicleEquations(car, WEAVE);
        double[] end = after(equations, VehicleEquations.straight(25.0), 1.0);
        double[] exact = equations.loadsN(1.0, end);
        List<Double> errors = new ArrayList<>();
        for (int steps : new int[] {200, 400, 800}) {
            errors.add(error(car, equations, steps, exact));
        }
        assertThat(order(errors.get(0), errors.get(1))).isCloseTo(1.0, within(0.15));
        assertThat(order(errors.get(1), errors.get(2))).isCloseTo(1.0, within(0.15));
        // at 200 steps a second the loads are right to a hundredth of a wheel's
        assertThat(errors.get(0)).isLessThan(25.0);
    }

    private static double error(CarModel car, VehicleEquations equations, int steps, double[] exact) {
        BodyMotion motion = new BodyMotion(car.body());
        motion.settle(new Action(0.0, 0.0, 0.0, 0.0, 0.0, 0.0));
        double step = 1.0 / steps;
        double[] state = VehicleEquations.straight(25.0);
        for (int k = 0; k < steps; k++) {
            state = new DormandPrince853Integrator(1.0e-9, 0.02, 1.0e-11, 1.0e-11)
                    .integrate(equations, new ODEState(k * step, state), (k + 1) * step)
                    .getPrimaryState();
            motion.step(step, equations.action((k + 1) * step, state));
        }
        double most = 0.0;
        for (int wheel = 0; wheel < 4; wheel++) {
            most = Math.max(most, Math.abs(motion.loadN(wheel) - exact[wheel]));
        }
        return most;
    }

    private static double order(double coarse, double fine) {
        return Math.log(coarse / fine) / Math.log(2.0);
    }
}
