package setwright.core.car.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.aero.AeroMap;
import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.drive.Differential;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Controls;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.End;
import setwright.core.car.model.Equilibrium.Limit;
import setwright.core.car.model.PlainCars;
import setwright.core.car.model.SteadyState;
import setwright.core.car.model.VehicleEquations;
import setwright.core.car.tyre.MagicFormula1987;

/**
 * The four-wheel car in steady state on the tyre of Bakker, Nyborg and Pacejka (SAE 870421, 1987) against a table computed
 * outside the project from the axle formulas (friction ellipse, load transfer by roll stiffness share, slip angles alike left
 * and right, small steer). Car: 1200 kg, a 1.25 m, b 1.35 m, h 0.5 m, tracks 1.5 m, roll centres on the ground.
 *
 * <p>The table neglects steer: asked of the equations in time at a state without any, they agree. In the equilibrium a
 * steered front's force leans back and its outer wheel turns the car out; that shows beyond 6 m/s2. The table
 * has one ellipse for an axle, the car one for each wheel, of which the inner one gives out first: the tolerances with
 * longitudinal force grow with what it takes.
 */
final class FourWheelsAgainstPublishedTyreTest {
    private static final double SPEED = 500.0;
    /** Of the table, degrees and m/s2. */
    private static final double ANGLE = 0.01;

    /** Steer of 4 to 6 degrees at the limit: leaning back costs 0.6 %, turning out up to twice as much. */
    private static final double LIMIT_SHARE = 0.022;

    /** Of the balance near the limit: a per cent more force needs a tenth more slip there. */
    private static final double NEAR_LIMIT_SHARE = 0.1;

    /** Ellipse of each wheel against ellipse of the axle. */
    private static final double ELLIPSE_SHARE = 0.2;

    private record Car(
            double chi,
            double a,
            double height,
            double frontTrack,
            double rearTrack,
            double driveFront,
            double brakeFront,
            double liftFrontM2,
            double liftRearM2) {

        static Car usual() {
            return new Car(0.5, 1.25, 0.5, 1.5, 1.5, 0.0, 0.6, 0.0, 0.0);
        }

        static Car stiffness(double chi) {
            return new Car(chi, 1.25, 0.5, 1.5, 1.5, 0.0, 0.6, 0.0, 0.0);
        }

        Equilibrium equilibrium() {
            MagicFormula1987 published = new MagicFormula1987();
            return new Equilibrium(model(), Equilibrium.Axes.CAR, published, published);
        }

        CarModel model() {
            // The table splits the roll moment of the whole car; K phi is what an axle takes of it.
            Body body = new Body(
                    1200.0, a, 2.6 - a, height, rolling(chi, frontTrack), rolling(1.0 - chi, rearTrack), 400.0, 1500.0);
            var tyre = PlainCars.linear(3000.0, 60_000.0);
            // air as thick as at 50 m/s there
            double density = 1.2 * Math.pow(50.0 / SPEED, 2);
            return PlainCars.car(
                    body,
                    tyre,
                    tyre,
                    driveFront,
                    brakeFront,
                    1500.0,
                    new AeroMap(liftFrontM2, liftRearM2, 0.0, 0.1, 0.1, 0.0, 0.0, 0.0, density),
                    new Differential(0.0, 0.0, 0.0));
        }

        private static Axle rolling(double share, double track) {
            double rate = PlainCars.RIGID;
            double wanted = 2.0 * share * rate * 2.25 / (track * track);
            return PlainCars.axle(0.1 * rate, wanted - 0.1 * rate, PlainCars.damper(1.0), 0.0, 0.0, track);
        }
    }

    /** Slip angles at which the car without steer has this lateral acceleration and does not turn faster, rad. */
    private static double[] slipsWithoutSteer(CarModel car, double lateral) {
        MagicFormula1987 published = new MagicFormula1987();
        VehicleEquations equations = new VehicleEquations(car, Controls.held(0.0, 0.0, 0.0), published, published);
        double[] state = VehicleEquations.straight(SPEED);
        double a = car.body().toFrontM();
        double b = car.body().toRearM();
        double mass = car.body().massKg();
        double front = 0.0;
        double rear = 0.0;
        // axle by axle: what is missing of the force, over a slope that is never too flat
        for (int i = 0; i < 4000; i++) {
            double turning = (rear - front) * SPEED / (a + b);
            state[VehicleEquations.YAW_RATE] = turning;
            state[VehicleEquations.LATERAL] = -front * SPEED - a * turning;
            settle(equations, state, car);
            double[] change = equations.computeDerivatives(0.0, state);
            double across = change[VehicleEquations.LATERAL] + SPEED * turning;
            double turn = car.yawInertiaKgM2() * change[VehicleEquations.YAW_RATE];
            double frontForce = (mass * b * across + turn) / (a + b);
            double rearForce = mass * across - frontForce;
            front += (mass * lateral * b / (a + b) - frontForce) / 80_000.0;
            rear += (mass * lateral * a / (a + b) - rearForce) / 80_000.0;
        }
        return new double[] {front, rear};
    }

