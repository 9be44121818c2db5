package setwright.core.handling;

import setwright.core.car.BalancedCar;
import setwright.core.recording.Channel;

/**
 * The filtered motion of a stint and the balance angle at every sample. All channels have the recording's length; signs
 * follow ISO 8855; NaN where unknown.
 *
 * @param speed            m/s
 * @param steer            mean road wheel angle, rad
 * @param yawRate          rad/s, measured or from the path
 * @param yawAcceleration  rad/s²
 * @param lateral          lateral acceleration, m/s²
 * @param forward          longitudinal acceleration, m/s²
 * @param brake            0..1
 * @param throttle         0..1
 * @param balance          slip angle front minus rear with the sign of the turn removed, rad; positive: understeer
 * @param reference        what {@code car} shows in the same motion, or another car that balance is held against, rad
 * @param use              combined acceleration over the grip limit, 0..about 1
 * @param car              the balanced car that balance is judged against
 * @param balanceNoiseRad  standard deviation of the filtered balance from sensor noise, rad
 * @param steering         whether steering ratio and wheelbase fit the data
 * @param yawMeasured      whether yaw rate was recorded; without it balance is blind to the sideslip's own movement
 */
public record HandlingTrace(
        Channel speed,
        Channel steer,
        Channel yawRate,
        Channel yawAcceleration,
        Channel lateral,
        Channel forward,
        Channel brake,
        Channel throttle,
        Channel balance,
        Channel reference,
        Channel use,
        BalancedCar car,
        double balanceNoiseRad,
        SteeringScale steering,
        boolean yawMeasured) {

    /** Returns the same trace with what another balanced car would show in the same motion as its reference. */
    public HandlingTrace against(BalancedCar other) {
        double[] shown = new double[balance.size()];
        for (int i = 0; i < shown.length; i++) {
            double side = Math.signum(lateral.get(i));
            shown[i] = Double.isNaN(balance.get(i))
                    ? Double.NaN
                    : other.balance(
                            speed.get(i),
                            Math.abs(lateral.get(i)),
                            forward.get(i),
                            tyre(i),
                            side * yawAcceleration.get(i));
        }
        return against(Channel.of(shown));
    }

    /** Returns the same trace with another reference, rad. */
    public HandlingTrace against(Channel otherReference) {
        return new HandlingTrace(
                speed,
                steer,
                yawRate,
                yawAcceleration,
                lateral,
                forward,
                brake,
                throttle,
                balance,
                otherReference,
                use,
                car,
                balanceNoiseRad,
                steering,
                yawMeasured);
    }

    /** Returns the part of the longitudinal acceleration that brakes or engine put through the tyres at a sample, m/s². */
    public double tyre(int sample) {
        return Pedals.throughTyres(brake.get(sample), throttle.get(sample), forward.get(sample));
    }
}
