package setwright.fleet.work;

import java.util.function.BooleanSupplier;

/**
 * Whose attempt it is.
 *
 * @param attempt      0 for the first one
 * @param interrupted  tells whether the work is to be stopped
 */
public record Task(int attempt, BooleanSupplier interrupted) {
    /** A first attempt that nobody stops. */
    public static final Task FIRST = new Task(0, () -> false);
}
