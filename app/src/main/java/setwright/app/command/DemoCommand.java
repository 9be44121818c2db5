package setwright.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.files.WholeFile;
import setwright.app.report.Report;
import setwright.app.text.TextReport;
import setwright.app.units.Figures;

/** Tells the whole story on a built-in recording of an invented car and circuit. */
@Command(
        name = "demo",
        description =
                "Shows the whole story on a built-in recording of an invented car and circuit, and writes its report.",
        mixinStandardHelpOptions = true)
public final class DemoCommand implements Callable<Integer> {
    private static final String RECORDING = "stint.csv.gz";
    private static final String CAR = "car.yaml";

    private final Diagnoser diagnoser;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "Where to write the report; without it setwright-demo-report.html in this folder.",
            defaultValue = "setwright-demo-report.html")
    private Path html = Path.of("setwright-demo-report.html");

    @Mixin
    private UnitsOption units;

    /** Makes the command with what does its work. */
    public DemoCommand(Diagnoser diagnoser) {
        this.diagnoser = diagnoser;
    }

    @Override
    public Integer call() throws Exception {
        WholeFile.check(html);
        Path folder = Files.createTempDirectory("setwright-demo");
        try {
            unpack(RECORDING, folder);
            unpack(CAR, folder);
            DiagnoseRequest request = new DiagnoseRequest(
                    folder.resolve(RECORDING),
                    Optional.of(folder.resolve(CAR)),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
            Answer answer;
            try (Progress progress = ProgressLine.of(Diagnoser.STEPS)) {
                answer = diagnoser.diagnose(request, progress);
            }
            WholeFile.write(html, Report.html(answer, Figures.forPage(units.system())));
            spec.commandLine()
                    .getOut()
                    .println(TextReport.write(answer, Figures.forTerminal(units.system()), Output.terminal(spec)));
            spec.commandLine()
                    .getOut()
                    .println("Report, for a browser: " + html.toAbsolutePath().normalize());
            spec.commandLine().getOut().flush();
            return Output.code(answer);
        } finally {
            remove(folder);
        }
    }

    private static void unpack(String name, Path folder) throws IOException {
        try (InputStream in = DemoCommand.class.getResourceAsStream("/demo/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its demo file " + name);
            }
            Files.copy(in, folder.resolve(name));
        }
    }

    private static void remove(Path folder) throws IOException {
        List<Path> parts;
        try (Stream<Path> walk = Files.walk(folder)) {
            parts = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path part : parts) {
            Files.deleteIfExists(part);
        }
    }
}
