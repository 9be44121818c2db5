package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.diagnose.Progress;
import setwright.app.scoreboard.Home;
import setwright.intake.columns.RecordingColumns;
import setwright.intake.gather.RecordingFiles;
import setwright.logbook.Logbook;
import setwright.logbook.row.RecordingRow;
import setwright.logbook.row.StintLineRow;
import setwright.logbook.row.StintRow;

/**
 * Imports that are killed at random moments: what was reported as kept is there, whole, and nothing is half there. So many kills as the property
 * {@code setwright.kills} says; docs/logbook.md tells how two hundred went.
 */
final class KilledImportTest {
    private static final int USUAL_KILLS = 4;
    private static final long LONGEST_MS = 1500;
    private static final Path CASE = Home.cases().resolve("practice-01");

    @TempDir
    private Path folder;

    @Test
    void loseNothingThatWasReportedAndLeaveNothingHalf() throws Exception {
        int kills = Integer.getInteger("setwright.kills", USUAL_KILLS);
        Random chance = new Random(7);
        Path season = folder.resolve("season");
        List<String> told = new ArrayList<>();
        for (int kill = 0; kill < kills; kill++) {
            Path said = folder.resolve("said.txt");
            Files.deleteIfExists(said);
            Process importer = new ProcessBuilder(
                            ProcessHandle.current().info().command().orElseThrow(),
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Importer.class.getName(),
                            season.toString(),
                            folder.resolve("laps-" + kill + "-").toString(),
                            "\n".repeat(kill + 1))
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .redirectOutput(said.toFile())
                    .start();
            // The first line says that it began. The last one is killed after an import came to its end, however slow
            // the machine is.
            long lines = kill == kills - 1 ? 2 : 1;
            while (importer.isAlive() && Files.readString(said).lines().count() < lines) {
                Thread.sleep(2);
            }
            Thread.sleep(chance.nextLong(LONGEST_MS));
            importer.destroyForcibly().waitFor();
            String text = Files.readString(said);
            told.addAll(text.substring(0, text.lastIndexOf('\n') + 1)
                    .lines()
                    .skip(1)
                    .toList());
            check(season, told);
        }
        assertThat(told).as("some imports came to their end").isNotEmpty();
    }

    private void check(Path season, List<String> told) throws Exception {
        Logbook logbook = Logbook.open(season.toString(), Optional.empty(), true);
        List<RecordingRow> recordings =
                logbook.look(tables -> tables.recordings().all());
        assertThat(recordings).extracting(RecordingRow::name).containsAll(told);
        for (RecordingRow recording : recordings) {
            Path columns = logbook.recordings().resolve(recording.file());
            assertThat(Digest.of(columns)).isEqualTo(recording.fileDigest());
            Optional<StintRow> stint = logbook.look(tables -> tables.stints().ofRecording(recording.id()));
            assertThat(stint).isPresent();
        }
        if (!recordings.isEmpty()) {
            RecordingRow last = recordings.get(recordings.size() - 1);
            assertThat(RecordingColumns.read(logbook.recordings().resolve(last.file()))
                            .sampleCount())
                    .isEqualTo((int) last.samples());
        }
        assertThat(logbook.<List<StintLineRow>>look(tables -> tables.stints().lines()))
                .hasSameSizeAs(recordings);
        try (java.sql.Connection connection =
                        java.sql.DriverManager.getConnection("jdbc:sqlite:" + season.resolve("logbook.sqlite"));
                java.sql.Statement statement = connection.createStatement();
                java.sql.ResultSet answer = statement.executeQuery("PRAGMA integrity_check")) {
            assertThat(answer.next()).isTrue();
            assertThat(answer.getString(1)).isEqualTo("ok");
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(one -> one.getFileName().toString().startsWith("laps-"))
                    .toList()) {
                Files.delete(file);
            }
        }
    }

    /** Reads recordings one after the other, each a little different, and says the name of each once it is kept. */
    static final class Importer {
        public static void main(String[] arguments) throws IOException {
            List<String> lines;
            try (Stream<String> text = new java.io.BufferedReader(new java.io.InputStreamReader(
                            new java.util.zip.GZIPInputStream(Files.newInputStream(CASE.resolve("stint1.csv.gz"))),
                            StandardCharsets.UTF_8))
                    .lines()) {
                lines = text.toList();
            }
            int enough = 4 * lines.size() / 10;
            Adding adding = new Adding(Logbook.open(arguments[0], Optional.empty(), true));
            for (int i = 1; ; i++) {
                Path file = Path.of(arguments[1] + i + ".csv");
                try (Writer out = new OutputStreamWriter(Files.newOutputStream(file), StandardCharsets.UTF_8)) {
                    out.write(String.join("\n", lines.subList(0, enough + i)) + arguments[2]); // no two files are alike
                }
                adding.add(
                        new AddRequest(
                                RecordingFiles.of(file),
                                Optional.of(CASE.resolve("car.yaml")),
                                Optional.empty(),
                                OptionalInt.empty(),
                                Optional.of("Heron"),
                                Optional.of("Ines"),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalInt.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty()),
                        Progress.silent());
                System.out.println(file.getFileName());
            }
        }
    }
}
