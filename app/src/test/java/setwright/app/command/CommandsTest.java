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
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.core.judgement.Verdict;
import setwright.core.proposal.Proposer;
import setwright.intake.gather.RecordingFiles;

/** The commands with the work behind them replaced: what is read, printed, written and returned. */
final class CommandsTest {
    @TempDir
    private Path folder;

    private final StringWriter results = new StringWriter();
    private final StringWriter messages = new StringWriter();
    private final List<DiagnoseRequest> requests = new ArrayList<>();

    @Test
    void diagnosePrintsTheStory() {
        assertThat(run(Example.answer(), "laps.csv", "--car", "car.yaml")).isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).contains("Verdict  Change the car");
        assertThat(requests.get(0).recording()).isEqualTo(RecordingFiles.of(Path.of("laps.csv")));
        assertThat(requests.get(0).car()).contains(Path.of("car.yaml"));
        assertThat(requests.get(0).map()).isEmpty();
    }

    /** The example's findings were invented beside its passes, which do not bear them out. */
    @Test
    void severalRecordingsAreHeldAgainstEachOther() {
        assertThat(run(Example.answer(), "a.csv", "b.csv", "--driver", "Ada", "--driver", "Bo", "--circuit", "c.json"))
                .isEqualTo(ExitCode.NOT_ENOUGH_EVIDENCE);
        assertThat(results.toString()).contains("Ada", "Bo", "Pooled", "Verdict");
        assertThat(requests)
                .extracting(DiagnoseRequest::recording)
                .containsExactly(RecordingFiles.of(Path.of("a.csv")), RecordingFiles.of(Path.of("b.csv")));
        assertThat(requests).allSatisfy(request -> assertThat(request.circuit()).contains(Path.of("c.json")));
    }

    @Test
    void eachRecordingNeedsItsDriver() {
        assertThat(run(Example.answer(), "a.csv", "b.csv", "c.csv", "--driver", "Ada", "--driver", "Bo"))
                .isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString()).contains("--driver", "3 recordings", "2 names");
        assertThat(requests).isEmpty();
    }

    @Test
    void theSecondRecordingIsReadOnTheCircuitOfTheFirst() {
        run(Example.answer(), "a.csv", "b.csv");
        assertThat(requests.get(0).saveCircuit()).isPresent();
        assertThat(requests.get(1).circuit()).isEqualTo(requests.get(0).saveCircuit());
    }

    @Test
    void jsonIsAllThatStandsOnStandardOutput() {
        Path report = folder.resolve("report.html");
        assertThat(run(Example.answer(), "laps.csv", "--json", "--html", report.toString()))
                .isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).startsWith("{").endsWith("}\n");
        assertThat(messages.toString()).contains("Report: ");
        assertThat(report).content().startsWith("<!doctype html>");
    }

    @Test
    void whatIsReadIsNeverOverwritten() throws IOException {
        Path laps = Files.writeString(folder.resolve("laps.csv"), "kept");
        Path car = Files.writeString(folder.resolve("car.yaml"), "kept");
        for (String option : List.of("--html", "--save-circuit", "--write-map")) {
            for (Path read : List.of(laps, car)) {
                String samePlace =
                        folder.resolve(".").resolve(read.getFileName()).toString();
                assertThat(run(Example.answer(), laps.toString(), "--car", car.toString(), option, samePlace))
                        .isEqualTo(ExitCode.BAD_INPUT);
                assertThat(messages.toString()).contains(option + " would overwrite");
            }
        }
        assertThat(laps).hasContent("kept");
        assertThat(car).hasContent("kept");
        assertThat(requests).isEmpty();
    }

    @Test
    void twoOutputsDoNotShareAFile() {
        String file = folder.resolve("a").toString();
        assertThat(run(Example.answer(), "laps.csv", "--html", file, "--write-map", file))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("--html", "--write-map", "both name");
        assertThat(requests).isEmpty();
    }

    @Test
    void notEnoughEvidenceHasItsOwnExitCode() {
        assertThat(run(Example.without(Verdict.NOT_ENOUGH_EVIDENCE, "two laps"), "laps.csv"))
                .isEqualTo(ExitCode.NOT_ENOUGH_EVIDENCE);
        assertThat(results.toString()).contains("Not enough evidence");
    }

    @Test
    void unitsAreChosen() {
        run(Example.answer(), "laps.csv", "--units", "imperial");
        assertThat(results.toString()).contains(" ft from lap to lap");
    }

    @Test
    void wrongUsageExplainsItself() {
        assertThat(run(Example.answer(), "laps.csv", "--units", "furlongs")).isEqualTo(ExitCode.USAGE);
        assertThat(results.toString()).isEmpty();
        assertThat(messages.toString()).contains("--units", "FILE", "Usage:");
    }

    @Test
    void withoutARecordingALogbookIsNeeded() {
        String nowhere = folder.resolve("nowhere").toString();
        assertThat(run(Example.answer(), "--logbook", nowhere)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("there is no logbook in " + nowhere);
        assertThat(run(Example.answer(), "3", "--logbook", nowhere, "--car", "car.yaml"))
                .isEqualTo(ExitCode.USAGE);
    }

    @Test
    void aMissingFileIsOneLineAndNoTrace() {
        int code = run(
                (request, progress) -> {
                    throw new NoSuchFileException("laps.csv");
                },
                Map.of(),
                "laps.csv");
        assertThat(code).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(results.toString()).isEmpty();
        assertThat(messages.toString().lines())
                .hasSize(1)
                .first()
                .asString()
                .contains("laps.csv: there is no such file");
    }

    @Test
    void aReportThatCannotBeWrittenPrintsNothingElse() {
        int code = run(
                Example.answer(),
                "laps.csv",
                "--html",
                folder.resolve("no/report.html").toString());
        assertThat(code).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(results.toString()).isEmpty();
        assertThat(messages.toString()).contains("folder does not exist");
    }

    @Test
    void aFaultOfTheProgramIsOneSentenceUnlessATraceIsAskedFor() {
        Diagnoser broken = (request, progress) -> {
            throw new IllegalStateException("sum is off");
        };
        assertThat(run(broken, Map.of(), "laps.csv")).isEqualTo(ExitCode.FAULT);
        assertThat(messages.toString().lines()).hasSize(1);
        assertThat(messages.toString())
                .contains("inside the program", "sum is off")
                .doesNotContain("\tat ");

        assertThat(run(broken, Map.of("SETWRIGHT_TRACE", "1"), "laps.csv")).isEqualTo(ExitCode.FAULT);
        assertThat(messages.toString()).contains("\tat ");
    }

    private int run(Answer answer, String... arguments) {
        return run(
                (request, progress) -> {
                    requests.add(request);
                    return answer;
                },
                Map.of(),
                arguments);
    }

    private int run(Diagnoser diagnoser, Map<String, String> environment, String... arguments) {
        CommandLine program = new CommandLine(new DiagnoseCommand(diagnoser, NoLogbook::open, Proposer::propose))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new Failures(environment))
                .setOut(new PrintWriter(results))
                .setErr(new PrintWriter(messages));
        return program.execute(arguments);
    }
}
