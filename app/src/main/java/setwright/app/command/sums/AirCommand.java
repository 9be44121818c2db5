package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.AirSum;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.Unit;

/** Density of the air. */
@Command(
        name = "air",
        description = "Density of the air by altitude, temperature, pressure and humidity.",
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums air --altitude 600 --temperature 25",
            "  setwright sums air --pressure 985 --temperature 18 --humidity 70"
        })
final class AirCommand extends SumCommand {
    @Option(names = "--altitude", paramLabel = "M", description = "Above the sea, to 11000 m; 0 when left out.")
    private Optional<Double> altitude = Optional.empty();

    @Option(names = "--temperature", paramLabel = "C", description = "The altitude's standard one when left out.")
    private Optional<Double> temperature = Optional.empty();

    @Option(
            names = "--pressure",
            paramLabel = "HPA",
            description = "Absolute, as a barometer on the spot shows; the altitude's standard one when left out.")
    private Optional<Double> pressure = Optional.empty();

    @Option(names = "--humidity", paramLabel = "PERCENT", description = "Relative humidity; dry when left out.")
    private Optional<Double> humidity = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        return List.of(new AirSum(
                        given.need(new Ask("A", "altitude", Unit.METRE, -500, 11_000, "--altitude"), altitude, 0.0),
                        given.maybe(new Ask("T", "temperature", Unit.CELSIUS, -45, 60, "--temperature"), temperature),
                        given.maybe(
                                new Ask("p", "absolute pressure", Unit.HECTOPASCAL, 200, 1100, "--pressure"), pressure),
                        given.maybe(new Ask("H", "relative humidity", Unit.PERCENT, 0, 100, "--humidity"), humidity))
                .calculation());
    }
}
