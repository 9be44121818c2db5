package setwright.app.failure;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Objects;
import setwright.app.predict.WrongChange;
import setwright.core.circuit.MissingQuantity;
import setwright.core.circuit.NotEnoughLaps;
import setwright.core.circuit.OtherCircuit;
import setwright.intake.problem.InputProblem;
import setwright.logbook.problem.LogbookProblem;

/**
 * What went wrong, for people.
 *
 * @param kind     whose turn it is
 * @param message  what, where and what to do; one line
 */
public record Trouble(Kind kind, String message) {
    /** Whose turn it is. */
    public enum Kind {
        /** Asked for wrongly. */
        WRONG_REQUEST,
        /** A file or what is kept is not as it should be. */
        BAD_INPUT,
        /** The laps do not allow an answer. */
        NOT_ENOUGH_EVIDENCE,
        /** The program is at fault. */
        FAULT
    }

    public Trouble {
        message = message.replaceAll("\\s*\\R\\s*", " ").replaceAll("\\p{Cntrl}", "");
    }

    /** Returns what a failure means. */
    public static Trouble of(Throwable failure) {
        String message = Objects.requireNonNullElse(failure.getMessage(), "");
        if (failure instanceof WrongChange) {
            return new Trouble(Kind.WRONG_REQUEST, message);
        }
        if (failure instanceof NotEnoughLaps) {
            return new Trouble(Kind.NOT_ENOUGH_EVIDENCE, message);
        }
        if (failure instanceof InputProblem
                || failure instanceof LogbookProblem
                || failure instanceof MissingQuantity
                || failure instanceof OtherCircuit) {
            return new Trouble(Kind.BAD_INPUT, message);
        }
        if (failure instanceof NoSuchFileException missing) {
            return new Trouble(
                    Kind.BAD_INPUT, missing.getFile() + ": there is no such file. Check its name and folder.");
        }
        if (failure instanceof AccessDeniedException denied) {
            return new Trouble(
                    Kind.BAD_INPUT, denied.getFile() + ": this file may not be opened. Check its permissions.");
        }
        if (failure instanceof FileSystemException trouble) {
            return new Trouble(
                    Kind.BAD_INPUT,
                    trouble.getFile() + ": " + Objects.requireNonNullElse(trouble.getReason(), "cannot be used") + ".");
        }
        if (failure instanceof IOException) {
            return new Trouble(Kind.BAD_INPUT, message + ".");
        }
        return new Trouble(
                Kind.FAULT,
                "something went wrong inside the program (" + failure.getClass().getSimpleName()
                        + (message.isEmpty() ? "" : ": " + message) + ").");
    }
}
