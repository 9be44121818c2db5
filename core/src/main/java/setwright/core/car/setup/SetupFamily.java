package setwright.core.car.setup;

import java.util.List;

/**
 * Items of one sort, each present once per axle, per gear or once per car. Possible values are what physics or any known
 * part allows; usual ranges and steps are common practice for racing cars, used only where a sheet does not give its own.
 */
public enum SetupFamily {
    SPRING(
            "spring",
            Count.PER_AXLE,
            UnitChoice.SPRINGS,
            n(1, 2000, 30, 300, 5),
            "Spring rate. Stiffer, this axle takes more of the lateral load transfer and the body moves less on it."),
    BAR(
            "bar",
            Count.PER_AXLE,
            UnitChoice.COUNTS,
            n(0, 100, 1, 9, 1),
            "Roll stiffness alone. Stiffer, this axle takes more of the lateral load transfer; it does nothing in heave and pitch."),
    BUMP(
            "bump",
            Count.PER_AXLE,
            UnitChoice.CLICKS_FIRST,
            n(0, 200, 1, 30, 1),
            "Damper in compression. Stiffer, load reaches this axle's wheels sooner while the body moves onto them."),
    REBOUND(
            "rebound",
            Count.PER_AXLE,
            UnitChoice.CLICKS_FIRST,
            n(0, 200, 1, 30, 1),
            "Damper in extension. Stiffer, load leaves this axle's wheels sooner while the body moves off them."),
    BUMP_LOW(
            "bump_low",
            Count.PER_AXLE,
            UnitChoice.CLICKS_FIRST,
            n(0, 200, 1, 30, 1),
            "Damper in slow compression: body roll and pitch. Stiffer, load reaches this axle's wheels sooner."),
    BUMP_HIGH(
            "bump_high",
            Count.PER_AXLE,
            UnitChoice.CLICKS_FIRST,
            n(0, 200, 1, 30, 1),
            "Damper in fast compression: kerbs and bumps. Softer, the tyre follows the road better."),
    REBOUND_LOW(
            "rebound_low",
            Count.PER_AXLE,
            UnitChoice.CLICKS_FIRST,
            n(0, 200, 1, 30, 1),
            "Damper in slow extension: body roll and pitch. Stiffer, load leaves this axle's wheels sooner."),
    REBOUND_HIGH(
            "rebound_high",
            Count.PER_AXLE,
            UnitChoice.CLICKS_FIRST,
            n(0, 200, 1, 30, 1),
            "Damper in fast extension: after kerbs and bumps. Softer, the wheel returns to the road sooner."),
    BUMP_STOP_GAP(
            "bump_stop_gap",
            Count.PER_AXLE,
            UnitChoice.LENGTHS,
            n(0, 200, 0, 40, 1),
            "Travel left before the bump stop. Smaller, this axle stiffens earlier in roll, dive and under downforce."),
    RIDE_HEIGHT(
            "ride_height",
            Count.PER_AXLE,
            UnitChoice.LENGTHS,
            n(1, 400, 20, 150, 1),
            "Floor height. Lower, less load transfer; with a working floor or wing, it also moves the aerodynamic balance."),
    WING(
            "wing",
            Count.PER_AXLE,
            UnitChoice.WINGS,
            n(-30, 100, 1, 16, 1),
            "Downforce on this axle, growing with speed squared, and drag."),
    TYRE_PRESSURE(
            "tyre_pressure",
            Count.PER_AXLE,
            UnitChoice.PRESSURES,
            n(0.3, 6, 1.2, 2.4, 0.02),
            "Contact patch and tyre stiffness of this axle; away from its best value in either direction, grip falls."),
    CAMBER(
            "camber",
            Count.PER_AXLE,
            UnitChoice.ANGLES,
            n(-12, 6, -5, 0, 0.1),
            "Lean of the wheels. More negative, more lateral grip of this axle up to a point, less under braking and traction."),
    TOE(
            "toe",
            Count.PER_AXLE,
            UnitChoice.ANGLES,
            n(-3, 3, -0.5, 0.5, 0.05),
            "Direction of the wheels at rest, toe-in positive. At the rear, toe-in steadies; at the front, toe-out helps turn-in."),
    TYRE_COMPOUND(
            "tyre_compound",
            Count.PER_AXLE,
            UnitChoice.NONE,
            n(0, 0, 0, 0, 0),
            "Grip and stiffness of this axle's tyres, and the temperature they need."),
    BRAKE_BIAS_FRONT(
            "brake_bias_front",
            Count.PER_CAR,
            UnitChoice.SHARES,
            n(0, 100, 45, 85, 0.5),
            "Front share of the brake force. More, the front axle gives up cornering grip while braking, and locks first."),
    DIFF_PRELOAD(
            "diff_preload",
            Count.PER_CAR,
            UnitChoice.TORQUES,
            n(0, 1000, 0, 200, 10),
            "Torque that always resists a speed difference of the driven wheels: straightens the car off and on the throttle."),
    DIFF_POWER_LOCK(
            "diff_power_lock",
            Count.PER_CAR,
            UnitChoice.SHARES,
            n(0, 100, 0, 90, 5),
            "Locking on the throttle: moves drive to the slower driven wheel. Acts from throttle pick-up on."),
    DIFF_COAST_LOCK(
            "diff_coast_lock",
            Count.PER_CAR,
            UnitChoice.SHARES,
            n(0, 100, 0, 90, 5),
            "Locking off the throttle: resists turning in. Acts in braking and entry."),
    FINAL_DRIVE(
            "final_drive",
            Count.PER_CAR,
            UnitChoice.RATIOS,
            n(0.5, 15, 2.5, 5.5, 0.1),
            "Engine speed over road speed in all gears. Larger (shorter), more pull and less top speed at the limiter."),
    GEAR(
            "gear",
            Count.PER_GEAR,
            UnitChoice.RATIOS,
            n(0.2, 20, 0.6, 4, 0.01),
            "Engine speed over road speed in this gear. Larger (shorter), more pull and an earlier change up."),
    FUEL(
            "fuel",
            Count.PER_CAR,
            UnitChoice.MASSES,
            n(0, 300, 0, 120, 1),
            "Mass at the start of the run: load on both axles and load transfer."),
    BALLAST(
            "ballast",
            Count.PER_CAR,
            UnitChoice.MASSES,
            n(0, 500, 0, 100, 1),
            "Mass carried on purpose, already within the mass of the car; moves the weight share."),
    BALLAST_POSITION(
            "ballast_position",
            Count.PER_CAR,
            UnitChoice.PLACES,
            n(-2, 6, 0, 3, 0.1),
            "Distance of the ballast behind the front axle. Larger, more weight on the rear axle.");

