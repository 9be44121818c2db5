package setwright.core.simulation.driven;

/**
 * What is kept of a simulated drive, in SI units and signs of ISO 8855. Wheels in the order front left, front right, rear left,
 * rear right.
 */
public enum Signal {
    /** Position of the centre of gravity in the circuit's plane, m. */
    X,
    Y,
    /** Direction of the car, rad, unwrapped. */
    HEADING,
    /** Speed along the car, m/s. */
    FORWARD_SPEED,
    /** Speed to the car's left, m/s. */
    LATERAL_SPEED,
    /** rad/s. */
    YAW_RATE,
    /** Acceleration along the car, as a sensor at the centre of gravity feels it on a flat road, m/s². */
    FORWARD_ACCELERATION,
    /** Acceleration to the car's left, m/s². */
    LATERAL_ACCELERATION,
    /** Of the body at the centre of gravity, without gravity, m/s². */
    VERTICAL_ACCELERATION,
    /** Mean angle of the two front wheels, rad. */
    STEER,
    /** 0..1. */
    THROTTLE,
    /** Of the greatest demand, 0..1. */
    BRAKE,
    /** Counted from 1. */
    GEAR,
    /** rad/s. */
    ENGINE_SPEED,
    /** Speed of the tread, turning speed times rolling radius, m/s. */
    WHEEL_SPEED_FRONT_LEFT,
    WHEEL_SPEED_FRONT_RIGHT,
    WHEEL_SPEED_REAR_LEFT,
    WHEEL_SPEED_REAR_RIGHT,
    /** How far a wheel has moved toward the body since rest, its tyre's give included, m. */
    SUSPENSION_FRONT_LEFT,
    SUSPENSION_FRONT_RIGHT,
    SUSPENSION_REAR_LEFT,
    SUSPENSION_REAR_RIGHT,
    /** Vertical load, N. */
    LOAD_FRONT_LEFT,
    LOAD_FRONT_RIGHT,
    LOAD_REAR_LEFT,
    LOAD_REAR_RIGHT,
    /** Slip angle of the front axle, rad, of the sign of the force that it makes. */
    SLIP_FRONT,
    /** Slip angle of the rear axle, rad. */
    SLIP_REAR,
    /** How much of its grip the front axle uses, 1 at the peak of its curve; more beyond. */
    USE_FRONT,
    USE_REAR,
    /** In the tank, kg. */
    FUEL,
    /** Along the line that is driven for, from the start line, m, back to 0 each lap. */
    STATION,
    /** To the left of that line, m. */
    OFFSET,
    /** Counted from 1; the out lap is the first. */
    LAP;

    private static final int COUNT = values().length;

    /** Returns its place in an array of signals. */
    @SuppressWarnings("EnumOrdinal") // the one place where order and arrays meet
    public int index() {
        return ordinal();
    }

    /** Returns how many there are. */
    public static int count() {
        return COUNT;
    }
}
