package setwright.app.command;

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
import setwright.app.carfit.CarFitAnswer;
import setwright.app.carfit.CarFitter;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.json.CarFitJsonWriter;
import setwright.app.report.fit.CarFitReport;
import setwright.app.text.CarFitText;
import setwright.core.identification.CarFit;
import setwright.core.judgement.Diagnosis;

/** Says what laps tell of a car beyond its sheet. */
@Command(
        name = "fit",
        description = "Says what recorded laps tell of a car beyond its sheet, with the data beside the fitted car; and"
                + " what they cannot tell, with the channel or manoeuvre that would.",
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright car fit laps.csv --car car.yaml",
            "  setwright car fit ada.csv bo.csv --car car.yaml --html fit.html"
        })
public final class CarFitCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final CarFitter fitter;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "Recorded laps of the same car with the same setup; several tell more.")
    private List<Path> recordings = new ArrayList<>();

    @Mixin
    private CarOption car;

    @Mixin
    private ReadingOptions reading;

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public CarFitCommand(Diagnoser diagnoser, CarFitter fitter) {
        this.diagnoser = diagnoser;
        this.fitter = fitter;
    }

    @Override
    public Integer call() throws Exception {
        car.required(spec, "the laps are held against what it says.");
        List<Optional<Path>> inputs = new ArrayList<>(List.of(car.path(), reading.map(), reading.circuit()));
        recordings.forEach(recording -> inputs.add(Optional.of(recording)));
        OutputFiles.check(inputs, Map.of("--html", showing.html()));
        List<Answer> answers = new ArrayList<>();
        CarFit fit;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS * recordings.size() + 1)) {
            for (Path recording : recordings) {
                answers.add(diagnoser.diagnose(
                        DiagnoseRequest.of(recording, car.path(), reading.map(), reading.circuit()), progress));
            }
            progress.step("identifying the car");
            fit = fitter.fit(
                    answers.stream().map(Answer::diagnosis).toList(),
                    answers.get(0).car());
        }
        CarFitAnswer answer = new CarFitAnswer(
                answers.get(0).car(),
                answers.stream()
                        .map(read -> read.diagnosis().stint().recording().name())
                        .toList(),
                answers.stream()
                        .map(Answer::diagnosis)
                        .map(Diagnosis::stint)
                        .mapToInt(stint -> stint.goodLaps().size())
                        .sum(),
                fit);
        showing.show(
                spec,
                () -> CarFitReport.html(answer, showing.forPage()),
                () -> CarFitJsonWriter.write(answer),
                () -> CarFitText.write(answer, showing.forTerminal(), Output.terminal(spec)));
        return answer.values(true).isEmpty() ? ExitCode.NOT_ENOUGH_EVIDENCE : ExitCode.DONE;
    }
}
