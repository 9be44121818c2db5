package setwright.core.proposal;

import setwright.core.car.SetupItem;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;

/** What it takes to turn an item back, the least first (common practice; docs/proposals.md). */
enum Undoing {
    /** A click or a turn where the car stands. */
    CLICK("a click or a turn"),
    /** Tools, and the car is measured again. */
    TOOLS("tools and a new measurement of the car"),
    /** Something is taken apart. */
    PARTS("parts taken out");

    private final String words;

    Undoing(String words) {
        this.words = words;
    }

    /** Returns what it takes, for people. */
    String words() {
        return words;
    }

    /** Returns what an item takes; one that nobody knows is not expected to be a click. */
    static Undoing of(SetupItem item) {
        return SetupCatalogue.find(item.name()).map(kind -> of(kind.family())).orElse(PARTS);
    }

    private static Undoing of(SetupFamily family) {
        return switch (family) {
            case BUMP,
                    REBOUND,
                    BUMP_LOW,
                    BUMP_HIGH,
                    REBOUND_LOW,
                    REBOUND_HIGH,
                    WING,
                    BAR,
                    BRAKE_BIAS_FRONT,
                    TYRE_PRESSURE -> CLICK;
            case SPRING, BUMP_STOP_GAP, RIDE_HEIGHT, TOE, CAMBER, TYRE_COMPOUND, FUEL, BALLAST, BALLAST_POSITION ->
                TOOLS;
            case DIFF_PRELOAD, DIFF_POWER_LOCK, DIFF_COAST_LOCK, FINAL_DRIVE, GEAR -> PARTS;
        };
    }
}
