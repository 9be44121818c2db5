package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.RollSum;
import setwright.core.car.worked.Unit;

/** Roll stiffness of both axles. */
@Command(
        name = "roll",
        description = "Roll stiffness of both axles, the front share, a front bar for a wanted share.",
        footerHeading = Examples.HEADING,
        footer = {"  setwright sums roll --car car.yaml", "  setwright sums roll --car car.yaml --share 54"})
final class RollCommand extends CarSumCommand {
    @Mixin
    private SpringsMixin springs = new SpringsMixin();

    @Option(names = "--share", paramLabel = "PERCENT", description = "Front share to find the front bar for.")
    private Optional<Double> share = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        return List.of(new RollSum(
                        springs.axle(given, Axle.FRONT),
                        springs.axle(given, Axle.REAR),
                        given.maybe(new Ask("q", "front share wanted", Unit.PERCENT, 1, 99, "--share"), share))
                .calculation());
    }
}