    /** Puts the body where springs hold it: each coordinate by its own stiffness. */
    private static void settle(VehicleEquations equations, double[] state, CarModel car) {
        double[] stiffness = {
            2.0 * (car.body().front().rideRate() + car.body().rear().rideRate()),
            2.0 * 1.3 * 1.3 * (car.body().front().rideRate() + car.body().rear().rideRate()),
            car.body().front().rollStiffness() + car.body().rear().rollStiffness()
        };
        double[] inertia = {
            car.body().sprungMassKg(), car.body().pitchInertiaKgM2(), car.body().rollInertiaKgM2()
        };
        double[] change = equations.computeDerivatives(0.0, state);
        for (int j = 0; j < 3; j++) {
            state[VehicleEquations.HEAVE + j] += inertia[j] * change[VehicleEquations.HEAVE_RATE + j] / stiffness[j];
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.4, 0.001, -0.113, -0.448",
        "0.5, 0.046, 0.068, 0.115",
        "0.6, 0.091, 0.250, 0.678",
        "0.7, 0.135, 0.432, 1.242"
    })
    void rollStiffnessShareWithoutSteer(double chi, double at4, double at6, double at8) {
        CarModel car = Car.stiffness(chi).model();
        double[] lateral = {4.0, 6.0, 8.0};
        double[] expected = {at4, at6, at8};
        for (int i = 0; i < 3; i++) {
            double[] slips = slipsWithoutSteer(car, lateral[i]);
            // the slow turning that stands for the difference of slip angles moves the third digit
            assertThat(Math.toDegrees(slips[0] - slips[1])).isCloseTo(expected[i], within(ANGLE));
        }
    }

    private static double balance(Equilibrium equilibrium, double forward, double lateral) {
        return Math.toDegrees(
                equilibrium.at(SPEED, forward, lateral).orElseThrow().balanceRad());
    }

    @ParameterizedTest
    @CsvSource({
        "0.4, 0.019, 0.001, -0.113, -0.448, 8.948, REAR",
        "0.5, 0.024, 0.046, 0.068, 0.115, 9.024, FRONT",
        "0.6, 0.029, 0.091, 0.250, 0.678, 8.928, FRONT",
        "0.7, 0.034, 0.135, 0.432, 1.242, 8.820, FRONT"
    })
    void rollStiffnessShare(double chi, double at2, double at4, double at6, double at8, double limit, End end) {
        Equilibrium equilibrium = Car.stiffness(chi).equilibrium();
        assertThat(balance(equilibrium, 0.0, 2.0)).isCloseTo(at2, within(ANGLE));
        assertThat(balance(equilibrium, 0.0, 4.0)).isCloseTo(at4, within(ANGLE));
        assertThat(balance(equilibrium, 0.0, 6.0)).isCloseTo(at6, within(ANGLE));
        assertThat(balance(equilibrium, 0.0, 8.0))
                .isCloseTo(at8, within(ANGLE + 0.005 + NEAR_LIMIT_SHARE * Math.abs(at8)));
        Limit found = equilibrium.greatestLateral(SPEED, 0.0).orElseThrow();
        assertThat(found.lateralMps2()).isCloseTo(limit, within(LIMIT_SHARE * limit));
        assertThat(found.end()).isEqualTo(end);
    }

    @ParameterizedTest
    @CsvSource({"2, 0.689, 0.665", "4, 1.484, 1.438", "6, 2.579, 2.511", "8, 4.607, 4.493"})
    void slipAngles(double lateral, double front, double rear) {
        SteadyState state = Car.usual().equilibrium().at(SPEED, 0.0, lateral).orElseThrow();
        assertThat(Math.toDegrees(state.frontSlipRad())).isCloseTo(front, within(ANGLE));
        assertThat(Math.toDegrees(state.rearSlipRad())).isCloseTo(rear, within(ANGLE));
    }

