package setwright.app.command;

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
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.LapSource;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.json.PredictionJsonWriter;
import setwright.app.predict.ChangePredictor;
import setwright.app.predict.ChangeWords;
import setwright.app.predict.PredictionAnswer;
import setwright.app.report.change.PredictionReport;
import setwright.app.text.PredictionText;
import setwright.core.car.SetupChange;
import setwright.core.replay.Prediction;
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
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright predict laps.csv --car car.yaml front_bar=-1step",
            "  setwright predict laps.csv --car car.yaml",
            "  setwright predict 12 rear_spring=-10 --html prediction.html"
        })
public final class PredictCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final DeskOpener desk;
    private final ChangePredictor predictor;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "FILE|STINT ITEM=VALUE",
            description = LapChoice.WORDS
                    + " Then what to turn, by its name on the car sheet: to a value, or by +1step, -2steps.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private LapChoice choice;

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public PredictCommand(Diagnoser diagnoser, DeskOpener desk, ChangePredictor predictor) {
        this.diagnoser = diagnoser;
        this.desk = desk;
        this.predictor = predictor;
    }

    @Override
    public Integer call() throws Exception {
        Optional<String> named = words.stream().findFirst().filter(word -> word.indexOf('=') < 0);
        List<String> changes = words.subList(named.isPresent() ? 1 : 0, words.size());
        LapSource laps = choice.laps(spec, named, diagnoser, desk, CarOption.ITEMS);
        OutputFiles.check(choice.inputs(named), Map.of("--html", showing.html()));
        // First: a slip of the pen should not cost a recording's reading.
        List<List<SetupChange>> candidates = candidates(laps.car(), changes);
        Answer answer;
        List<Prediction> predictions;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS + 1)) {
            answer = laps.answer(progress);
            progress.step("replaying the laps");
            predictions = answer.diagnosis().passes().isEmpty()
                    ? List.of()
                    : predictor.predict(answer.diagnosis(), answer.car(), candidates).stream()
                            .map(laps.learnt()::update)
                            .toList();
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

    private static List<List<SetupChange>> candidates(LapSource.NamedCar car, List<String> changes) {
        if (car.sheet().setup().isEmpty()) {
            throw InputProblem.in(car.name())
                    .column("setup")
                    .expected("the items that can be turned")
                    .found("none")
                    .advice("Add lines such as: front_bar: {value: 4, unit: position, min: 1, max: 9, step: 1}.")
                    .problem();
        }
        ChangeWords words = new ChangeWords(car.sheet());
        return changes.isEmpty() ? words.oneStepEach() : List.of(words.read(changes));
    }
}
