package setwright.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.json.AddedJsonWriter;
import setwright.app.logbook.AddRequest;
import setwright.app.logbook.Added;
import setwright.app.logbook.Adding;
import setwright.app.logbook.StintDesk;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.text.AddedText;
import setwright.app.text.TextReport;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.logbook.Logbook;

/** Reads recordings into the logbook. */
@Command(
        name = "add",
        description = {
            "Reads recordings into the logbook and says what was understood, corrected and put aside.",
            "",
            "Each becomes a stint with a number, by which it can be judged at any time. The same file is read once. Car and driver are"
                    + " those of the last stint unless told; a circuit is recognised.",
            "",
            "What lasts longer than two hours becomes several stints, cut where the car stands."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright add laps.csv --car car.yaml --driver Ines",
            "  setwright add next.csv --tyre-age 12 --fuel 40",
            "  setwright add morning.csv noon.csv --car car.yaml --at \"North circuit\"",
            "  setwright add laps.csv --with track.gpx",
            "  setwright add --watch logger --driver Ines"
        })
public final class AddCommand implements Callable<Integer> {
    private final DeskOpener desk;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "FILE",
            description = "Recorded laps (CSV, Parquet or MDF 4), in the order in which they were driven.")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--car",
            paramLabel = "SHEET",
            description =
                    "Car sheet (YAML) with the setup that was driven, or the name of a car in the logbook. Without it the car of"
                            + " the last stint, with the setup that is on it.")
    private Optional<String> car = Optional.empty();

    @Option(
            names = "--setup",
            paramLabel = "N",
            description = "Number of the car's setup in the logbook that was driven; else the one that is on the car.")
    private Optional<Integer> setup = Optional.empty();

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "What to call the car of the sheet; else its description.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--driver", paramLabel = "NAME", description = "Who drove; else whoever drove last.")
    private Optional<String> driver = Optional.empty();

    @Option(
            names = "--at",
            paramLabel = "CIRCUIT",
            description = "Name of the circuit; else the known one on which the laps fit, or a new one.")
    private Optional<String> at = Optional.empty();

    @Option(
            names = "--map",
            paramLabel = "MAP",
            description = "Channel map (YAML): which column is what. Without it one is proposed from the data.")
    private Optional<Path> map = Optional.empty();

    @Mixin
    private BesideOption beside;

    @Mixin
    private FolderLoop folder;

    @Mixin
    private ConditionOptions conditions;

    @Mixin
    private LogbookOption logbook;

    @Option(names = "--json", description = "Prints JSON (docs/add.schema.json) instead of text.")
    private boolean json;

    private OptionalInt age = OptionalInt.empty();

    /** Makes the command with what judges the laps of a watched folder. */
    public AddCommand(DeskOpener desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws Exception {
        refuseMisfits();
        for (Path file : files) {
            InputFiles.existing(file); // before any of them is read
        }
        Logbook open = logbook.place().begin();
        Adding adding = new Adding(open);
        List<Added> added = new ArrayList<>();
        age = conditions.tyreAgeLaps();
        try (Progress progress = ProgressLine.of(Adding.STEPS * files.size())) {
            for (Path file : files) {
                for (Added one : add(adding, file, progress)) {
                    added.add(one);
                    tell(one, added.size() == 1);
                }
            }
        }
        if (json && !files.isEmpty()) {
            Output.print(spec, AddedJsonWriter.write(added));
        }
        if (folder.wanted()) {
            StintDesk stints = desk.open(open);
            folder.follow(spec, file -> {
                for (Added one : add(adding, file, Progress.silent())) {
                    judge(one, stints);
                }
            });
        }
        return ExitCode.DONE;
    }

    private void refuseMisfits() {
        boolean watching = folder.wanted();
        if (files.isEmpty() && !watching) {
            throw new BadOption("name a recording, or a folder to watch with --watch.");
        }
        if (beside.given() && (files.size() > 1 || watching)) {
            throw new BadOption(
                    "with several recordings nothing tells to which of them --with belongs: add them one by one.");
        }
    }

    private List<Added> add(Adding adding, Path file, Progress progress) throws IOException {
        Optional<Path> sheet = car.map(Path::of).filter(Files::isRegularFile);
        List<Added> all = adding.add(
                new AddRequest(
                        beside.with(file),
                        sheet,
                        sheet.isPresent() ? Optional.empty() : car,
                        setup.stream().mapToInt(Integer::intValue).findFirst(),
                        name,
                        driver,
                        at,
                        map,
                        age,
                        conditions.trackCelsius(),
                        conditions.fuelKg()),
                progress);
        // The same tyres go on, unless a later call says otherwise.
        int driven = all.stream().mapToInt(one -> one.stint().stint().laps()).sum();
        age = age.isPresent() ? OptionalInt.of(age.getAsInt() + driven) : age;
        return all;
    }

    /** What came into a watched folder is told with its diagnosis, and with what it means for the car. */
    private void judge(Added one, StintDesk stints) throws IOException {
        tell(one, false);
        if (json) {
            Output.print(spec, AddedJsonWriter.write(List.of(one)));
            return;
        }
        KeptLaps laps = stints.laps(Optional.of(one.stint().number()));
        Answer answer = laps.answer(Progress.silent());
        laps.found(answer);
        Output.print(
                spec, "\n" + TextReport.write(answer, Figures.forTerminal(UnitSystem.METRIC), Output.terminal(spec)));
    }

    /** At once: what is in the logbook is told even when a later file turns out to be bad. */
    private void tell(Added one, boolean first) {
        if (!json) {
            Output.print(
                    spec,
                    (first ? "" : "\n")
                            + AddedText.write(one, Figures.forTerminal(UnitSystem.METRIC), Output.terminal(spec)));
        }
        boolean more =
                car.isPresent() || setup.isPresent() || driver.isPresent() || at.isPresent() || conditions.given();
        if (one.known() && more) {
            spec.commandLine()
                    .getErr()
                    .println("setwright: " + one.stint().name()
                            + " stays as it is; what was given with it did not count. To correct it: setwright amend "
                            + one.stint().number() + " --driver ... --setup ...");
        }
    }
}
