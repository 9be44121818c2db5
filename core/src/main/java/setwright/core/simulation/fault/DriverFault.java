package setwright.core.simulation.fault;

/** What can be wrong with a driver; the car may be balanced. A model of the driver makes them. */
public enum DriverFault {
    /**
     * Keeps much of the brake pressure on deep into the corner: the rear axle is light while it has to hold the car sideways. Looks
     * like entry oversteer, and goes with the brake's release.
     */
    TOO_MUCH_TRAIL_BRAKING("too much trail braking"),
    /**
     * Picks the throttle up before the car has turned: a front-drive car pushes wide, a rear-drive car steps out, and a lift
     * follows.
     */
    THROTTLE_TOO_EARLY("throttle too early"),
    /**
     * Brakes, turns in and picks up the throttle at other places from lap to lap: nothing can be said of the car before the driving
     * repeats.
     */
    INCONSISTENT("inconsistent");

    private final String words;

    DriverFault(String words) {
        this.words = words;
    }

    /** Returns the words a person reads, as in an option. */
    public String words() {
        return words;
    }
}
