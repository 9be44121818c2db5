package setwright.core.circuit;

/** Thrown when a recording lacks a quantity without which samples cannot be placed on a circuit. */
public final class MissingQuantity extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Makes one; the message says what is missing, why it is needed and what to do. */
    public MissingQuantity(String message) {
        super(message);
    }
}
