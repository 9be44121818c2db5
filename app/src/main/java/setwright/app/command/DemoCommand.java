package setwright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
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
import setwright.app.demo.DemoLogbook;
import setwright.app.demo.DemoRun;
import setwright.app.demo.DemoStory;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.files.WholeFile;
import setwright.app.logbook.LogbookTrials;
import setwright.app.logbook.StintDesk;
import setwright.app.predict.ChangePredictor;
import setwright.app.propose.ChangeProposer;
import setwright.app.report.Report;
import setwright.app.report.demo.DemoReport;
import setwright.app.server.PageWork;
import setwright.app.text.DemoText;
import setwright.app.units.Figures;
import setwright.app.world.WorldCar;
import setwright.logbook.Logbook;

/** Tells the whole story on laps of an invented car at an invented circuit, driven on the spot. */
@Command(
        name = "demo",
        description = {
            "Tells the whole story on laps of an invented car at an invented circuit, driven on the spot: a driver too loose to"
                    + " judge, coached, findings, technique, one change, back to back, verdict, brief.",
            "",
            "Writes the story as a page, and beside it the report of the coached laps with all its evidence. In a terminal it then"
                    + " opens the local page with the stints of that day."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright demo --no-page",
            "  setwright demo --car vessane --fault \"too little rear wing\"",
            "  setwright demo --keep laps"
        })
public final class DemoCommand implements Callable<Integer> {
    private static final String STANDARD_FAULT = "rear end too stiff in roll";

    private final Diagnoser diagnoser;
    private final ChangeProposer proposer;
    private final DeskOpener desk;
    private final ChangePredictor predictor;

    @Spec
    private CommandSpec spec;

    @Mixin
    private WorldChoices world;

    @Option(
            names = "--fault",
            paramLabel = "NAME",
            description =
                    "What is wrong with the car, none for nothing; setwright simulate --faults lists them. Default:"
                            + " ${DEFAULT-VALUE}.",
            defaultValue = STANDARD_FAULT)
    private String fault = STANDARD_FAULT;

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "Where to write the story; without it setwright-demo-report.html in this folder.",
            defaultValue = "setwright-demo-report.html")
    private Path html = Path.of("setwright-demo-report.html");

    @Option(
            names = "--keep",
            paramLabel = "FOLDER",
            description = "Keeps recordings and car sheets in a folder, for commands of your own.")
    private Optional<Path> keep = Optional.empty();

    @Mixin
    private UnitsOption units;

    @Option(
            names = "--page",
            negatable = true,
            description =
                    "Opens the local page with the day's stints at the end, or does not; unless given it does in a"
                            + " terminal.")
    private Optional<Boolean> page = Optional.empty();

    @Mixin
    private PageRun run;

    /** Makes the command with what does its work. */
    public DemoCommand(Diagnoser diagnoser, ChangeProposer proposer, DeskOpener desk, ChangePredictor predictor) {
        this.diagnoser = diagnoser;
        this.proposer = proposer;
        this.desk = desk;
        this.predictor = predictor;
    }

    @Override
    public Integer call() throws Exception {
        run.check();
        Path evidence = beside(html);
        WholeFile.check(html);
        WholeFile.check(evidence);
        WorldCar car = world.car();
        Path folder =
                keep.isPresent() ? Files.createDirectories(keep.get()) : Files.createTempDirectory("setwright-demo");
        try {
            DemoRun told = new DemoRun(
                    diagnoser,
                    proposer,
                    car,
                    world.circuit(),
                    WorldChoices.fault(fault, car.sheet()),
                    1.0,
                    world.seed(),
                    folder);
            DemoStory story;
            try (Progress progress = ProgressLine.of(DemoRun.STEPS)) {
                story = told.tell(progress);
            }
            Figures figures = Figures.forPage(units.system());
            WholeFile.write(evidence, Report.html(story.coached().answer(), figures));
            WholeFile.write(html, DemoReport.html(story, String.valueOf(evidence.getFileName()), figures));
            PrintWriter out = spec.commandLine().getOut();
            out.println(DemoText.write(story, Figures.forTerminal(units.system()), Output.terminal(spec)));
            out.println("Story, for a browser: " + html.toAbsolutePath().normalize());
            out.println("Its evidence: " + evidence.toAbsolutePath().normalize());
            out.flush();
            if (page.orElseGet(() -> Output.isTerminal())) {
                show(story, folder);
            }
            return ExitCode.DONE;
        } finally {
            removeUnlessKept(folder);
        }
    }

    private void show(DemoStory story, Path folder) throws Exception {
        Logbook logbook = Logbook.open(folder.resolve("logbook").toString(), Optional.empty(), true);
        StintDesk stints = desk.open(logbook);
        try (Progress progress = ProgressLine.of(DemoLogbook.STEPS)) {
            new DemoLogbook(logbook, stints, new LogbookTrials(logbook, stints, predictor), folder)
                    .enter(story, progress);
        }
        run.serve(
                spec,
                new PageWork(logbook, stints, proposer, predictor, PageWork.USUAL_UPLOAD, Optional.empty()),
                () -> removeUnlessKept(folder));
    }

    /** The report lies beside the story: story.html and story-evidence.html. */
    private static Path beside(Path story) {
        String name = String.valueOf(story.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        return story.resolveSibling(stem + "-evidence.html");
    }

    private void removeUnlessKept(Path folder) {
        if (keep.isPresent() || !Files.exists(folder)) {
            return;
        }
        try {
            List<Path> parts;
            try (Stream<Path> walk = Files.walk(folder)) {
                parts = walk.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path part : parts) {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