    /** How often an item of the family is on a car. */
    enum Count {
        PER_AXLE,
        PER_GEAR,
        PER_CAR
    }

    /**
     * A range of values, both ends allowed.
     *
     * @param least  in the family's first unit
     * @param most   at least {@code least}
     */
    public record Range(double least, double most) {}

    private final String word;
    private final Count count;
    private final UnitChoice units;
    private final double least;
    private final double most;
    private final double usualLeast;
    private final double usualMost;
    private final double usualStep;
    private final String actsOn;

    SetupFamily(String word, Count count, UnitChoice units, Numbers numbers, String actsOn) {
        this.word = word;
        this.count = count;
        this.units = units;
        this.least = numbers.possible().least();
        this.most = numbers.possible().most();
        this.usualLeast = numbers.usual().least();
        this.usualMost = numbers.usual().most();
        this.usualStep = numbers.usualStep();
        this.actsOn = actsOn;
    }

    /** What a family's values may be, in its first unit. */
    private record Numbers(Range possible, Range usual, double usualStep) {}

    private static Numbers n(double least, double most, double usualLeast, double usualMost, double usualStep) {
        return new Numbers(new Range(least, most), new Range(usualLeast, usualMost), usualStep);
    }

    /** Returns the family's part of an item's name. */
    public String word() {
        return word;
    }

    Count count() {
        return count;
    }

    /** Returns the accepted units, the one of the ranges first; empty for a word such as a compound. */
    public List<SetupUnit> units() {
        return units.units();
    }

    /** Tells whether its items are words, not numbers. */
    public boolean isLabel() {
        return units == UnitChoice.NONE;
    }

    /** Returns what is physically possible, in the first unit. */
    public Range possible() {
        return new Range(least, most);
    }

    /** Returns the range of common practice, in the first unit. */
    public Range usual() {
        return new Range(usualLeast, usualMost);
    }

    /** Returns the step of common practice, in the first unit. */
    public double usualStep() {
        return usualStep;
    }

    /** Returns in a sentence or two where weight or force goes. */
    public String actsOn() {
        return actsOn;
    }
}
