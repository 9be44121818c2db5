package setwright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.circuit.CircuitFile;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.json.SweepJsonWriter;
import setwright.app.predict.SweepWords;
import setwright.app.report.sweep.SweepReport;
import setwright.app.sweep.SetupSweeper;
import setwright.app.sweep.SweepAnswer;
import setwright.app.text.SweepText;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Circuit;
import setwright.core.judgement.Diagnosis;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweepItem;
import setwright.intake.car.CarSheetReader;

/** Computes laps over one or two setup items. */
@Command(
        name = "sweep",
        description = {
            "Computes quasi-steady laps over one setup item or two: lap time, lowest speeds and balance for each setting.",
            "",
            "The circuit comes from a file kept with diagnose --save-circuit, or from a recording made there; a recording also tells"
                    + " more of the car than its sheet does. Such laps see no dampers, no transients and no driver."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sweep front_bar --car car.yaml --recording laps.csv",
            "  setwright sweep front_wing rear_wing --car car.yaml --recording laps.csv"
        })
public final class SweepCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final SetupSweeper sweeper;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "1..2",
            paramLabel = "ITEM[=FROM..TO]",
            description = "What to turn, by its name on the car sheet, over its whole range or a part of it.")
    private List<String> items = new ArrayList<>();

    @Mixin
    private CarOption car;

    @Option(
            names = "--recording",
            paramLabel = "FILE",
            description = "Recorded laps: their circuit is driven, and the car is fitted to them.")
    private Optional<Path> recording = Optional.empty();

    @Mixin
    private ReadingOptions reading;

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public SweepCommand(Diagnoser diagnoser, SetupSweeper sweeper) {
        this.diagnoser = diagnoser;
        this.sweeper = sweeper;
    }

    @Override
    public Integer call() throws Exception {
        Path sheet = car.required(spec, "its setup lists the items that can be swept.");
        if (recording.isEmpty() && reading.circuit().isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Missing --circuit FILE or --recording FILE: a lap needs a circuit. Keep one with: setwright diagnose"
                            + " LAPS.csv --save-circuit circuit.json");
        }
        OutputFiles.check(
                List.of(recording, car.path(), reading.map(), reading.circuit()), Map.of("--html", showing.html()));
        CarSheet given = CarSheetReader.read(InputFiles.existing(sheet));
        List<SweepItem> wanted = new SweepWords(given).read(items);
        SweepAnswer answer;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS + 1)) {
            answer = recording.isPresent()
                    ? onRecording(recording.get(), wanted, progress)
                    : onCircuit(reading.circuit().orElseThrow(), given, wanted, progress);
        }
        showing.show(
                spec,
                () -> SweepReport.html(answer, showing.forPage()),
                () -> SweepJsonWriter.write(answer),
                () -> SweepText.write(answer, showing.forTerminal(), Output.terminal(spec)));
        return ExitCode.DONE;
    }

    private SweepAnswer onCircuit(Path file, CarSheet sheet, List<SweepItem> wanted, Progress progress)
            throws IOException {
        Circuit circuit = CircuitFile.read(InputFiles.existing(file));
        progress.step("driving laps");
        SetupSweep sweep = sweeper.sweep(sheet, Optional.empty(), circuit, wanted, () -> {});
        return new SweepAnswer(sheet, circuit, Optional.empty(), sweep);
    }

    private SweepAnswer onRecording(Path file, List<SweepItem> wanted, Progress progress) throws IOException {
        Answer laps =
                diagnoser.diagnose(DiagnoseRequest.of(file, car.path(), reading.map(), reading.circuit()), progress);
        Diagnosis diagnosis = laps.diagnosis();
        Circuit circuit = diagnosis.stint().circuit();
        boolean telling = !diagnosis.passes().isEmpty();
        progress.step("driving laps");
        SetupSweep sweep = sweeper.sweep(
                laps.car(), telling ? Optional.of(diagnosis) : Optional.empty(), circuit, wanted, () -> {});
        return new SweepAnswer(
                laps.car(),
                circuit,
                telling ? Optional.of(diagnosis.stint().recording().name()) : Optional.empty(),
                sweep);
    }
}
