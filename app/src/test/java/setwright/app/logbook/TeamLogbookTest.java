package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.command.ExitCode;
import setwright.app.scoreboard.Home;
import setwright.logbook.PostgresServer;

/** Two engineers at one logbook in PostgreSQL, each with a program of his own. */
final class TeamLogbookTest {
    private static final Path CASE = Home.cases().resolve("practice-01");

    @TempDir
    private Path folder;

    @Test
    void whatTheOneEntersTheOtherJudges() throws Exception {
        try (PostgresServer server = PostgresServer.start()) {
            String[] place = {
                "--logbook",
                server.database("season"),
                "--recordings",
                Files.createDirectories(folder.resolve("shared")).toString()
            };
            Program atTheCar = new Program(place);
            Program atTheWall = new Program(place);

            assertThat(atTheCar.run(
                            "add", CASE.resolve("stint1.csv.gz"), "--car", CASE.resolve("car.yaml"), "--name", "Heron"))
                    .as(atTheCar.complaint())
                    .isEqualTo(ExitCode.DONE);
            assertThat(atTheWall.run("propose", "--json"))
                    .as(atTheWall.complaint())
                    .isEqualTo(ExitCode.DONE);
            assertThat(atTheWall.run("trial", "plan", "front_wing=+2steps", "--json"))
                    .isEqualTo(ExitCode.DONE);
            assertThat(atTheCar.run("setup", "change", "rear_wing=+1step")).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(atTheCar.complaint()).contains("trial 1", "is under way");
            assertThat(atTheCar.run("setup", "change", "front_wing=+2steps")).isEqualTo(ExitCode.DONE);
            assertThat(atTheWall.run("log", "front_wing")).isEqualTo(ExitCode.DONE);
            assertThat(atTheWall.said())
                    .contains("Proposed after stint 1", "Trial 1 is planned", "setup 2: front_wing");
            assertThat(atTheWall.run("trial", "drop", "--json")).isEqualTo(ExitCode.DONE);
            assertThat(atTheWall.tree().at("/words").asString()).contains("is given up");
            assertThat(atTheCar.run("setup", "undo")).isEqualTo(ExitCode.DONE);
        }
    }
}
