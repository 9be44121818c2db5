package setwright.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.Progress;
import setwright.app.json.AddedJsonWriter;
import setwright.app.logbook.AddRequest;
import setwright.app.logbook.Added;
import setwright.app.logbook.Adding;
import setwright.app.text.AddedText;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/** Reads recordings into the logbook. */
@Command(
        name = "add",
        description = {
            "Reads recordings into the logbook and says what was understood, corrected and put aside.",
            "",
            "Each becomes a stint with a number, by which it can be judged at any time. The same file is read once. Car and driver are"
                    + " those of the last stint unless told; a circuit is recognised."
        },
        mixinStandardHelpOptions = true)
public final class AddCommand implements Callable<Integer> {
    private static final int MOST_LAPS = 1000;
    private static final double COLDEST = -30.0;
    private static final double HOTTEST = 90.0;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "Recorded laps, in the order in which they were driven.")
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

    @Option(
            names = "--tyre-age",
            paramLabel = "LAPS",
            description = "Laps that the tyres had done before; each further recording goes on from there.")
    private Optional<Integer> tyreAge = Optional.empty();

    @Option(
            names = "--track-temperature",
            paramLabel = "CELSIUS",
            description = "Temperature of the track, in degrees Celsius; a trial takes out what it can of it.")
    private Optional<Double> trackTemperature = Optional.empty();

    @Mixin
    private LogbookOption logbook;

    @Option(names = "--json", description = "Prints JSON (docs/add.schema.json) instead of text.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        for (Path file : files) {
            InputFiles.existing(file); // before any of them is read
        }
        OptionalInt version = setup.stream().mapToInt(Integer::intValue).findFirst();
        if (tyreAge.filter(laps -> laps < 0 || laps > MOST_LAPS).isPresent()) {
            throw new BadOption("--tyre-age is to be from 0 to " + MOST_LAPS + " laps, got " + tyreAge.get() + ".");
        }
        if (trackTemperature
                .filter(celsius -> !(celsius >= COLDEST && celsius <= HOTTEST))
                .isPresent()) {
            throw new BadOption("--track-temperature is to be from " + (int) COLDEST + " to " + (int) HOTTEST
                    + " degrees Celsius, got " + trackTemperature.get() + ".");
        }
        OptionalDouble track =
                trackTemperature.stream().mapToDouble(Double::doubleValue).findFirst();
        OptionalInt age = tyreAge.stream().mapToInt(Integer::intValue).findFirst();
        Adding adding = new Adding(logbook.place().begin());
        List<Added> added = new ArrayList<>();
        try (Progress progress = ProgressLine.of(Adding.STEPS * files.size())) {
            for (Path file : files) {
                Added one = adding.add(new AddRequest(file, car, version, name, driver, at, map, age, track), progress);
                added.add(one);
                age = age.isPresent()
                        ? OptionalInt.of(age.getAsInt() + one.stint().stint().laps())
                        : age;
            }
        }
        Output.print(
                spec,
                json
                        ? AddedJsonWriter.write(added)
                        : AddedText.write(added, Figures.forTerminal(UnitSystem.METRIC), Output.terminal(spec)));
        return ExitCode.DONE;
    }
}
