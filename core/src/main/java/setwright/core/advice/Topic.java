package setwright.core.advice;

/** What is looked at. */
public enum Topic {
    GEARING("gearing"),
    BRAKE_BALANCE("brake balance"),
    RIDE_HEIGHT("ride height"),
    TYRE_TEMPERATURE("tyre temperature"),
    DRIFT("drift over the stint");

    private final String words;

    Topic(String words) {
        this.words = words;
    }

    /** Returns the words a person reads; also the value in JSON. */
    public String words() {
        return words;
    }
}
