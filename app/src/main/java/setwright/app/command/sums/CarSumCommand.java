package setwright.app.command.sums;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** A sum about a car, whose sheet may give its values. */
abstract class CarSumCommand extends SumCommand {
    @Option(
            names = "--car",
            paramLabel = "SHEET",
            description = "Car sheet (YAML) to take values from; options override it.")
    private Optional<Path> car = Optional.empty();

    @Override
    final Optional<Path> car() {
        return car;
    }
}
