package setwright.app.text;

/** Colour and weight in a terminal, or none of either. */
public enum Paint {
    PLAIN,
    /** With ECMA-48 (fifth edition, 1991) select-graphic-rendition sequences. */
    COLOURED;

    private static final String RESET = "\u001b[0m";

    /** Returns the text in bold. */
    public String bold(String text) {
        return wrap("1", text);
    }

    /** Returns the text dimmed. */
    public String faint(String text) {
        return wrap("2", text);
    }

    /** Returns the text in the purple of understeer. */
    public String push(String text) {
        return wrap("38;5;98", text);
    }

    /** Returns the text in the orange of oversteer. */
    public String slide(String text) {
        return wrap("38;5;172", text);
    }

    private String wrap(String code, String text) {
        return this == PLAIN ? text : "\u001b[" + code + "m" + text + RESET;
    }
}
