package setwright.app.logbook;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/** Work that goes on beside other work, on threads of its own: the common ones are for loops, and may be only one. */
final class Together {
    private static final Executor THREADS = work -> {
        Thread thread = new Thread(work, "setwright-beside");
        thread.setDaemon(true);
        thread.start();
    };

    private Together() {}

    /** Begins work. */
    static <T> CompletableFuture<T> begin(Supplier<T> work) {
        return CompletableFuture.supplyAsync(work, THREADS);
    }

    /** Waits for a result; fails as the work did. */
    static <T> T result(CompletableFuture<T> work) {
        try {
            return work.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            if (e.getCause() instanceof Error own) {
                throw own;
            }
            throw e;
        }
    }
}
