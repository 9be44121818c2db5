package setwright.core.car.model;

import org.hipparchus.ode.OrdinaryDifferentialEquation;
import setwright.core.car.body.Body;
import setwright.core.car.body.Body.Action;
import setwright.core.car.tyre.Tyre;

/**
 * The car in time on a flat road: four wheels, the body in heave, pitch and roll; ISO 8855 signs.
 * <pre>
 * m (v_x' - r v_y) = X,   m (v_y' + r v_x) = Y,   I_z r' = N
 * m_s z'', I_pitch p'', I_roll q'' = sums of {@link setwright.core.car.body.BodyForces#sum}
 * </pre>
 * Any integrator of Hipparchus takes it. Valid for speeds above about 3 m/s forward; slower, slip angles have no meaning.
 * Not for several threads at once.
 *
 * <p>Source: Newton and Euler in axes that turn with the car, as in any textbook (Milliken and Milliken, Race Car Vehicle
 * Dynamics, SAE 1995, chapter 4, from memory).
 */
public final class VehicleEquations implements OrdinaryDifferentialEquation {
    /** Places in the state: position on the ground, m; heading, rad; speeds in the car's axes, m/s; yaw rate, rad/s. */
    public static final int X = 0;

    public static final int Y = 1;
    public static final int HEADING = 2;
    public static final int FORWARD = 3;
    public static final int LATERAL = 4;
    public static final int YAW_RATE = 5;
    /** Heave, m; pitch, rad, nose down positive; roll, rad, left side up positive; their rates follow in the same order. */
    public static final int HEAVE = 6;

    public static final int PITCH = 7;
    public static final int ROLL = 8;
    public static final int HEAVE_RATE = 9;
    public static final int PITCH_RATE = 10;
    public static final int ROLL_RATE = 11;
    private static final int DIMENSION = 12;

    /** Accuracy of the accelerations, m/s². */
    private static final double ACCURACY_MPS2 = 1.0e-12;

    private static final int MOST_REPEATS = 60;

    private final CarModel car;
    private final Controls controls;
    private final FourWheels wheels;
    private final double[] attitude = new double[3];
    private final double[] rates = new double[3];

    /** Makes the equations of a car on its own tyres. */
    public VehicleEquations(CarModel car, Controls controls) {
        this(car, controls, car.front().tyre(), car.rear().tyre());
    }

    /** Makes the equations of a car on other tyres; camber and pressure stay those of the car. */
    public VehicleEquations(CarModel car, Controls controls, Tyre frontTyre, Tyre rearTyre) {
        this.car = car;
        this.controls = controls;
        this.wheels = new FourWheels(car, frontTyre, rearTyre);
    }

    @Override
    public int getDimension() {
        return DIMENSION;
    }

    /** Returns the state of a car that runs straight ahead, its body at rest without downforce. */
    public static double[] straight(double speedMps) {
        double[] state = new double[DIMENSION];
        state[FORWARD] = speedMps;
        return state;
    }

    @Override
    public double[] computeDerivatives(double timeS, double[] state) {
        evaluate(timeS, state);
        Body body = car.body();
        double[] out = new double[DIMENSION];
        double cos = Math.cos(state[HEADING]);
        double sin = Math.sin(state[HEADING]);
        out[X] = state[FORWARD] * cos - state[LATERAL] * sin;
        out[Y] = state[FORWARD] * sin + state[LATERAL] * cos;
        out[HEADING] = state[YAW_RATE];
        out[FORWARD] = wheels.forwardSum / body.massKg() + state[YAW_RATE] * state[LATERAL];
        out[LATERAL] = wheels.lateralSum / body.massKg() - state[YAW_RATE] * state[FORWARD];
        out[YAW_RATE] = wheels.yawSum / car.yawInertiaKgM2();
        System.arraycopy(state, HEAVE_RATE, out, HEAVE, 3);
        out[HEAVE_RATE] = wheels.bodySum[0] / body.sprungMassKg();
        out[PITCH_RATE] = wheels.bodySum[1] / body.pitchInertiaKgM2();
        out[ROLL_RATE] = wheels.bodySum[2] / body.rollInertiaKgM2();
        return out;
    }

    /** Returns the loads of the four wheels in a state, N. */
    public double[] loadsN(double timeS, double[] state) {
        evaluate(timeS, state);
        return wheels.loads.clone();
    }

    /** Returns what acts on the body in a state: the accelerations and forces that the replay reads off a recording. */
    public Action action(double timeS, double[] state) {
        evaluate(timeS, state);
        return wheels.action;
    }

    /** Finds the forces that agree with the loads that they make; the links pass on a few per cent, so that repeating does. */
    private void evaluate(double timeS, double[] state) {
        double mass = car.body().massKg();
        System.arraycopy(state, HEAVE, attitude, 0, 3);
        System.arraycopy(state, HEAVE_RATE, rates, 0, 3);
        double steer = controls.steerRad(timeS);
        double engine = engine(controls.engineN(timeS), state[FORWARD]);
        double brake = controls.brakeN(timeS);
        double forward = (engine - brake) / mass;
        double lateral = 0.0;
        double front = 0.0;
        double rear = 0.0;
        for (int repeat = 0; repeat < MOST_REPEATS; repeat++) {
            wheels.at(
                    state[FORWARD],
                    state[LATERAL],
                    state[YAW_RATE],
                    attitude,
                    rates,
                    steer,
                    engine,
                    brake,
                    forward,
                    lateral,
                    front,
                    rear);
            double newForward = wheels.forwardSum / mass;
            double newLateral = wheels.lateralSum / mass;
            boolean same = Math.abs(newForward - forward) < ACCURACY_MPS2
                    && Math.abs(newLateral - lateral) < ACCURACY_MPS2
                    && Math.abs(wheels.frontLateral - front) < ACCURACY_MPS2 * mass;
            forward = newForward;
            lateral = newLateral;
            front = wheels.frontLateral;
            rear = wheels.rearLateral;
            if (same) {
                return;
            }
        }
    }

    private double engine(double wanted, double speedMps) {
        double most = car.powertrain().driveN(speedMps);
        double least = -car.engineBrakingN(speedMps);
        return Math.max(least, Math.min(wanted, most));
    }
}
