package setwright.app.truthbench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import setwright.app.scoreboard.Count;
import setwright.app.scoreboard.Home;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Totals of a few fixed cases in the last accepted run. Too few for rates: they show that something changed.
 *
 * @param seed    of their draw
 * @param cases   how many, from number 0
 * @param totals  by measure
 */
record BenchFloor(long seed, int cases, Map<BenchMeasure, Count> totals) {
    private static final int CASES = 6;
    private static final int LAPS = 6;

    static Path file() {
        return Home.folder().resolve("docs/truthbench.json");
    }

    /** Runs the cases. */
    static BenchFloor run() {
        List<Outcome> outcomes = IntStream.range(0, CASES)
                .parallel()
                .mapToObj(number -> CaseDraw.draw(BenchOptions.TUNING_SEED, number, Optional.empty()))
                .map(drawn -> driven(drawn.withLaps(LAPS)))
                .flatMap(Optional::stream)
                .toList();
        Map<BenchMeasure, Count> totals = new EnumMap<>(BenchMeasure.class);
        for (BenchMeasure measure : BenchMeasure.values()) {
            totals.put(measure, measure.over(outcomes));
        }
        return new BenchFloor(BenchOptions.TUNING_SEED, CASES, totals);
    }

    /** A car that nobody can keep on the road is left out, as in a whole run. */
    private static Optional<Outcome> driven(BenchCase drawn) {
        try {
            return Optional.of(CaseRun.run(drawn, Optional.empty(), OptionalDouble.empty()));
        } catch (Driven.Undriveable e) {
            return Optional.empty();
        }
    }

    static BenchFloor read() {
        return mapper().readValue(file().toFile(), BenchFloor.class);
    }

    void write() {
        mapper().writeValue(file().toFile(), this);
    }

    /** Returns a sentence for each total that is worse than before, or counts other chances. */
    List<String> faults(BenchFloor now) {
        List<String> faults = new ArrayList<>();
        totals.forEach((measure, before) -> {
            Count count = now.totals().getOrDefault(measure, new Count(0, 0));
            if (measure.ofAnswers()) {
                return;
            }
            if (count.of() != before.of()) {
                faults.add(measure.words() + ": counted out of " + count.of() + ", recorded out of " + before.of()
                        + "; the simulation or its cases have changed");
            } else if (measure.many() ? count.hit() < before.hit() : count.hit() > before.hit()) {
                faults.add(measure.words() + ": " + count + " now, " + before + " recorded");
            }
        });
        return faults;
    }

    private static JsonMapper mapper() {
        return JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
    }
}
