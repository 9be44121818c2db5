package setwright.app.command;

import java.util.function.IntSupplier;

/** What happens when memory does not suffice: one sentence, like for everything else that goes wrong. */
public final class Memory {
    private static final long MEGABYTE = 1L << 20;

    private Memory() {}

    /** Runs a program; returns its exit code. */
    public static int watched(IntSupplier program) {
        try {
            return program.getAsInt();
        } catch (OutOfMemoryError e) {
            System.err.printf(
                    "setwright: the memory that the program may use (%d MB) does not suffice. Give it more:"
                            + " SETWRIGHT_JAVA_OPTS=-Xmx4g, or cut the recording.%n",
                    Runtime.getRuntime().maxMemory() / MEGABYTE);
            return ExitCode.FAULT;
        }
    }
}
