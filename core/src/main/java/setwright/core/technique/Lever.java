package setwright.core.technique;

/** What a driver can do otherwise from one lap to the next. */
public enum Lever {
    /** Brake at turn-in as a share of its peak in that corner. */
    BRAKE_AT_TURN_IN("brake at turn-in", "share of peak", 0.02),
    /** From turn-in until the brake is off, m; negative when the brake is off before. */
    OVERLAP("overlap of brake and steering", "m", 0.5),
    /** How quickly the brake comes off from nine tenths of its peak, share of the peak per second. */
    RELEASE_RATE("brake release", "share of peak per s", 0.1),
    /** Speed at the usual turn-in point, km/h. */
    ENTRY_SPEED("entry speed", "km/h", 0.3),
    /** Where the throttle is picked up, as time at the corner's lowest speed; more is later, s. */
    PICK_UP("throttle pick-up", "s", 0.02),
    /** How quickly the throttle is opened over the tenth of the corner behind the pick-up, share of the pedal per second. */
    OPENING("throttle opening", "share of throttle per s", 0.1);

    private final String words;
    private final String unit;
    private final double resolution;

    Lever(String words, String unit, double resolution) {
        this.words = words;
        this.unit = unit;
        this.resolution = resolution;
    }

    /** Returns the words a person reads; also the value in JSON. */
    public String words() {
        return words;
    }

    /** Returns the unit of its values. */
    public String unit() {
        return unit;
    }

    /** Returns the standard deviation that reading it off a recording leaves, in its unit: what loggers resolve (orientation). */
    public double resolution() {
        return resolution;
    }
}