    @ParameterizedTest
    @CsvSource({
        "a 1.20,          1.20, 0.50, 1.50, 1.50, 0.0, 0.0, 0.092, 0.230, 9.009, FRONT",
        "h 0.45,          1.25, 0.45, 1.50, 1.50, 0.0, 0.0, 0.047, 0.115, 9.066, FRONT",
        "front track,     1.25, 0.50, 1.55, 1.50, 0.0, 0.0, 0.043, 0.070, 9.038, FRONT",
        "rear track,      1.25, 0.50, 1.50, 1.55, 0.0, 0.0, 0.050, 0.159, 9.024, FRONT",
        "downforce,       1.25, 0.50, 1.50, 1.50, 0.5, 0.5, 0.059, 0.153, 10.015, FRONT",
        "front downforce, 1.25, 0.50, 1.50, 1.50, 0.6, 0.5, 0.042, 0.043, 10.131, REAR",
        "rear downforce,  1.25, 0.50, 1.50, 1.50, 0.5, 0.6, 0.077, 0.266, 10.015, FRONT"
    })
    void otherChanges(
            String what,
            double a,
            double height,
            double frontTrack,
            double rearTrack,
            double liftFront,
            double liftRear,
            double at4,
            double at8,
            double limit,
            End end) {
        Equilibrium equilibrium =
                new Car(0.5, a, height, frontTrack, rearTrack, 0.0, 0.6, liftFront, liftRear).equilibrium();
        assertThat(balance(equilibrium, 0.0, 4.0)).as(what).isCloseTo(at4, within(ANGLE));
        assertThat(balance(equilibrium, 0.0, 8.0))
                .as(what)
                .isCloseTo(at8, within(ANGLE + 0.005 + NEAR_LIMIT_SHARE * Math.abs(at8)));
        Limit found = equilibrium.greatestLateral(SPEED, 0.0).orElseThrow();
        assertThat(found.lateralMps2()).as(what).isCloseTo(limit, within(LIMIT_SHARE * limit));
        assertThat(found.end()).as(what).isEqualTo(end);
    }

    @ParameterizedTest
    @CsvSource({
        "0.0, 1,  0.042, 0.101",
        "0.0, 2,  0.036, 0.100",
        "0.0, 3,  0.002,",
        "0.0, 4, -0.083,",
        "1.0, 1,  0.068, 0.162",
        "1.0, 2,  0.150, 0.380",
        "1.0, 3,  0.323, 0.870",
        "0.4, 2,  0.078, 0.200"
    })
    void throttle(double driveFront, double forward, double at2, @Nullable Double at4) {
        Equilibrium equilibrium = new Car(0.5, 1.25, 0.5, 1.5, 1.5, driveFront, 0.6, 0.0, 0.0).equilibrium();
        assertThat(balance(equilibrium, forward, 2.0)).isCloseTo(at2, within(ANGLE + ELLIPSE_SHARE * Math.abs(at2)));
        if (at4 != null) {
            assertThat(balance(equilibrium, forward, 4.0)).isCloseTo(at4, within(ANGLE + ELLIPSE_SHARE * at4));
        }
    }

    /** Load leaves the front at first; then the drive force uses the rear up. */
    @Test
    void rearDriveUndersteersBeforeItOversteers() {
        Equilibrium rear = Car.usual().equilibrium();
        assertThat(balance(rear, 1.0, 4.0)).isGreaterThan(balance(rear, 0.0, 4.0));
        assertThat(balance(rear, 4.0, 4.0)).isNegative();
        Equilibrium front = new Car(0.5, 1.25, 0.5, 1.5, 1.5, 1.0, 0.6, 0.0, 0.0).equilibrium();
        for (double forward = 0.0; forward < 3.0; forward += 0.5) {
            assertThat(balance(front, forward + 0.5, 4.0)).isGreaterThan(balance(front, forward, 4.0));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 9.024, FRONT", "2, 8.401, FRONT"})
    void limitOnTheThrottle(double forward, double limit, End end) {
        Limit found = Car.usual().equilibrium().greatestLateral(SPEED, forward).orElseThrow();
        assertThat(found.lateralMps2()).isCloseTo(limit, within(LIMIT_SHARE * limit));
        assertThat(found.end()).isEqualTo(end);
    }

    @ParameterizedTest
    @CsvSource({
        "0.55, -0.139, -0.428",
        "0.60, -0.110, -0.353",
        "0.65, -0.084, -0.285",
        "0.70, -0.059, -0.221",
        "0.75, -0.035, -0.160"
    })
    void braking(double brakeFront, double at2, double at4) {
        Equilibrium equilibrium = new Car(0.5, 1.25, 0.5, 1.5, 1.5, 0.0, brakeFront, 0.0, 0.0).equilibrium();
        assertThat(balance(equilibrium, -4.0, 2.0)).isCloseTo(at2, within(ANGLE - ELLIPSE_SHARE * at2));
        assertThat(balance(equilibrium, -4.0, 4.0)).isCloseTo(at4, within(ANGLE - ELLIPSE_SHARE * at4));
        assertThat(equilibrium.greatestLateral(SPEED, -4.0).orElseThrow().end()).isEqualTo(End.REAR);
    }
}
