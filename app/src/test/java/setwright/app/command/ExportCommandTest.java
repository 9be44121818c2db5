package setwright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.example.Example;
import setwright.core.proposal.Proposer;
import setwright.intake.gather.RecordingFiles;

/** What {@code export} accepts, prints, writes and refuses. */
final class ExportCommandTest {
    @TempDir
    private Path folder;

    private StringWriter results = new StringWriter();
    private StringWriter messages = new StringWriter();
    private final List<DiagnoseRequest> requests = new ArrayList<>();

    @Test
    void aTableGoesToStandardOutputAsCsv() {
        assertThat(run("laps", "a.csv", "--car", "car.yaml")).isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).startsWith("stint,lap,kind,judged,why,time (s)\na.csv,0,out lap,false,out lap,");
        assertThat(messages.toString()).isEmpty();
    }

    @Test
    void theEndingOfTheFileTellsTheForm() throws IOException {
        for (String form : List.of("csv", "json", "parquet")) {
            Path file = folder.resolve("laps." + form);
            assertThat(run("laps", "a.csv", "--to", file.toString())).isEqualTo(ExitCode.DONE);
            assertThat(results.toString()).isEmpty();
            assertThat(messages.toString()).isEqualTo("Export: 14 rows of laps: " + file + System.lineSeparator());
        }
        assertThat(Files.readString(folder.resolve("laps.json"))).startsWith("{\"version\": 1, \"table\": \"laps\"");
        assertThat(Files.readAllBytes(folder.resolve("laps.parquet"))).startsWith('P', 'A', 'R', '1');
        Path other = folder.resolve("laps.txt");
        assertThat(run("laps", "a.csv", "--to", other.toString(), "--as", "json"))
                .isEqualTo(ExitCode.DONE);
        assertThat(other).content().startsWith("{");
    }

    @Test
    void severalRecordingsStandBelowEachOtherOnOneCircuit() {
        assertThat(run("passes", "a.csv", "b.csv")).isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).contains("\na.csv,", "\nb.csv,");
        assertThat(requests.get(1).circuit()).isEqualTo(requests.get(0).saveCircuit());
    }

    @Test
    void whatWasRecordedBesideTheLapsIsReadWithThem() {
        assertThat(run("passes", "a.csv", "--with", "track.gpx", "--with", "air.csv"))
                .isEqualTo(ExitCode.DONE);
        assertThat(requests.get(0).recording())
                .isEqualTo(new RecordingFiles(Path.of("a.csv"), List.of(Path.of("track.gpx"), Path.of("air.csv"))));
        refused("nothing tells to which of them --with belongs", "passes", "a.csv", "b.csv", "--with", "track.gpx");
    }

    @Test
    void csvHasTheUnitsAskedFor() {
        assertThat(run("circuit", "a.csv", "--units", "imperial")).isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).startsWith("station (ft),x (ft),y (ft),heading (deg),curvature (1/ft),corner\n");
        assertThat(run("circuit", "a.csv", "--units", "imperial", "--as", "json"))
                .isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).contains("\"unit\": \"1/m\"").doesNotContain("ft");
    }

    @Test
    void whatCannotBeIsRefusedBeforeAnythingIsRead() {
        refused("there is no table 'lap'", "lap", "a.csv");
        refused("say what is wanted");
        refused("Parquet is no text", "laps", "a.csv", "--as", "parquet");
        refused("is of one recording or stint, got 2", "channels", "a.csv", "b.csv");
        refused("is of the whole logbook: leave out '3'", "trials", "3");
        refused("leave out the table, --as and --to", "laps", "--out", "season");
        assertThat(run("laps", "a.csv", "--as", "xml")).isEqualTo(ExitCode.USAGE);
        assertThat(run("proposals", "a.csv")).isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString()).contains("Missing --car SHEET");
        assertThat(requests).isEmpty();
    }

    private void refused(String why, String... arguments) {
        assertThat(run(arguments)).isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString().lines()).hasSize(1);
        assertThat(messages.toString()).contains(why);
        assertThat(results.toString()).isEmpty();
    }

    @Test
    void whatIsReadIsNeverOverwritten() throws IOException {
        Path laps = Files.writeString(folder.resolve("laps.csv"), "kept");
        assertThat(run("laps", laps.toString(), "--to", laps.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("--to would overwrite");
        assertThat(laps).content().isEqualTo("kept");
        assertThat(run("laps", "a.csv", "--with", laps.toString(), "--to", laps.toString()))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(laps).content().isEqualTo("kept");
        assertThat(run("laps", "a.csv", "--to", folder.resolve("no/laps.csv").toString()))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("folder does not exist");
        assertThat(requests).isEmpty();
    }

    @Test
    void aMissingFileIsOneLine() {
        Path to = folder.resolve("laps.csv");
        int code = run(
                (request, progress) -> {
                    throw new NoSuchFileException("a.csv");
                },
                "laps",
                "a.csv",
                "--to",
                to.toString());
        assertThat(code).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString().lines()).hasSize(1);
        assertThat(to).doesNotExist();
    }

    @Test
    void drawingsGoIntoAFolder() throws IOException {
        Path plots = folder.resolve("some/plots");
        assertThat(run("plots", "a.csv", "--to", plots.toString())).isEqualTo(ExitCode.DONE);
        assertThat(messages.toString()).isEqualTo("Export: 19 drawings: " + plots + System.lineSeparator());
        assertThat(plots.resolve("map.svg")).content().startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg ");
        refused("--to FOLDER", "plots", "a.csv");
        refused("leave out --as", "plots", "a.csv", "--to", plots.toString(), "--as", "csv");
        Path file = Files.writeString(folder.resolve("file"), "kept");
        assertThat(run("plots", "a.csv", "--to", file.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("is a file");
    }

    @Test
    void withoutLapsALogbookIsNeeded() {
        String nowhere = folder.resolve("nowhere").toString();
        assertThat(run("laps", "--logbook", nowhere)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("there is no logbook in " + nowhere);
        assertThat(run("trials", "--logbook", nowhere)).isEqualTo(ExitCode.BAD_INPUT);
    }

    private int run(String... arguments) {
        return run(
                (request, progress) -> {
                    requests.add(request);
                    return Example.answer();
                },
                arguments);
    }

    private int run(Diagnoser diagnoser, String... arguments) {
        results = new StringWriter();
        messages = new StringWriter();
        return new CommandLine(new ExportCommand(diagnoser, NoLogbook::open, Proposer::propose))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new Failures(Map.of()))
                .setOut(new PrintWriter(results))
                .setErr(new PrintWriter(messages))
                .execute(arguments);
    }
}
