package setwright.core.judgement;

/** The input that sets a problem off. */
public enum Trigger {
    BRAKE_APPLICATION("brake application", "as the brake goes on"),
    BRAKE_RELEASE("brake release", "as the brake comes off"),
    TURN_IN("turn-in", "as the wheel is turned in"),
    THROTTLE_PICK_UP("throttle pick-up", "as the throttle is picked up"),
    THROTTLE_LIFT("throttle lift", "as the throttle is lifted"),
    BUMP("bump", "at a bump or kerb"),
    NONE("none", "with no single input");

    private final String words;
    private final String begins;

    Trigger(String words, String begins) {
        this.words = words;
        this.begins = begins;
    }

    /** Returns the words a person reads; also the value in JSON. */
    public String words() {
        return words;
    }

    /** Returns when it acts, as part of a sentence: "as the brake comes off". */
    public String begins() {
        return begins;
    }
}
