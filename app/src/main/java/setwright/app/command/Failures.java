package setwright.app.command;

import java.io.PrintWriter;
import java.util.Map;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;
import setwright.app.failure.Trouble;

/** The one place where what went wrong becomes a message and an exit code. */
public final class Failures implements IExecutionExceptionHandler {
    /** Set to 1, it adds where in the program something went wrong. */
    private static final String TRACE = "SETWRIGHT_TRACE";

    private final Map<String, String> environment;

    /** Makes the handler; the environment tells whether traces are wanted. */
    public Failures(Map<String, String> environment) {
        this.environment = Map.copyOf(environment);
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine commandLine, ParseResult arguments) {
        Trouble trouble = failure instanceof BadOption
                ? new Trouble(Trouble.Kind.WRONG_REQUEST, Objects.requireNonNullElse(failure.getMessage(), ""))
                : Trouble.of(failure);
        PrintWriter messages = commandLine.getErr();
        messages.println("setwright: " + trouble.message()
                + (trouble.kind() == Trouble.Kind.FAULT
                        ? " Set " + TRACE + "=1 and run again to see where, and please report it."
                        : ""));
        if (environment.getOrDefault(TRACE, "").equals("1")) {
            failure.printStackTrace(messages);
        }
        messages.flush();
        return switch (trouble.kind()) {
            case WRONG_REQUEST -> ExitCode.USAGE;
            case BAD_INPUT -> ExitCode.BAD_INPUT;
            case NOT_ENOUGH_EVIDENCE -> ExitCode.NOT_ENOUGH_EVIDENCE;
            case FAULT -> ExitCode.FAULT;
        };
    }
}
