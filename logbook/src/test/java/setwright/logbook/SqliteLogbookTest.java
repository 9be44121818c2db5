package setwright.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import setwright.logbook.database.Database;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.EntryRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintRow;

/** A logbook in a folder. */
final class SqliteLogbookTest extends LogbookContract {
    @Override
    String place() {
        return folder.resolve("season").toString();
    }

    @Test
    void isNotBegunByReading() {
        String nowhere = folder.resolve("nowhere").toString();

        assertThatThrownBy(() -> Logbook.open(nowhere, Optional.empty(), false))
                .isInstanceOf(LogbookProblem.class)
                .hasMessageContaining("there is no logbook in " + nowhere)
                .hasMessageContaining("setwright add");
        assertThat(Path.of(nowhere)).doesNotExist();
    }

    @Test
    void refusesOneThatANewerProgramWrote() throws Exception {
        try (Connection connection = DriverManager.getConnection(
                        "jdbc:sqlite:" + folder.resolve("season").resolve("logbook.sqlite"));
                Statement statement = connection.createStatement()) {
            statement.execute(
                    "INSERT INTO flyway_schema_history SELECT 99, '99', 'later', 'SQL', 'V99__later.sql', 1, installed_by,"
                            + " installed_on, 1, 1 FROM flyway_schema_history WHERE installed_rank = 1");
        }

        assertThatThrownBy(() -> Logbook.open(place(), Optional.empty(), true))
                .isInstanceOf(LogbookProblem.class)
                .hasMessageContaining("newer setwright");
    }

    @Test
    void knowsItsNewestMigration() throws Exception {
        try (Connection connection = DriverManager.getConnection(
                        "jdbc:sqlite:" + folder.resolve("season").resolve("logbook.sqlite"));
                Statement statement = connection.createStatement();
                ResultSet newest = statement.executeQuery(
                        "SELECT version FROM flyway_schema_history ORDER BY installed_rank DESC")) {
            assertThat(newest.next()).isTrue();
            assertThat(newest.getString(1)).isEqualTo(Database.NEWEST);
        }
    }

    /** Such as an earlier program left it: nobody had been asked whether a car was in good order. */
    @Test
    void bringsAnEarlierLogbookUpToDate() throws Exception {
        long stint = Logbook.open(place(), Optional.empty(), true).with(this::stint);
        try (Connection connection = DriverManager.getConnection(
                        "jdbc:sqlite:" + folder.resolve("season").resolve("logbook.sqlite"));
                Statement statement = connection.createStatement()) {
            statement.execute("ALTER TABLE stint DROP COLUMN good_order");
            statement.execute("DELETE FROM flyway_schema_history WHERE version = '3'");
        }

        StintRow kept = Logbook.open(place(), Optional.empty(), true)
                .look(tables -> tables.stints().find(stint))
                .orElseThrow();
        assertThat(kept.goodOrder()).isFalse();
        assertThat(kept.bestS()).hasValue(91.25);
    }

    @Test
    void refusesWhatIsNoDatabase() throws Exception {
        Path other = Files.createDirectories(folder.resolve("other"));
        Files.writeString(
                other.resolve("logbook.sqlite"), "no database at all, but long enough to have a header of its own");

        assertThatThrownBy(() -> Logbook.open(other.toString(), Optional.empty(), true))
                .isInstanceOf(LogbookProblem.class)
                .hasMessageContaining("cannot be opened");
    }

    @Test
    void survivesAKilledWriter() throws Exception {
        Path said = folder.resolve("said.txt");
        Process writer = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElseThrow(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Endless.class.getName(),
                        place())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        while (writer.isAlive() && told(said) < 20) {
            Thread.sleep(5);
        }
        writer.destroyForcibly().waitFor();
        int told = told(said);

        int kept = Logbook.open(place(), Optional.empty(), false)
                .<List<CarRow>>with(tables -> tables.cars().all())
                .size();
        assertThat(kept).isBetween(Math.max(20, told), told + 1);
    }

    /** Returns the last number that was told whole. */
    private static int told(Path said) throws IOException {
        String text = Files.readString(said);
        return (int) text.substring(0, text.lastIndexOf('\n') + 1).lines().count();
    }

