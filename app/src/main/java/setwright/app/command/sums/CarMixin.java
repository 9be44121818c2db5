package setwright.app.command.sums;

import java.util.Optional;
import picocli.CommandLine.Option;
import setwright.core.car.worked.Input;
import setwright.core.car.worked.Unit;

/** Options that say where the car's weight is. */
final class CarMixin {
    @Option(names = "--mass", paramLabel = "KG", description = "Mass with driver and fuel.")
    private Optional<Double> mass = Optional.empty();

    @Option(names = "--front-weight", paramLabel = "PERCENT", description = "Share of the weight on the front axle.")
    private Optional<Double> frontWeight = Optional.empty();

    @Option(names = "--wheelbase", paramLabel = "M", description = "Distance between the axles.")
    private Optional<Double> wheelbase = Optional.empty();

    @Option(names = "--height", paramLabel = "M", description = "Height of the centre of gravity.")
    private Optional<Double> height = Optional.empty();

    Input mass(Given given) {
        return given.need(
                new Ask("m", "mass with driver and fuel", Unit.MASS, 50, 5000, "--mass"), mass, FromSheet.MASS);
    }

    Input frontWeight(Given given) {
        return given.need(
                new Ask("w_f", "weight on the front axle", Unit.PERCENT, 10, 90, "--front-weight"),
                frontWeight,
                FromSheet.FRONT_WEIGHT);
    }

    Input wheelbase(Given given) {
        return given.need(new Ask("L", "wheelbase", Unit.METRE, 0.8, 6, "--wheelbase"), wheelbase, FromSheet.WHEELBASE);
    }

    Input height(Given given) {
        return given.need(
                new Ask("h", "height of the centre of gravity", Unit.METRE, 0.05, 2, "--height"),
                height,
                FromSheet.HEIGHT);
    }
}
