package setwright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.example.Example;
import setwright.app.example.ExampleCarFit;
import setwright.app.example.ExamplePrediction;
import setwright.app.predict.ChangePredictor;
import setwright.core.car.SetupChange;
import setwright.core.identification.CarFit;
import setwright.intake.gather.RecordingFiles;

/** {@code predict} and {@code car fit} with the work behind them replaced. */
final class PredictCommandTest {
    private static final String SHEET = """
            bar_wheel_rate_front_N_per_mm: {base: 9.0, per_position: 3.6}
            bar_wheel_rate_rear_N_per_mm: {base: 3.5, per_position: 2.3}
            setup:
              front_bar: {value: 5, unit: position, min: 1, max: 11, step: 1}
              front_camber: {value: -3.4, unit: deg, min: -5, max: -1, step: 0.2}
            """;

    @TempDir
    private Path folder;

    private final StringWriter results = new StringWriter();
    private final StringWriter messages = new StringWriter();
    private final List<DiagnoseRequest> requests = new ArrayList<>();
    private final List<List<SetupChange>> asked = new ArrayList<>();
    private String sheet;

    @BeforeEach
    void writeSheet() throws IOException {
        sheet = Files.writeString(folder.resolve("car.yaml"), SHEET).toString();
    }

    @Test
    void theAnswerComesFirst() {
        assertThat(predict("laps.csv", "--car", sheet, "front_bar=4")).isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).startsWith("front_bar 5 -> 4: ");
        assertThat(asked).containsExactly(List.of(new SetupChange("front_bar", 5.0, 4.0)));
        assertThat(requests.get(0).recording()).isEqualTo(RecordingFiles.of(Path.of("laps.csv")));
    }

    @Test
    void aNegativeValueIsNoOption() {
        assertThat(predict("laps.csv", "--car", sheet, "front_camber=-3.6")).isEqualTo(ExitCode.DONE);
        assertThat(asked).containsExactly(List.of(new SetupChange("front_camber", -3.4, -3.6)));
    }

    @Test
    void severalItemsAreOneCombinedChange() {
        assertThat(predict("laps.csv", "front_bar=-1step", "front_camber=+1step", "--car", sheet))
                .isEqualTo(ExitCode.DONE);
        assertThat(asked).hasSize(1);
        assertThat(results.toString())
                .startsWith("front_bar 5 -> 4 and front_camber -3.4 -> -3.2 deg together, as one");
    }

    @Test
    void withoutAnItemEachIsTurnedOneStepEachWay() {
        assertThat(predict("laps.csv", "--car", sheet)).isEqualTo(ExitCode.DONE);
        assertThat(asked).hasSize(4);
        assertThat(results.toString()).contains("of 4 changes by one step");
    }

    @Test
    void aWrongItemIsWrongUsageAndCostsNoReading() {
        assertThat(predict("laps.csv", "--car", sheet, "front_bra=4")).isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString())
                .isEqualTo("setwright: the car sheet has no item \"front_bra\". Is front_bar meant?\n");
        assertThat(predict("laps.csv", "--car", sheet, "front_bar=99")).isEqualTo(ExitCode.USAGE);
        assertThat(requests).isEmpty();
        assertThat(results.toString()).isEmpty();
    }

    @Test
    void aSheetIsNeededAndMustListItems() throws IOException {
        assertThat(predict("laps.csv", "front_bar=4")).isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString()).contains("Missing --car SHEET");
        String bare = Files.writeString(folder.resolve("bare.yaml"), "wheelbase_m: 2.5\n")
                .toString();
        assertThat(predict("laps.csv", "--car", bare, "front_bar=4")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("bare.yaml, 'setup'", "front_bar: {value:");
        assertThat(predict("laps.csv", "--car", "nowhere.yaml")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(requests).isEmpty();
    }

    @Test
    void lapsThatAllowNoPredictionAreNotEnoughEvidence() {
        int code = run((diagnosis, car, candidates) -> List.of(), "laps.csv", "--car", sheet, "front_bar=4");
        assertThat(code).isEqualTo(ExitCode.NOT_ENOUGH_EVIDENCE);
        assertThat(messages.toString()).contains("nothing can be predicted from these laps");
    }

    @Test
    void jsonAndPageComeFromTheSameCall() {
        Path page = folder.resolve("page.html");
        assertThat(predict("laps.csv", "--car", sheet, "front_bar=4", "--json", "--html", page.toString()))
                .isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).startsWith("{").endsWith("}\n");
        assertThat(messages.toString()).contains("Report: ");
        assertThat(page).content().startsWith("<!doctype html>");
    }

    @Test
    void theSheetIsNeverOverwritten() {
        assertThat(predict("laps.csv", "--car", sheet, "--html", sheet)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(Path.of(sheet)).hasContent(SHEET);
    }

    @Test
    void carFitReadsSeveralRecordings() {
        Path page = folder.resolve("page.html");
        assertThat(fit(ExampleCarFit.fit(), "one.csv", "two.csv", "--car", sheet, "--html", page.toString()))
                .isEqualTo(ExitCode.DONE);
        assertThat(requests)
                .extracting(DiagnoseRequest::recording)
                .containsExactly(RecordingFiles.of(Path.of("one.csv")), RecordingFiles.of(Path.of("two.csv")));
        assertThat(results.toString())
                .startsWith("These laps tell 2 of 3 quantities of the car better than its sheet. Drag area")
                .contains("Not told", "near locking, would tell it");
        assertThat(page).content().startsWith("<!doctype html>");
    }

    @Test
    void aFitThatTellsNothingIsNotEnoughEvidence() {
        assertThat(fit(ExampleCarFit.nothing().fit(), "one.csv", "--car", sheet))
                .isEqualTo(ExitCode.NOT_ENOUGH_EVIDENCE);
        assertThat(results.toString()).contains("tell nothing of the car beyond its sheet");
        assertThat(fit(ExampleCarFit.fit(), "one.csv")).isEqualTo(ExitCode.USAGE);
    }

    private int predict(String... arguments) {
        return run(
                (diagnosis, car, candidates) -> {
                    asked.addAll(candidates);
                    return ExamplePrediction.predictions(Example.answer(), candidates);
                },
                arguments);
    }

    private int run(ChangePredictor predictor, String... arguments) {
        return execute(
                new PredictCommand(
                        (request, progress) -> {
                            requests.add(request);
                            return Example.answer();
                        },
                        NoLogbook::open,
                        predictor),
                arguments);
    }

    private int fit(CarFit fit, String... arguments) {
        return execute(
                new CarFitCommand(
                        (request, progress) -> {
                            requests.add(request);
                            return Example.answer();
                        },
                        (diagnoses, car) -> fit),
                arguments);
    }

    private int execute(Object command, String... arguments) {
        return new CommandLine(command)
                .setExecutionExceptionHandler(new Failures(Map.of()))
                .setOut(new PrintWriter(results))
                .setErr(new PrintWriter(messages))
                .execute(arguments);
    }
}
