package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.TopSpeedSum;
import setwright.core.car.worked.Unit;

/** Top speed from power, drag and rolling resistance. */
@Command(
        name = "top-speed",
        description = "The speed at which drag and rolling resistance take all the power.",
        footerHeading = Examples.HEADING,
        footer = {"  setwright sums top-speed --power 210 --drag-area 0.75 --mass 1250"})
final class TopSpeedCommand extends CarSumCommand {
    /** Common practice: 0.010 to 0.015 on dry asphalt. */
    private static final double USUAL_ROLLING = 0.012;

    private static final double STANDARD_DENSITY = 1.225;

    @Option(names = "--power", paramLabel = "KW", description = "Power at the wheels.")
    private Optional<Double> power = Optional.empty();

    @Option(names = "--drag-area", paramLabel = "M2", description = "Drag coefficient times frontal area.")
    private Optional<Double> dragArea = Optional.empty();

    @Option(
            names = "--rolling",
            paramLabel = "SHARE",
            description = "Rolling resistance over weight; 0.012 when left out.")
    private Optional<Double> rolling = Optional.empty();

    @Option(names = "--mass", paramLabel = "KG", description = "Mass with driver and fuel.")
    private Optional<Double> mass = Optional.empty();

    @Option(
            names = "--density",
            paramLabel = "KG/M3",
            description = "Density of the air, see sums air; 1.225 when left out.")
    private Optional<Double> density = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        return List.of(new TopSpeedSum(
                        given.need(new Ask("P", "power at the wheels", Unit.KILOWATT, 0.1, 2000, "--power"), power),
                        given.need(new Ask("CdA", "drag area", Unit.SQUARE_METRE, 0.02, 10, "--drag-area"), dragArea),
                        given.need(
                                new Ask("c_rr", "rolling resistance over weight", Unit.NONE, 0, 0.2, "--rolling"),
                                rolling,
                                USUAL_ROLLING),
                        given.need(
                                new Ask("m", "mass with driver and fuel", Unit.MASS, 50, 5000, "--mass"),
                                mass,
                                FromSheet.MASS),
                        given.need(
                                new Ask("rho", "density of the air", Unit.KG_PER_CUBIC_METRE, 0.3, 1.6, "--density"),
                                density,
                                STANDARD_DENSITY))
                .calculation());
    }
}
