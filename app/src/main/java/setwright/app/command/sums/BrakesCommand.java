package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.BrakesSum;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.Unit;

/** Brake balance at a deceleration. */
@Command(
        name = "brakes",
        description = "Ideal brake balance at a deceleration, the grip each axle needs, which axle locks first.",
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums brakes --car car.yaml --deceleration 1.2",
            "  setwright sums brakes --car car.yaml --bias 58 --friction 1.4"
        })
final class BrakesCommand extends CarSumCommand {
    @Mixin
    private CarMixin car = new CarMixin();

    @Option(names = "--bias", paramLabel = "PERCENT", description = "Front share of the braking force.")
    private Optional<Double> bias = Optional.empty();

    @Option(names = "--deceleration", paramLabel = "G", description = "Deceleration; 1 g when left out.")
    private Optional<Double> deceleration = Optional.empty();

    @Option(names = "--tyre-radius", paramLabel = "M", description = "Radius of the tyres, for the torque.")
    private Optional<Double> radius = Optional.empty();

    @Option(
            names = "--friction",
            paramLabel = "MU",
            description = "Friction between tyre and road: shows the deceleration at which each axle locks.")
    private Optional<Double> friction = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        return List.of(new BrakesSum(
                        car.mass(given),
                        car.frontWeight(given),
                        car.wheelbase(given),
                        car.height(given),
                        given.need(
                                new Ask("p", "front share of the braking force", Unit.PERCENT, 1, 99, "--bias"),
                                bias,
                                FromSheet.BIAS),
                        given.need(new Ask("z", "deceleration", Unit.G, 0.01, 8, "--deceleration"), deceleration, 1.0),
                        given.need(
                                new Ask("r", "tyre radius", Unit.METRE, 0.1, 0.6, "--tyre-radius"),
                                radius,
                                FromSheet.TYRE_RADIUS),
                        given.maybe(new Ask("mu", "friction of the road", Unit.NONE, 0.05, 4, "--friction"), friction))
                .calculation());
    }
}
