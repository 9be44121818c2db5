package setwright.app.truthbench;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Many cases of which only the hands were asked.
 *
 * @param seed     of their draw
 * @param stints   that were driven and read
 * @param leftOut  cases in which the car was always lost, or whose recording was refused
 * @param tally    of all of them
 */
record HandsRun(long seed, int stints, int leftOut, HandsTally tally) {

    /**
     * Runs cases on all cores.
     *
     * @param progress  is told a line for each case that is done
     */
    static HandsRun of(BenchOptions options, Consumer<String> progress) {
        List<Optional<HandsTally>> tallies = IntStream.range(options.first(), options.first() + options.cases())
                .parallel()
                .mapToObj(number -> one(CaseDraw.draw(options.seed(), number, options.only()), progress))
                .toList();
        List<HandsTally> found = tallies.stream().flatMap(Optional::stream).toList();
        return new HandsRun(
                options.seed(),
                found.size(),
                tallies.size() - found.size(),
                found.stream().reduce(HandsTally.NONE, HandsTally::plus));
    }

    private static Optional<HandsTally> one(BenchCase drawn, Consumer<String> progress) {
        try {
            HandsTally tally = HandsCase.tally(drawn);
            progress.accept(drawn.name());
            return Optional.of(tally);
        } catch (RuntimeException e) {
            progress.accept(drawn.name() + ": left out, " + e.getMessage());
            return Optional.empty();
        }
    }

    void print(PrintStream out) {
        out.println("seed " + seed + ", " + stints + " stints, " + leftOut + " cases left out");
        out.println(tally.table().text());
    }
}
