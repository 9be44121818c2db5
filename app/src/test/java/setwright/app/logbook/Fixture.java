package setwright.app.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import setwright.app.scoreboard.Home;
import setwright.logbook.Logbook;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.RecordingRow;
import setwright.logbook.row.StintRow;

/** A logbook with one car, and stints that nobody drove. */
final class Fixture {
    static final Path SHEET = Home.cases().resolve("practice-08").resolve("car_stint1.yaml");
    private static final Instant NOON = Instant.parse("2026-03-01T12:00:00Z");

    final Logbook logbook;
    final SetupDesk setups;
    private int recordings;

    Fixture(Path folder) throws IOException {
        this.logbook = Logbook.open(folder.resolve("season").toString(), Optional.empty(), true);
        this.setups = new SetupDesk(logbook);
        setups.enter(SHEET, Optional.of("Heron"), "", "");
    }

    /** Enters a stint with the setup that is on the car; returns its number. */
    long stint(String driver, int goodLaps) {
        return stint(
                driver,
                goodLaps,
                setups.show(Optional.of("Heron"), OptionalInt.empty()).setup().number());
    }

    /** Enters a stint with a setup that was on the car at some time. */
    long stint(String driver, int goodLaps, int setup) {
        recordings++;
        String name = "run " + recordings;
        return logbook.with(tables -> {
            long recording =
                    tables.recordings().add(new RecordingRow(0, name, name, name, name, 100.0, 10, "[]", "", NOON));
            long circuit = tables.circuits()
                    .named("Lakeside")
                    .map(CircuitRow::id)
                    .orElseGet(() -> tables.circuits().add(new CircuitRow(0, "Lakeside", "{}", 3000.0, NOON)));
            long who = tables.drivers()
                    .named(driver)
                    .map(row -> row.id())
                    .orElseGet(() -> tables.drivers().add(driver));
            return tables.stints()
                    .add(new StintRow(
                            0,
                            recording,
                            1,
                            setups.show(Optional.of("Heron"), OptionalInt.of(setup))
                                    .setup()
                                    .id(),
                            who,
                            circuit,
                            goodLaps + 1,
                            goodLaps,
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            OptionalInt.empty(),
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            false,
                            NOON));
        });
    }

    static String text() throws IOException {
        return Files.readString(SHEET);
    }
}
