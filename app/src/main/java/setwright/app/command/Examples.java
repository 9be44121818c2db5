package setwright.app.command;

/** How commands show examples: a heading and, in the footer, lines that could be typed as they stand. */
public final class Examples {
    /** Heads the footer of every command. */
    public static final String HEADING = "%nExamples:%n";

    private Examples() {}
}
