package setwright.benchmarks.growth;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import setwright.benchmarks.measure.PairedTimes;
import setwright.benchmarks.measure.Spent;
import setwright.benchmarks.measure.Spread;

/**
 * A file and what it took.
 *
 * @param value   of what is varied
 * @param bytes   of the file
 * @param rounds  parts of each round
 */
record Point(int value, long bytes, List<Map<Part, Spent>> rounds) {
    Point {
        rounds = List.copyOf(rounds);
    }

    Spread of(Part part, ToDoubleFunction<Spent> figure) {
        return PairedTimes.of(
                rounds.stream()
                        .flatMap(round -> java.util.stream.Stream.ofNullable(round.get(part)))
                        .toList(),
                figure);
    }
}
