package setwright.app.command;

/** What the process's exit code means. */
public final class ExitCode {
    public static final int DONE = 0;
    /** A fault of the program itself. */
    public static final int FAULT = 1;

    public static final int USAGE = 2;
    public static final int BAD_INPUT = 3;
    public static final int NOT_ENOUGH_EVIDENCE = 4;

    private ExitCode() {}
}
