package setwright.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import setwright.logbook.Logbook;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.EntryRow;
import setwright.logbook.row.RecordingRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintLineRow;
import setwright.logbook.row.StintRow;

/** A logbook of many stints: listed, and searched. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LogbookBenchmark {
    static final int STINTS = 10_000;
    private static final Instant NOON = Instant.parse("2026-03-01T12:00:00Z");

    private Path folder;
    private Logbook logbook;

    /** Enters the stints. */
    @Setup
    public void prepare() throws IOException {
        folder = Files.createTempDirectory("setwright-logbook");
        logbook = Logbook.open(folder.toString(), Optional.empty(), true);
        logbook.with(tables -> {
            long car = tables.cars().add(new CarRow(0, "Heron", NOON));
            long setup =
                    tables.setups().add(new SetupRow(0, car, 0, Optional.empty(), "x".repeat(2000), "", "", "", NOON));
            long circuit = tables.circuits().add(new CircuitRow(0, "Lakeside", "x".repeat(200_000), 3100.0, NOON));
            long driver = tables.drivers().add("Ines");
            for (int i = 0; i < STINTS; i++) {
                String digest = Integer.toHexString(i);
                long recording = tables.recordings()
                        .add(new RecordingRow(
                                0, "run " + i + ".csv", digest, digest, digest, 100.0, 90_000, "[]", "", NOON));
                long stint = tables.stints()
                        .add(new StintRow(
                                0,
                                recording,
                                car,
                                setup,
                                driver,
                                circuit,
                                9,
                                7,
                                OptionalDouble.of(91.2 + 0.001 * i),
                                OptionalDouble.of(91.9),
                                OptionalInt.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                false,
                                NOON));
                tables.entries()
                        .add(new EntryRow(
                                0,
                                NOON,
                                "stint",
                                Optional.of(car),
                                Optional.of(stint),
                                "Stint " + stint + " from run " + i + ".csv: Ines in Heron with setup 1 at Lakeside"
                                        + (i % 100 == 0 ? ", pushes on entry" : "")));
            }
            return car;
        });
    }

    /** Removes them. */
    @TearDown
    public void remove() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.delete(file);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    /** All of them, as a list shows them. */
    @Benchmark
    public List<StintLineRow> list() {
        return logbook.look(tables -> tables.stints().lines());
    }

    /** One in a hundred of them. */
    @Benchmark
    public List<EntryRow> search() {
        return logbook.look(tables -> tables.search("push entry"));
    }
}
