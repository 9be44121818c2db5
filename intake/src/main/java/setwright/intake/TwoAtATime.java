package setwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Does pieces of work on two threads of its own: the common ones are for loops, and may be only one. */
final class TwoAtATime {
    private static final int THREADS = 2;

    private TwoAtATime() {}

    /**
     * Does work for each index, begun in their order.
     *
     * @return what came of it, in their order
     * @throws RuntimeException as the first piece does that fails, when all are over
     */
    static <T> List<T> each(int count, IntFunction<T> work) {
        List<Callable<T>> pieces = IntStream.range(0, count)
                .<Callable<T>>mapToObj(i -> () -> work.apply(i))
                .toList();
        ExecutorService threads = Executors.newFixedThreadPool(THREADS, run -> {
            Thread thread = new Thread(run, "setwright-part");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<T> done = new ArrayList<>();
            for (Future<T> piece : threads.invokeAll(pieces)) {
                done.add(piece.get());
            }
            return done;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            if (e.getCause() instanceof Error own) {
                throw own;
            }
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw (CancellationException) new CancellationException("interrupted").initCause(e);
        } finally {
            threads.shutdown();
        }
    }
}
