package setwright.app.truthbench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import setwright.core.simulation.truth.TrueDriving;

/**
 * Many cases run.
 *
 * @param outcomes     in the order of their numbers
 * @param lost         stints in which the car was lost, driven again in another mood
 * @param undriveable  names of the cases in which it always was
 */
record BenchRun(List<Outcome> outcomes, int lost, List<String> undriveable) {

    /**
     * Runs cases on all cores.
     *
     * @param options   which cases, and how long new ones may be begun
     * @param progress  is told a line for each case that is done
     */
    static BenchRun of(BenchOptions options, Consumer<String> progress) {
        Instant end = Instant.now().plus(Duration.ofMinutes(options.minutes()));
        ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Future<Optional<Outcome>>> running = new ArrayList<>();
            List<String> undriveable = java.util.Collections.synchronizedList(new ArrayList<>());
            for (int i = options.first(); i < options.first() + options.cases(); i++) {
                int number = i;
                running.add(pool.submit(() ->
                        Instant.now().isAfter(end) ? Optional.empty() : one(options, number, progress, undriveable)));
            }
            List<Outcome> outcomes = new ArrayList<>();
            for (Future<Optional<Outcome>> future : running) {
                future.get().ifPresent(outcomes::add);
            }
            int lost = outcomes.stream().mapToInt(Outcome::lost).sum();
            return new BenchRun(outcomes, lost, List.copyOf(undriveable));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped before all cases were run", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a case could not be made: " + e.getCause(), e);
        } finally {
            pool.shutdownNow();
        }
    }

    private static Optional<Outcome> one(
            BenchOptions options, int number, Consumer<String> progress, List<String> undriveable) {
        BenchCase drawn = CaseDraw.draw(options.seed(), number, options.only());
        try {
            Outcome outcome = CaseRun.run(drawn, options.keep(), options.otherDay());
            TrueDriving driving = outcome.driving();
            progress.accept(String.format(
                    java.util.Locale.ROOT,
                    "%s: %.2f %% over %d laps; %s; %s",
                    drawn.name(),
                    100.0 * driving.deviationShare(),
                    driving.laps(),
                    outcome.truthWords(),
                    outcome.answerWords()));
            return Optional.of(outcome);
        } catch (Driven.Undriveable e) {
            progress.accept(e.getMessage());
            undriveable.add(drawn.name());
            return Optional.empty();
        }
    }
}
