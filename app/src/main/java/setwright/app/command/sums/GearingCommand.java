package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.GearingSum;
import setwright.core.car.worked.Unit;

/** Gears against the rev limit. */
@Command(
        name = "gearing",
        description =
                "Speed in each gear at the rev limit, the drop at each upshift, engine speeds, a final drive to fit.",
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums gearing --car car.yaml --speed 180",
            "  setwright sums gearing --car car.yaml --limit-at 245"
        })
final class GearingCommand extends CarSumCommand {
    @Option(names = "--rev-limit", paramLabel = "RPM", description = "Engine speed limit.")
    private Optional<Double> limit = Optional.empty();

    @Option(names = "--tyre-radius", paramLabel = "M", description = "Rolling radius of the driven tyres.")
    private Optional<Double> radius = Optional.empty();

    @Option(names = "--final-drive", paramLabel = "RATIO", description = "Final drive ratio.")
    private Optional<Double> finalDrive = Optional.empty();

    @Option(
            names = "--gears",
            paramLabel = "RATIO",
            split = ",",
            description = "Gear ratios, first gear first: 2.6,1.9,1.5")
    private List<Double> gears = List.of();

    @Option(names = "--speed", paramLabel = "KM/H", description = "Shows the engine speed in each gear at this speed.")
    private Optional<Double> speed = Optional.empty();

    @Option(
            names = "--limit-at",
            paramLabel = "KM/H",
            description = "Finds the final drive with which the last gear reaches the limit at this speed.")
    private Optional<Double> limitAt = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        return List.of(new GearingSum(
                        given.need(
                                new Ask("n_max", "rev limit", Unit.RPM, 500, 25_000, "--rev-limit"),
                                limit,
                                FromSheet.REV_LIMIT),
                        given.need(
                                new Ask("r", "tyre radius", Unit.METRE, 0.1, 0.6, "--tyre-radius"),
                                radius,
                                FromSheet.TYRE_RADIUS),
                        given.need(
                                new Ask("i_f", "final drive", Unit.RATIO, 0.5, 20, "--final-drive"),
                                finalDrive,
                                FromSheet.FINAL_DRIVE),
                        given.gears(gears),
                        given.maybe(new Ask("v", "speed", Unit.KMH, 1, 500, "--speed"), speed),
                        given.maybe(
                                new Ask("v_lim", "speed wanted at the limit", Unit.KMH, 10, 500, "--limit-at"),
                                limitAt))
                .calculation());
    }
}
