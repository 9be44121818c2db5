package setwright.app.command;

/** An option whose value cannot be used; one sentence, without the whole usage behind it. */
public final class BadOption extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Makes it; the message names the option, what was expected and what was found. */
    public BadOption(String message) {
        super(message);
    }
}
