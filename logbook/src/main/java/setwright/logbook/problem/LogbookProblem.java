package setwright.logbook.problem;

/** Something about a logbook that a user can mend; the message says what and how. */
public final class LogbookProblem extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Makes one. */
    public LogbookProblem(String message) {
        super(message);
    }

    /** Makes one and keeps what caused it. */
    public LogbookProblem(String message, Throwable cause) {
        super(message, cause);
    }

    /** Returns the first line of what lies at the bottom of a failure. */
    public static String rootOf(Throwable failure) {
        Throwable root = failure;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return String.valueOf(root.getMessage()).lines().findFirst().orElse("unknown");
    }
}
