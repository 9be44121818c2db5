package setwright.core.handling;

/** The part of a corner, named by what the driver does in it. */
public enum Phase {
    /** On the brake with the wheel still straight. */
    BRAKING("braking", "under braking"),
    /** From turn-in until the brake is off. */
    ENTRY("entry", "on entry"),
    /** Until the throttle is picked up. */
    MID("mid", "in the middle of the corner"),
    /** Until the wheel is straight again or the car is flat out on the straight. */
    EXIT("exit", "on the exit");

    private final String words;
    private final String place;

    Phase(String words, String place) {
        this.words = words;
        this.place = place;
    }

    /** Returns the word a person reads; also the value in JSON. */
    public String words() {
        return words;
    }

    /** Returns where that is, for a sentence: "on entry". */
    public String place() {
        return place;
    }
}
