package setwright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Map;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;
import setwright.app.predict.WrongChange;
import setwright.core.circuit.MissingQuantity;
import setwright.core.circuit.NotEnoughLaps;
import setwright.core.circuit.OtherCircuit;
import setwright.intake.problem.InputProblem;
import setwright.logbook.problem.LogbookProblem;

/** The one place where what went wrong becomes a message and an exit code. */
public final class Failures implements IExecutionExceptionHandler {
    /** Set to 1, it adds where in the program something went wrong. */
    private static final String TRACE = "SETWRIGHT_TRACE";

    private final Map<String, String> environment;

    /** Makes the handler; the environment tells whether traces are wanted. */
    public Failures(Map<String, String> environment) {
        this.environment = Map.copyOf(environment);
    }

    /** A message for the user and what the process ends with. */
    private record Told(int exitCode, String message) {}

    @Override
    public int handleExecutionException(Exception failure, CommandLine commandLine, ParseResult arguments) {
        Told told = tell(failure);
        PrintWriter messages = commandLine.getErr();
        messages.println(
                "setwright: " + told.message().replaceAll("\\s*\\R\\s*", " ").replaceAll("\\p{Cntrl}", ""));
        if (environment.getOrDefault(TRACE, "").equals("1")) {
            failure.printStackTrace(messages);
        }
        messages.flush();
        return told.exitCode();
    }

    private static Told tell(Throwable failure) {
        String message = Objects.requireNonNullElse(failure.getMessage(), "");
        if (failure instanceof WrongChange) {
            return new Told(ExitCode.USAGE, message);
        }
        if (failure instanceof NotEnoughLaps) {
            return new Told(ExitCode.NOT_ENOUGH_EVIDENCE, message);
        }
        if (failure instanceof BadOption) {
            return new Told(ExitCode.USAGE, message);
        }
        if (failure instanceof InputProblem
                || failure instanceof LogbookProblem
                || failure instanceof MissingQuantity
                || failure instanceof OtherCircuit) {
            return new Told(ExitCode.BAD_INPUT, message);
        }
        if (failure instanceof NoSuchFileException missing) {
            return new Told(
                    ExitCode.BAD_INPUT, missing.getFile() + ": there is no such file. Check its name and folder.");
        }
        if (failure instanceof AccessDeniedException denied) {
            return new Told(
                    ExitCode.BAD_INPUT, denied.getFile() + ": this file may not be opened. Check its permissions.");
        }
        if (failure instanceof FileSystemException trouble) {
            return new Told(
                    ExitCode.BAD_INPUT,
                    trouble.getFile() + ": " + Objects.requireNonNullElse(trouble.getReason(), "cannot be used") + ".");
        }
        if (failure instanceof IOException) {
            return new Told(ExitCode.BAD_INPUT, message + ".");
        }
        return new Told(
                ExitCode.FAULT,
                "something went wrong inside the program (" + failure.getClass().getSimpleName()
                        + (message.isEmpty() ? "" : ": " + message) + "). Set " + TRACE
                        + "=1 and run again to see where, and please report it.");
    }
}
