package setwright.core.simulation.logger;

import setwright.core.recording.Quantity;

/**
 * How much a sensor scatters from row to row. Orders of magnitude of club-racing loggers with the engine running (common
 * practice); nothing is tuned to them.
 */
public final class TypicalNoise {
    private TypicalNoise() {}

    /** Returns the standard deviation of a quantity, in its SI unit; 0 where it is exact or comes from satellites. */
    public static double of(Quantity quantity) {
        return switch (quantity) {
            case SPEED -> 0.04;
            case STEERING_WHEEL_ANGLE -> Math.toRadians(0.3);
            case THROTTLE -> 0.003;
            case BRAKE -> 0.003;
            case ENGINE_SPEED -> 12.0 * Math.PI / 30.0;
            case LONGITUDINAL_ACCELERATION -> 0.20;
            case LATERAL_ACCELERATION -> 0.20;
            case VERTICAL_ACCELERATION -> 0.6;
            case YAW_RATE -> Math.toRadians(0.25);
            case WHEEL_SPEED_FRONT_LEFT, WHEEL_SPEED_FRONT_RIGHT, WHEEL_SPEED_REAR_LEFT, WHEEL_SPEED_REAR_RIGHT -> 0.08;
            case SUSPENSION_FRONT_LEFT, SUSPENSION_FRONT_RIGHT, SUSPENSION_REAR_LEFT, SUSPENSION_REAR_RIGHT -> 0.2e-3;
            case RIDE_HEIGHT_FRONT, RIDE_HEIGHT_REAR -> 0.3e-3;
            case BRAKE_PRESSURE_FRONT, BRAKE_PRESSURE_REAR -> 0.3e5;
            case FUEL_MASS -> 0.05;
            default -> 0.0;
        };
    }
}
