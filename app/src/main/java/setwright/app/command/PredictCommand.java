package setwright.app.command;

import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.json.PredictionJsonWriter;
import setwright.app.predict.ChangePredictor;
import setwright.app.predict.ChangeWords;
import setwright.app.predict.PredictionAnswer;
import setwright.app.report.change.PredictionReport;
import setwright.app.text.PredictionText;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.replay.Prediction;
import setwright.intake.car.CarSheetReader;
import setwright.intake.problem.InputProblem;

/** Says what a change of setup would do on recorded laps. */
@Command(
        name = "predict",
        description = {
            "Says what a change of setup would have done on recorded laps: balance and time, corner by corner.",
            "",
            "front_bar=3 turns an item to a value, front_bar=+1step or rear_wing=-2steps by steps. Several items in one call"
                    + " are one change, turned together. Without an item, each is turned by one step each way and the"
                    + " quickest comes first."
        },
        mixinStandardHelpOptions = true)
public final class PredictCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final ChangePredictor predictor;

    @Spec
    private CommandSpec spec;

    @Mixin
    private RecordingParameter recording;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "ITEM=VALUE",
            description = "What to turn, by its name on the car sheet: to a value, or by +1step, -2steps.")
    private List<String> changes = new ArrayList<>();

    @Mixin
    private CarOption car;

    @Mixin
    private ReadingOptions reading;

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public PredictCommand(Diagnoser diagnoser, ChangePredictor predictor) {
        this.diagnoser = diagnoser;
        this.predictor = predictor;
    }

    @Override
    public Integer call() throws Exception {
        Path sheet = car.required(spec, "its setup lists the items that can be turned.");
        OutputFiles.check(
                List.of(Optional.of(recording.path()), car.path(), reading.map(), reading.circuit()),
                Map.of("--html", showing.html()));
        List<List<SetupChange>> candidates =
                candidates(sheet); // first: a slip of the pen should not cost a recording's reading
        Answer answer;
        List<Prediction> predictions;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS + 1)) {
            answer = diagnoser.diagnose(
                    DiagnoseRequest.of(recording.path(), car.path(), reading.map(), reading.circuit()), progress);
            progress.step("replaying the laps");
            predictions = answer.diagnosis().passes().isEmpty()
                    ? List.of()
                    : predictor.predict(answer.diagnosis(), answer.car(), candidates);
        }
        if (predictions.isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println("setwright: nothing can be predicted from these laps: "
                            + answer.diagnosis().reason() + ".");
            return ExitCode.NOT_ENOUGH_EVIDENCE;
        }
        PredictionAnswer predicted = new PredictionAnswer(answer, !changes.isEmpty(), predictions);
        showing.show(
                spec,
                () -> PredictionReport.html(predicted, showing.forPage()),
                () -> PredictionJsonWriter.write(predicted),
                () -> PredictionText.write(predicted, showing.forTerminal(), Output.terminal(spec)));
        return ExitCode.DONE;
    }

    private List<List<SetupChange>> candidates(Path sheet) throws NoSuchFileException {
        CarSheet given = CarSheetReader.read(InputFiles.existing(sheet));
        if (given.setup().isEmpty()) {
            throw InputProblem.in(String.valueOf(sheet.getFileName()))
                    .column("setup")
                    .expected("the items that can be turned")
                    .found("none")
                    .advice("Add lines such as: front_bar: {value: 4, unit: position, min: 1, max: 9, step: 1}.")
                    .problem();
        }
        ChangeWords words = new ChangeWords(given);
        return changes.isEmpty() ? words.oneStepEach() : List.of(words.read(changes));
    }
}
