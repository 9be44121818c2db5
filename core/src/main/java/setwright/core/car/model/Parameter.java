package setwright.core.car.model;

/**
 * What is uncertain about a car once its sheet is read; the coordinates in which laps tell and replays draw.
 *
 * <p>Factors are held as logarithms, so that every value is possible and zero is the middle of the prior. Sources of the
 * spreads stand beside {@link CarPrior}.
 */
public enum Parameter {
    /** Logarithm of the friction at nominal load over the kind of car's usual. */
    GRIP,
    /** Logarithm of front over rear friction. */
    GRIP_SPLIT,
    /** Logarithm of longitudinal over lateral friction. */
    GRIP_ALONG,
    /** Relative loss of friction per relative extra load. */
    LOAD_SENSITIVITY,
    /** Logarithm of the slip angle at the peak over the usual. */
    PEAK_SLIP,
    /** Logarithm of front over rear slip angle at the peak. */
    PEAK_SLIP_SPLIT,
    /** Exponent with which the slip angle at the peak grows with load. */
    PEAK_SLIP_LOAD,
    /** Logarithm of the slip ratio at the peak over the usual. */
    PEAK_SLIP_RATIO,
    /** Best front camber, rad, from the middle of the allowed range. */
    CAMBER_BEST_FRONT,
    CAMBER_BEST_REAR,
    /** Logarithm of the loss by wrong camber over the usual. */
    CAMBER_LOSS,
    /** Best front pressure over the middle of the allowed range, less 1. */
    PRESSURE_BEST_FRONT,
    PRESSURE_BEST_REAR,
    /** Logarithm of the loss by wrong pressure over the usual. */
    PRESSURE_LOSS,
    /** Relative rise of stiffness per relative rise of pressure. */
    PRESSURE_STIFFNESS,
    /** Front roll centre height less what the sheet says or is usual, m. */
    ROLL_CENTRE_FRONT,
    ROLL_CENTRE_REAR,
    /** Share of the front's load transfer that the links carry. */
    ANTI_FRONT,
    ANTI_REAR,
    /** Logarithm of the front roll stiffness over that of the rear, beyond what springs and bars say. */
    ROLL_SPLIT,
    /** Logarithm of the damping ratio in the middle of the clicks over the usual. */
    DAMPING,
    /** Logarithm of the ratio of the damping at the two ends of the clicks, over the usual. */
    DAMPER_RANGE,
    /** Logarithm of the downforce over what is expected. */
    LIFT,
    /** Front share of the downforce less what is expected. */
    LIFT_BALANCE,
    /** Logarithm of the drag area over the usual. */
    DRAG,
    /** Logarithm of what a wing's whole range does over the usual. */
    WING_EFFECT,
    /** Logarithm of drag over downforce of a wing over the usual. */
    WING_DRAG,
    /** Logarithm of the ground's share of the downforce over the usual. */
    GROUND_EFFECT,
    /** Share of the downforce that rake moves forward per relative rise. */
    RAKE_EFFECT,
    /** Logarithm of the engine's power over the usual. */
    POWER,
    /** Engine speed of the greatest torque over the limit, less the usual. */
    TORQUE_PEAK,
    /** Engine speed at which the driver changes up over the limit, less the usual. */
    SHIFT,
    /** Logarithm of the engine's braking torque over the usual. */
    ENGINE_BRAKING,
    /** Logarithm of what the differential's ramps hold over what the sheet says. */
    LOCKING,
    /** Logarithm of the yaw inertia over that of two point masses at the axles. */
    YAW_INERTIA,
    /** Logarithm of the height of the centre of gravity over the sheet's. */
    HEIGHT,
    /** True front share of the brake force less the sheet's. */
    BRAKE_SHARE;

    /** Returns its place in an array of values. */
    @SuppressWarnings("EnumOrdinal") // the one place where order and arrays meet
    public int index() {
        return ordinal();
    }

    /** Returns how many there are. */
    public static int count() {
        return values().length;
    }
}
