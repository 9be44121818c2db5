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
}
