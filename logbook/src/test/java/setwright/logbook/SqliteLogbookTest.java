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
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.logbook.database.Database;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;

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
                .<java.util.List<CarRow>>with(tables -> tables.cars().all())
                .size();
        assertThat(kept).isBetween(Math.max(20, told), told + 1);
    }

    /** Returns the last number that was told whole. */
    private static int told(Path said) throws IOException {
        String text = Files.readString(said);
        return (int) text.substring(0, text.lastIndexOf('\n') + 1).lines().count();
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
