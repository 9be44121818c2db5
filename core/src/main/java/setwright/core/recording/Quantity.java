package setwright.core.recording;

/**
 * The quantities that Setwright understands, with the SI unit that a {@link Channel} holds them in.
 *
 * <p>Signs follow ISO 8855: x forward, y left, z up; steering, yaw rate and lateral acceleration are positive in a left
 * turn. To add one, add a constant here and its words to the intake's vocabulary.
 */
public enum Quantity {
    TIME("time", "s"),
    SPEED("speed", "m/s"),
    /** Angle of the steering wheel, left positive. */
    STEERING_WHEEL_ANGLE("steering wheel angle", "rad"),
    /** Mean steer angle of the two front road wheels, left positive. */
    ROAD_WHEEL_ANGLE("road wheel angle", "rad"),
    /** Pedal position, 0 released to 1 floored. */
    THROTTLE("throttle", "1"),
    /** Brake demand, 0 released to 1 the hardest of the recording (or the car sheet's greatest pressure). */
    BRAKE("brake", "1"),
    /** Engaged gear as a number; 0 neutral, negative reverse. */
    GEAR("gear", "1"),
    ENGINE_SPEED("engine speed", "rad/s"),
    LONGITUDINAL_ACCELERATION("longitudinal acceleration", "m/s2"),
    LATERAL_ACCELERATION("lateral acceleration", "m/s2"),
    VERTICAL_ACCELERATION("vertical acceleration", "m/s2"),
    YAW_RATE("yaw rate", "rad/s"),
    LAP_NUMBER("lap number", "1"),
    /** Non-zero for a moment when the start line is crossed. */
    LAP_TRIGGER("lap trigger", "1"),
    /** Distance since the start line, back to zero each lap. */
    LAP_DISTANCE("lap distance", "m"),
    LATITUDE("latitude", "rad"),
    LONGITUDE("longitude", "rad"),
    /** First coordinate of a right-handed local plane; latitude and longitude are projected onto it (east). */
    POSITION_X("position x", "m"),
    /** Second coordinate of a right-handed local plane (north). */
    POSITION_Y("position y", "m"),
    WHEEL_SPEED_FRONT_LEFT("wheel speed front left", "m/s"),
    WHEEL_SPEED_FRONT_RIGHT("wheel speed front right", "m/s"),
    WHEEL_SPEED_REAR_LEFT("wheel speed rear left", "m/s"),
    WHEEL_SPEED_REAR_RIGHT("wheel speed rear right", "m/s"),
    SUSPENSION_FRONT_LEFT("suspension travel front left", "m"),
    SUSPENSION_FRONT_RIGHT("suspension travel front right", "m"),
    SUSPENSION_REAR_LEFT("suspension travel rear left", "m"),
    SUSPENSION_REAR_RIGHT("suspension travel rear right", "m"),
    TYRE_TEMPERATURE_FRONT_LEFT("tyre temperature front left", "K"),
    TYRE_TEMPERATURE_FRONT_RIGHT("tyre temperature front right", "K"),
    TYRE_TEMPERATURE_REAR_LEFT("tyre temperature rear left", "K"),
    TYRE_TEMPERATURE_REAR_RIGHT("tyre temperature rear right", "K"),
    FUEL_MASS("fuel mass", "kg"),
    /** Line pressure of the front circuit. */
    BRAKE_PRESSURE_FRONT("brake pressure front", "Pa"),
    BRAKE_PRESSURE_REAR("brake pressure rear", "Pa"),
    /** Inflation pressure above that of the air outside (gauge); absolute readings are brought to it on the way in. */
    TYRE_PRESSURE_FRONT_LEFT("tyre pressure front left", "Pa"),
    TYRE_PRESSURE_FRONT_RIGHT("tyre pressure front right", "Pa"),
    TYRE_PRESSURE_REAR_LEFT("tyre pressure rear left", "Pa"),
    TYRE_PRESSURE_REAR_RIGHT("tyre pressure rear right", "Pa"),
    /** Of the tread toward the middle of the car. */
    TYRE_TEMPERATURE_INNER_FRONT_LEFT("inner tyre temperature front left", "K"),
    TYRE_TEMPERATURE_INNER_FRONT_RIGHT("inner tyre temperature front right", "K"),
    TYRE_TEMPERATURE_INNER_REAR_LEFT("inner tyre temperature rear left", "K"),
    TYRE_TEMPERATURE_INNER_REAR_RIGHT("inner tyre temperature rear right", "K"),
    TYRE_TEMPERATURE_MIDDLE_FRONT_LEFT("middle tyre temperature front left", "K"),
    TYRE_TEMPERATURE_MIDDLE_FRONT_RIGHT("middle tyre temperature front right", "K"),
    TYRE_TEMPERATURE_MIDDLE_REAR_LEFT("middle tyre temperature rear left", "K"),
    TYRE_TEMPERATURE_MIDDLE_REAR_RIGHT("middle tyre temperature rear right", "K"),
    TYRE_TEMPERATURE_OUTER_FRONT_LEFT("outer tyre temperature front left", "K"),
    TYRE_TEMPERATURE_OUTER_FRONT_RIGHT("outer tyre temperature front right", "K"),
    TYRE_TEMPERATURE_OUTER_REAR_LEFT("outer tyre temperature rear left", "K"),
    TYRE_TEMPERATURE_OUTER_REAR_RIGHT("outer tyre temperature rear right", "K"),
    /** Of the body above the road at the front axle, between the wheels. */
    RIDE_HEIGHT_FRONT("ride height front", "m"),
    RIDE_HEIGHT_REAR("ride height rear", "m"),
    RIDE_HEIGHT_FRONT_LEFT("ride height front left", "m"),
    RIDE_HEIGHT_FRONT_RIGHT("ride height front right", "m"),
    RIDE_HEIGHT_REAR_LEFT("ride height rear left", "m"),
    RIDE_HEIGHT_REAR_RIGHT("ride height rear right", "m"),
    TRACK_TEMPERATURE("track temperature", "K"),
    AIR_TEMPERATURE("air temperature", "K"),
    /** That the hands put in, left positive. */
    STEERING_TORQUE("steering torque", "N m");

    private final String words;
    private final String siUnit;

    Quantity(String words, String siUnit) {
        this.words = words;
        this.siUnit = siUnit;
    }

    /** Returns the name a person reads, in lower case. */
    public String words() {
        return words;
    }

    /** Returns the SI unit of the samples; {@code 1} for a pure number. */
    public String siUnit() {
        return siUnit;
    }
}
