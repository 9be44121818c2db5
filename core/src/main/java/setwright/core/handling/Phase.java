package setwright.core.handling;

/** The part of a corner, named by what the driver does in it. */
public enum Phase {
    /** On the brake with the wheel still straight. */
    BRAKING("braking"),
    /** From turn-in until the brake is off. */
    ENTRY("entry"),
    /** Until the throttle is picked up. */
    MID("mid"),
    /** Until the wheel is straight again or the car is flat out on the straight. */
    EXIT("exit");

    private final String words;

    Phase(String words) {
        this.words = words;
    }

    /** Returns the word a person reads; also the value in JSON. */
    public String words() {
        return words;
    }
}
