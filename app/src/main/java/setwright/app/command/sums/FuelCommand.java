package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import setwright.app.command.BadOption;
import setwright.app.command.Examples;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.FuelSum;
import setwright.core.car.worked.Input;
import setwright.core.car.worked.Unit;

/** Fuel for a stint. */
@Command(
        name = "fuel",
        description = "Fuel for a number of laps or minutes, or the laps that a filling allows.",
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums fuel --laps 20 --per-lap 2.4 --reserve 3",
            "  setwright sums fuel --minutes 40 --lap-time 94.5 --per-lap 2.4 --in-tank 55"
        })
final class FuelCommand extends CarSumCommand {
    /** Common practice: petrol at 15 C has 0.72 to 0.775 kg/l (EN 228, value from memory). */
    private static final double USUAL_DENSITY = 0.745;

    private static final Ask IN_TANK = new Ask("F_0", "fuel in the tank", Unit.LITRE, 0, 500, "--in-tank");

    @Option(names = "--laps", paramLabel = "N", description = "Laps to drive, those to the grid and back included.")
    private Optional<Double> laps = Optional.empty();

    @Option(names = "--minutes", paramLabel = "MIN", description = "Length of the stint, with --lap-time.")
    private Optional<Double> minutes = Optional.empty();

    @Option(names = "--lap-time", paramLabel = "S", description = "Lap time, with --minutes.")
    private Optional<Double> lapTime = Optional.empty();

    @Option(names = "--per-lap", paramLabel = "L", description = "Fuel used per lap, litres.")
    private Optional<Double> perLap = Optional.empty();

    @Option(names = "--reserve", paramLabel = "L", description = "Left at the end, litres; none when left out.")
    private Optional<Double> reserve = Optional.empty();

    @Option(names = "--in-tank", paramLabel = "L", description = "Fuel at the start, litres: shows the laps it allows.")
    private Optional<Double> inTank = Optional.empty();

    @Option(names = "--density", paramLabel = "KG/L", description = "Density of the fuel; 0.745 when left out.")
    private Optional<Double> density = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        if (minutes.isPresent() != lapTime.isPresent()) {
            throw new BadOption("--minutes and --lap-time belong together: give both, or --laps.");
        }
        if (minutes.isPresent() && laps.isPresent()) {
            throw new BadOption("--laps and --minutes exclude each other: give one of them.");
        }
        if (laps.isEmpty() && minutes.isEmpty() && inTank.isEmpty() && !given.hasSheet()) {
            throw new BadOption("--laps is missing: give the laps, or --minutes with --lap-time, or --in-tank.");
        }
        Input fuelDensity = given.need(
                new Ask("rho", "density of the fuel", Unit.KG_PER_LITRE, 0.5, 1.2, "--density"),
                density,
                USUAL_DENSITY);
        return List.of(new FuelSum(
                        given.need(new Ask("u", "fuel per lap", Unit.LITRE, 0.01, 100, "--per-lap"), perLap),
                        given.need(new Ask("R", "reserve", Unit.LITRE, 0, 500, "--reserve"), reserve, 0.0),
                        fuelDensity,
                        given.maybe(new Ask("n", "laps", Unit.COUNT, 0, 2000, "--laps"), laps),
                        given.maybe(new Ask("T", "length of the stint", Unit.MINUTE, 0.1, 1500, "--minutes"), minutes),
                        given.maybe(new Ask("t", "lap time", Unit.SECOND, 5, 1500, "--lap-time"), lapTime),
                        given.maybe(IN_TANK, inTank).or(() -> onSheet(given, fuelDensity)))
                .calculation());
    }

    /** Sheets give fuel in kg. */
    private static Optional<Input> onSheet(Given given, Input fuelDensity) {
        Ask mass = new Ask("m_0", "fuel at the start", Unit.MASS, 0, 500, "--in-tank");
        return given.maybe(mass, Optional.empty(), FromSheet.FUEL)
                .map(kg -> new Input(
                        IN_TANK.symbol(),
                        IN_TANK.words(),
                        Unit.LITRE.shown(kg.si() / fuelDensity.si()),
                        IN_TANK.unit(),
                        kg.origin()));
    }
}
