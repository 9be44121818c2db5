package setwright.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.Progress;
import setwright.app.files.WholeFile;
import setwright.app.json.SimulationJsonWriter;
import setwright.app.predict.ChangeWords;
import setwright.app.simulate.DriverKind;
import setwright.app.simulate.Experiment;
import setwright.app.simulate.Simulation;
import setwright.app.world.RecordingWriter.Form;
import setwright.app.world.WorldCar;
import setwright.core.car.SetupChange;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.fault.Fault;
import setwright.core.simulation.fault.FaultCatalogue;
import setwright.core.simulation.logger.LoggerPlan;

/** Writes recordings of simulated laps. */
@Command(
        name = "simulate",
        description = {
            "Drives laps in the invented world and writes them as a logger would have: recording.csv, the car sheet that goes with"
                    + " it, and simulated.json, which says what is really going on.",
            "",
            "--set front_bar=3 turns an item of the setup; --fault puts a known fault into the car (its names: --faults)."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright simulate --laps 10 --out practice",
            "  setwright simulate --fault \"rear springs too stiff\" --out practice",
            "  setwright simulate --faults --car pirrel"
        })
public final class SimulateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private WorldChoices world;

    @Option(names = "--fault", paramLabel = "NAME", description = "What is wrong with the car.", defaultValue = "none")
    private String fault;

    @Option(names = "--faults", description = "Lists the faults that the car can have.")
    private boolean faults;

    @Option(
            names = "--size",
            paramLabel = "FACTOR",
            description = "How much is wrong, 0.3 to 2. Default: ${DEFAULT-VALUE}.",
            defaultValue = "1")
    private double size;

    @Option(
            names = "--set",
            paramLabel = "ITEM=VALUE",
            description = "Turns an item of the setup, to a value or by +1step; may be given again.")
    private List<String> set = new ArrayList<>();

    @Option(
            names = "--driver",
            paramLabel = "NAME",
            description = "Who drives: steady, loose, brakes-long, early-throttle, holds, winds-on, lifts. Default:"
                    + " ${DEFAULT-VALUE}.",
            defaultValue = "steady")
    private String driver;

    @Option(
            names = "--laps",
            paramLabel = "NUMBER",
            description = "Laps after the out lap, 1 to 60. Default: ${DEFAULT-VALUE}.",
            defaultValue = "8")
    private int laps;

    @Option(
            names = "--rate",
            paramLabel = "HZ",
            description = "Rows per second, 20 to 250. Default: ${DEFAULT-VALUE}.",
            defaultValue = "100")
    private double rate;

    @Option(
            names = "--any-logger",
            description = "Records with a logger drawn by the seed: other channels, units, signs, noise, offsets.")
    private boolean anyLogger;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the files go; made when it is not there. Default: ${DEFAULT-VALUE}.",
            defaultValue = "simulated")
    private Path out;

    @Option(names = "--json", description = "Prints what is true as JSON, as in simulated.json.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        WorldCar car = world.car();
        if (faults) {
            FaultCatalogue.of(car.sheet())
                    .forEach(known -> spec.commandLine().getOut().println(known.name()));
            return ExitCode.DONE;
        }
        Experiment experiment = experiment(car);
        Path recording = out.resolve("recording.csv");
        Path sheet = out.resolve("car.yaml");
        Path truth = out.resolve("simulated.json");
        prepare(List.of(recording, sheet, truth));
        DrivenStint stint;
        try (Progress progress = ProgressLine.of(2)) {
            progress.step("driving");
            stint = new Simulation().drive(experiment);
            progress.step("writing");
            Simulation.write(experiment, stint, form(), recording, sheet);
        }
        String what = SimulationJsonWriter.write(experiment, fault, driver, stint);
        WholeFile.write(truth, what);
        if (json) {
            spec.commandLine().getOut().print(what);
        } else {
            say(stint, recording, sheet);
        }
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }

    private Experiment experiment(WorldCar car) {
        DriverKind kind = DriverKind.find(driver)
                .orElseThrow(() -> WorldChoices.unknown(
                        "--driver",
                        driver,
                        Arrays.stream(DriverKind.values())
                                .map(DriverKind::words)
                                .toList()));
        within("--laps", laps, 1, 60);
        within("--rate", rate, 20, 250);
        within("--size", size, 0.3, 2.0);
        List<SetupChange> changes = new ArrayList<>();
        Optional<Fault> wrong = WorldChoices.fault(fault, car.sheet());
        wrong.ifPresent(known -> changes.addAll(known.changes(car.sheet(), size)));
        if (!set.isEmpty()) {
            List<SetupChange> turned = new ChangeWords(car.sheet()).read(set);
            turned.forEach(change ->
                    changes.removeIf(other -> other.item().equals(change.item()))); // what is set by hand counts
            changes.addAll(turned);
        }
        LoggerPlan logger = anyLogger ? LoggerPlan.random(world.seed()) : LoggerPlan.good(world.seed(), rate);
        return new Experiment(car, world.circuit(), changes, kind.style(), laps, logger, world.seed());
    }

    private Form form() {
        if (!anyLogger) {
            return Form.USUAL;
        }
        Form drawn = Form.random(world.seed());
        return new Form(drawn.delimiter(), drawn.decimalComma(), drawn.units(), false);
    }

    private static void within(String option, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new BadOption(option + " is " + least + " to " + most + ", got " + value + ".");
        }
    }

    private void prepare(List<Path> files) throws IOException {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new BadOption("--out " + out + " is a file. Name a folder.");
        }
        Files.createDirectories(out);
        for (Path file : files) {
            WholeFile.check(file);
        }
    }

    private void say(DrivenStint stint, Path recording, Path sheet) {
        PrintWriter text = spec.commandLine().getOut();
        List<Double> times = stint.lapsS();
        for (int lap = 0; lap < times.size(); lap++) {
            text.printf(
                    Locale.ROOT,
                    "lap %d  %.3f s%s%n",
                    lap + 1,
                    times.get(lap),
                    lap == 0 ? "  out lap, cool tyres" : "");
        }
        stint.lost()
                .ifPresent(lost -> text.printf(
                        Locale.ROOT,
                        "The car was lost in lap %d, %.0f m after the start line; the recording ends there.%n",
                        lost.lap(),
                        lost.stationM()));
        text.println("Next: setwright diagnose " + recording + " --car " + sheet);
    }
}
