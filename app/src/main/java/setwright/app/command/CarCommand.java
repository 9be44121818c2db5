package setwright.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.car.CarCheck;
import setwright.app.json.CarCheckJsonWriter;
import setwright.app.text.CarText;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.model.LinearUndersteer;
import setwright.intake.car.CarSheetReader;

/** What is known of a car. */
@Command(
        name = "car",
        description = "Works with car sheets.",
        mixinStandardHelpOptions = true,
        subcommands = CarCommand.Check.class,
        footerHeading = Examples.HEADING,
        footer = {"  setwright car check car.yaml", "  setwright car fit laps.csv --car car.yaml"})
public final class CarCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "A command is missing: car check SHEET or car fit FILE --car SHEET.");
    }

    /** Says what a sheet gives, what follows from it and what is assumed. */
    @Command(
            name = "check",
            description = "Checks a car sheet: what is given, what follows from it and what is assumed.",
            mixinStandardHelpOptions = true,
            footerHeading = Examples.HEADING,
            footer = {"  setwright car check car.yaml", "  setwright car check car.yaml --json"})
    static final class Check implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Parameters(paramLabel = "SHEET", description = "Car sheet (YAML).")
        private Path sheet;

        @Option(names = "--json", description = "Prints JSON (docs/car-check.schema.json) instead of text.")
        private boolean json;

        @Option(
                names = "--units",
                paramLabel = "UNITS",
                description = "metric (km/h; the default) or imperial (mph). JSON is always metric.")
        private UnitSystem units = UnitSystem.METRIC;

        @Override
        public Integer call() {
            CarCheck check = CarCheck.of(CarSheetReader.read(sheet), new LinearUndersteer());
            PrintWriter out = spec.commandLine().getOut();
            out.print(
                    json
                            ? CarCheckJsonWriter.write(check)
                            : CarText.write(check, Figures.forTerminal(units), Output.terminal(spec)));
            out.flush();
            return ExitCode.DONE;
        }
    }
}
