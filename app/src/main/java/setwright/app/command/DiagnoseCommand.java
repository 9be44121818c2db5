package setwright.app.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.units.UnitSystem;

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

    @Parameters(paramLabel = "FILE", description = "Recorded laps: a table with a header, CSV or CSV packed with gzip.")
    private Path recording;

    @Option(
            names = "--car",
            paramLabel = "SHEET",
            description = "Car sheet (YAML). What it lacks is assumed and said so.")
    private Optional<Path> car = Optional.empty();

    @Option(
            names = "--map",
            paramLabel = "MAP",
            description = "Channel map (YAML): which column is what. Without it one is proposed from the data.")
    private Optional<Path> map = Optional.empty();

    @Option(
            names = "--circuit",
            paramLabel = "FILE",
            description = "Circuit kept with --save-circuit, so that corner numbers stay the same.")
    private Optional<Path> circuit = Optional.empty();

    @Option(names = "--save-circuit", paramLabel = "FILE", description = "Keeps the circuit in this file.")
    private Optional<Path> saveCircuit = Optional.empty();

    @Option(names = "--write-map", paramLabel = "FILE", description = "Writes the channel map that was used.")
    private Optional<Path> writeMap = Optional.empty();

    @Option(names = "--json", description = "Prints JSON (docs/diagnose.schema.json) instead of text.")
    private boolean json;

    @Option(names = "--html", paramLabel = "REPORT", description = "Writes the report with all its evidence.")
    private Optional<Path> html = Optional.empty();

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description = "metric (km/h, m; the default) or imperial (mph, ft). JSON is always metric.")
    private UnitSystem units = UnitSystem.METRIC;

    /** Makes the command with what does its work. */
    public DiagnoseCommand(Diagnoser diagnoser) {
        this.diagnoser = diagnoser;
    }

    @Override
    public Integer call() throws Exception {
        Map<String, Optional<Path>> outputs = new LinkedHashMap<>();
        outputs.put("--html", html);
        outputs.put("--save-circuit", saveCircuit);
        outputs.put("--write-map", writeMap);
        OutputFiles.check(List.of(Optional.of(recording), car, map, circuit), outputs);
        DiagnoseRequest request = new DiagnoseRequest(recording, car, map, circuit, saveCircuit, writeMap);
        Answer answer;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS)) {
            answer = diagnoser.diagnose(request, progress);
        }
        int code = Output.show(spec, answer, units, json, html);
        html.ifPresent(report -> {
            spec.commandLine().getErr().println("Report: " + report);
            spec.commandLine().getErr().flush();
        });
        return code;
    }
}
