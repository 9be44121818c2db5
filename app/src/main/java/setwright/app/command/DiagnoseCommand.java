package setwright.app.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.json.DiagnosisJsonWriter;
import setwright.app.report.Report;
import setwright.app.text.TextReport;

/** Judges one recording. */
@Command(
        name = "diagnose",
        description =
                "Says from recorded laps whether the driving repeats, where the car does not follow, what sets it off"
                        + " and what it costs.",
        mixinStandardHelpOptions = true)
public final class DiagnoseCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;

    @Spec
    private CommandSpec spec;

    @Mixin
    private RecordingParameter recording;

    @Mixin
    private CarOption car;

    @Mixin
    private ReadingOptions reading;

    @Option(names = "--save-circuit", paramLabel = "FILE", description = "Keeps the circuit in this file.")
    private Optional<Path> saveCircuit = Optional.empty();

    @Option(names = "--write-map", paramLabel = "FILE", description = "Writes the channel map that was used.")
    private Optional<Path> writeMap = Optional.empty();

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public DiagnoseCommand(Diagnoser diagnoser) {
        this.diagnoser = diagnoser;
    }

    @Override
    public Integer call() throws Exception {
        Map<String, Optional<Path>> outputs = new LinkedHashMap<>();
        outputs.put("--html", showing.html());
        outputs.put("--save-circuit", saveCircuit);
        outputs.put("--write-map", writeMap);
        OutputFiles.check(
                List.of(Optional.of(recording.path()), car.path(), reading.map(), reading.circuit()), outputs);
        DiagnoseRequest request = new DiagnoseRequest(
                recording.path(), car.path(), reading.map(), reading.circuit(), saveCircuit, writeMap);
        Answer answer;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS)) {
            answer = diagnoser.diagnose(request, progress);
        }
        showing.show(
                spec,
                () -> Report.html(answer, showing.forPage()),
                () -> DiagnosisJsonWriter.write(answer),
                () -> TextReport.write(answer, showing.forTerminal(), Output.terminal(spec)));
        return Output.code(answer);
    }
}
