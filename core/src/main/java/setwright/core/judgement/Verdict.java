package setwright.core.judgement;

/** What to do next. */
public enum Verdict {
    CHANGE_THE_CAR("change the car"),
    COACH_THE_DRIVER("coach the driver"),
    NOTHING_TO_CHANGE("nothing to change"),
    NOT_ENOUGH_EVIDENCE("not enough evidence");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** Returns the words a person reads; also the value in JSON. */
    public String words() {
        return words;
    }
}
