package setwright.core.simulation.truth;

/** What really sets a problem off. */
public enum TrueTrigger {
    /** The brake coming off while the car already turns. */
    TRAIL_BRAKE("trail_brake"),
    BRAKE("brake"),
    THROTTLE("throttle"),
    /** None: it is there in steady cornering. */
    STEADY("steady"),
    /** None, and only the air makes it. */
    SPEED("speed"),
    /** Turning in too fast. */
    ENTRY_SPEED("entry_speed"),
    BUMP("bump"),
    NONE("none");

    private final String word;

    TrueTrigger(String word) {
        this.word = word;
    }

    /** Returns the word that scoring knows it by. */
    public String word() {
        return word;
    }
}
