package setwright.core.judgement;

/** The input that sets a problem off. */
public enum Trigger {
    BRAKE_APPLICATION("brake application"),
    BRAKE_RELEASE("brake release"),
    TURN_IN("turn-in"),
    THROTTLE_PICK_UP("throttle pick-up"),
    THROTTLE_LIFT("throttle lift"),
    BUMP("bump"),
    NONE("none");

    private final String words;

    Trigger(String words) {
        this.words = words;
    }

    /** Returns the words a person reads; also the value in JSON. */
    public String words() {
        return words;
    }
}
