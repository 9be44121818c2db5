package setwright.core.circuit;

/** Thrown when a recording was not taken on the circuit that it was to be laid on. */
public final class OtherCircuit extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Makes one; the message gives the figures that show it. */
    public OtherCircuit(String message) {
        super(message);
    }
}
