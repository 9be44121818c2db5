package setwright.core.car.model;

import java.util.List;

/**
 * A car at rest within its own axes: speeds, yaw rate and body stay as they are but for a prescribed acceleration along.
 *
 * @param speedMps      m/s
 * @param forwardMps2   acceleration along the car's axis, m/s²
 * @param lateralMps2   acceleration across it, m/s², left positive
 * @param yawRate       rad/s
 * @param sideslipRad   angle of the velocity to the car's axis, rad, left positive
 * @param steerRad      mean angle of the front wheels, rad
 * @param frontSlipRad  slip angle at the middle of the front axle, rad, with the sign of its force
 * @param rearSlipRad   slip angle at the middle of the rear axle, rad
 * @param loadsN        of the wheels front left, front right, rear left, rear right, N
 * @param frontUse      of the front axle's grip, along and across, 1 at its limit
 * @param rearUse       of the rear axle's grip
 * @param engineN       force of the engine at the driven wheels, N, negative on the overrun
 * @param brakeN        force of the brakes, N, &gt;= 0
 * @param heaveM        rise of the centre of gravity since rest without downforce, m
 * @param pitchRad      rad, nose down positive
 * @param rollRad       rad, left side up positive
 */
public record SteadyState(
        double speedMps,
        double forwardMps2,
        double lateralMps2,
        double yawRate,
        double sideslipRad,
        double steerRad,
        double frontSlipRad,
        double rearSlipRad,
        List<Double> loadsN,
        double frontUse,
        double rearUse,
        double engineN,
        double brakeN,
        double heaveM,
        double pitchRad,
        double rollRad) {

    public SteadyState {
        loadsN = List.copyOf(loadsN);
    }

    /** Returns the balance angle, rad: front less rear slip angle; positive understeers in a left turn. */
    public double balanceRad() {
        return frontSlipRad - rearSlipRad;
    }

    /** Returns the state of {@link VehicleEquations} that stays like this, at the origin. */
    public double[] state() {
        double[] state = VehicleEquations.straight(speedMps * Math.cos(sideslipRad));
        state[VehicleEquations.LATERAL] = speedMps * Math.sin(sideslipRad);
        state[VehicleEquations.YAW_RATE] = yawRate;
        state[VehicleEquations.HEAVE] = heaveM;
        state[VehicleEquations.PITCH] = pitchRad;
        state[VehicleEquations.ROLL] = rollRad;
        return state;
    }

    /** Returns the controls that keep it so. */
    public Controls controls() {
        return Controls.held(steerRad, engineN, brakeN);
    }
}
