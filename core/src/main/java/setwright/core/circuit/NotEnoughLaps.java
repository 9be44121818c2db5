package setwright.core.circuit;

/** Thrown when a recording holds too few whole laps to say anything about the circuit. */
public final class NotEnoughLaps extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Makes one; the message says what was found, what is needed and what to do. */
    public NotEnoughLaps(String message) {
        super(message);
    }
}
