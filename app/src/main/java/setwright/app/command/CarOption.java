package setwright.app.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The car sheet that a command reads. */
final class CarOption {
    /** What commands need a sheet for that turn its items. */
    static final Optional<String> ITEMS = Optional.of("its setup lists the items that can be turned.");

    @Option(
            names = "--car",
            paramLabel = "SHEET",
            description = "Car sheet (YAML). What it lacks is assumed and said so.")
    private Optional<Path> car = Optional.empty();

    Optional<Path> path() {
        return car;
    }

    /** Returns the sheet; its absence is wrong usage, and {@code why} says what it is needed for. */
    Path required(CommandSpec spec, String why) {
        return car.orElseThrow(() -> new ParameterException(spec.commandLine(), "Missing --car SHEET: " + why));
    }
}
