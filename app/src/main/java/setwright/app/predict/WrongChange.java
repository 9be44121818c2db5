package setwright.app.predict;

/** A change that cannot be made, or that cannot be read; the message names item, value and what is allowed. */
public final class WrongChange extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Makes one. */
    public WrongChange(String message) {
        super(message);
    }
}