    @Test
    void twoProcessesLoseNothing() throws Exception {
        List<Process> writers = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            writers.add(new ProcessBuilder(
                            ProcessHandle.current().info().command().orElseThrow(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Counting.class.getName(),
                            place(),
                            "car " + i)
                    .inheritIO()
                    .start());
        }
        for (Process writer : writers) {
            assertThat(writer.waitFor()).isZero();
        }

        Logbook logbook = Logbook.open(place(), Optional.empty(), false);
        for (CarRow car : logbook.<List<CarRow>>look(tables -> tables.cars().all())) {
            assertThat(logbook.<List<SetupRow>>look(tables -> tables.setups().ofCar(car.id())))
                    .hasSize(Counting.SETUPS);
        }
        assertThat(logbook.<List<CarRow>>look(tables -> tables.cars().all())).hasSize(2);
    }

    @Test
    void readersDoNotWaitForAWriterAndWritersSayWhoIsInTheWay() throws Exception {
        Logbook logbook = Logbook.open(place(), Optional.empty(), false);
        try (Connection writer = DriverManager.getConnection(
                        "jdbc:sqlite:" + folder.resolve("season").resolve("logbook.sqlite"));
                Statement statement = writer.createStatement()) {
            statement.execute("BEGIN IMMEDIATE");
            assertThat(logbook.<List<CarRow>>look(tables -> tables.cars().all()))
                    .isEmpty();
            assertThatThrownBy(() -> logbook.with(tables -> tables.cars().add(new CarRow(0, "late", NOON))))
                    .isInstanceOf(LogbookProblem.class)
                    .hasMessageContaining("somebody else has been writing");
            statement.execute("ROLLBACK");
        }
        long late = logbook.with(tables -> tables.cars().add(new CarRow(0, "late", NOON)));
        assertThat(late).isPositive();
    }

    @Test
    void anOlderOneIsBroughtUpToDate() {
        Path old = folder.resolve("old");
        assertThat(old.toFile().mkdirs()).isTrue();
        Flyway.configure()
                .dataSource("jdbc:sqlite:" + old.resolve("logbook.sqlite"), "", "")
                .locations("classpath:setwright/logbook/tables")
                .target("1")
                .placeholders(Map.of("id", "INTEGER PRIMARY KEY AUTOINCREMENT"))
                .load()
                .migrate();

        Logbook logbook = Logbook.open(old.toString(), Optional.empty(), false);

        assertThat(logbook.<List<EntryRow>>look(tables -> tables.search("anything")))
                .isEmpty();
    }

    @Test
    void aCopyOfTheFolderIsTheSameLogbook() throws Exception {
        Logbook.open(place(), Optional.empty(), false)
                .with(tables -> tables.cars().add(new CarRow(0, "Heron", NOON)));
        Path copy = Files.createDirectories(folder.resolve("elsewhere"));
        try (Stream<Path> files = Files.list(folder.resolve("season"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        assertThat(Logbook.open(copy.toString(), Optional.empty(), false)
                        .<List<CarRow>>look(tables -> tables.cars().all()))
                .hasSize(1);
    }

    @Test
    void aPlaceThatTakesNothingIsNamed() {
        assertThatThrownBy(() -> Logbook.open("/proc/setwright", Optional.empty(), true))
                .isInstanceOf(LogbookProblem.class)
                .hasMessageContaining("no logbook can be kept in /proc/setwright");
    }

    /** Enters a car with a hundred setups. */
    static final class Counting {
        static final int SETUPS = 100;

        public static void main(String[] arguments) {
            Logbook logbook = Logbook.open(arguments[0], Optional.empty(), true);
            long car = logbook.with(tables -> tables.cars().add(new CarRow(0, arguments[1], NOON)));
            for (int i = 0; i < SETUPS; i++) {
                logbook.with(tables ->
                        tables.setups().add(new SetupRow(0, car, 0, Optional.empty(), "{}", "", "", "", NOON)));
            }
        }
    }

    /** Writes until it is killed; says each row once it is kept. */
    static final class Endless {
        public static void main(String[] arguments) {
            Logbook logbook = Logbook.open(arguments[0], Optional.empty(), true);
            for (int i = 1; ; i++) {
                String name = "car " + i;
                logbook.with(tables -> tables.cars().add(new CarRow(0, name, NOON)));
                System.out.println(i);
            }
        }
    }
}
