package setwright.intake.map;

import setwright.core.recording.Quantity;

/** What kind of unit a quantity is measured in. */
public enum Dimension {
    TIME,
    SPEED,
    ANGLE,
    ANGULAR_RATE,
    ACCELERATION,
    LENGTH,
    SHARE,
    PRESSURE,
    TEMPERATURE,
    MASS,
    TORQUE,
    NUMBER;

    /** Returns the dimension of a quantity's own SI unit. */
    public static Dimension of(Quantity quantity) {
        return switch (quantity) {
            case TIME -> TIME;
            case SPEED,
                    WHEEL_SPEED_FRONT_LEFT,
                    WHEEL_SPEED_FRONT_RIGHT,
                    WHEEL_SPEED_REAR_LEFT,
                    WHEEL_SPEED_REAR_RIGHT -> SPEED;
            case STEERING_WHEEL_ANGLE, ROAD_WHEEL_ANGLE, LATITUDE, LONGITUDE -> ANGLE;
            case ENGINE_SPEED, YAW_RATE -> ANGULAR_RATE;
            case LONGITUDINAL_ACCELERATION, LATERAL_ACCELERATION, VERTICAL_ACCELERATION -> ACCELERATION;
            case LAP_DISTANCE,
                    POSITION_X,
                    POSITION_Y,
                    SUSPENSION_FRONT_LEFT,
                    SUSPENSION_FRONT_RIGHT,
                    SUSPENSION_REAR_LEFT,
                    SUSPENSION_REAR_RIGHT,
                    RIDE_HEIGHT_FRONT,
                    RIDE_HEIGHT_REAR,
                    RIDE_HEIGHT_FRONT_LEFT,
                    RIDE_HEIGHT_FRONT_RIGHT,
                    RIDE_HEIGHT_REAR_LEFT,
                    RIDE_HEIGHT_REAR_RIGHT -> LENGTH;
            case THROTTLE, BRAKE -> SHARE;
            case TYRE_TEMPERATURE_FRONT_LEFT,
                    TYRE_TEMPERATURE_FRONT_RIGHT,
                    TYRE_TEMPERATURE_REAR_LEFT,
                    TYRE_TEMPERATURE_REAR_RIGHT,
                    TYRE_TEMPERATURE_INNER_FRONT_LEFT,
                    TYRE_TEMPERATURE_INNER_FRONT_RIGHT,
                    TYRE_TEMPERATURE_INNER_REAR_LEFT,
                    TYRE_TEMPERATURE_INNER_REAR_RIGHT,
                    TYRE_TEMPERATURE_MIDDLE_FRONT_LEFT,
                    TYRE_TEMPERATURE_MIDDLE_FRONT_RIGHT,
                    TYRE_TEMPERATURE_MIDDLE_REAR_LEFT,
                    TYRE_TEMPERATURE_MIDDLE_REAR_RIGHT,
                    TYRE_TEMPERATURE_OUTER_FRONT_LEFT,
                    TYRE_TEMPERATURE_OUTER_FRONT_RIGHT,
                    TYRE_TEMPERATURE_OUTER_REAR_LEFT,
                    TYRE_TEMPERATURE_OUTER_REAR_RIGHT,
                    TRACK_TEMPERATURE,
                    AIR_TEMPERATURE -> TEMPERATURE;
            case BRAKE_PRESSURE_FRONT,
                    BRAKE_PRESSURE_REAR,
                    TYRE_PRESSURE_FRONT_LEFT,
                    TYRE_PRESSURE_FRONT_RIGHT,
                    TYRE_PRESSURE_REAR_LEFT,
                    TYRE_PRESSURE_REAR_RIGHT -> PRESSURE;
            case STEERING_TORQUE -> TORQUE;
            case FUEL_MASS -> MASS;
            case GEAR, LAP_NUMBER, LAP_TRIGGER -> NUMBER;
        };
    }

    /** Tells whether a column of this unit dimension can hold the quantity; some are converted with the help of others. */
    public static boolean fits(Quantity quantity, Dimension unit) {
        Dimension own = of(quantity);
        boolean wheelRotation = unit == ANGULAR_RATE && own == SPEED && quantity != Quantity.SPEED;
        boolean brakePressure = unit == PRESSURE && quantity == Quantity.BRAKE;
        return own == unit || wheelRotation || brakePressure;
    }
}
