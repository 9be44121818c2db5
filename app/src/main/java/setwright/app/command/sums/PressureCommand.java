package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.Input;
import setwright.core.car.worked.PressureSum;
import setwright.core.car.worked.Unit;

/** Cold and hot tyre pressure. */
@Command(
        name = "pressure",
        description = "Cold tyre pressure to hot, or a wanted hot pressure to the cold one to set.",
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums pressure --cold 1.6 --cold-temperature 20 --hot-temperature 80",
            "  setwright sums pressure --hot 2.0 --cold-temperature 20 --hot-temperature 80"
        })
final class PressureCommand extends CarSumCommand {
    private static final double STANDARD_BAR = 1.01325;

    @Option(names = "--axle", paramLabel = "AXLE", description = "front or rear of the car sheet; both when left out.")
    private Optional<Axle> axle = Optional.empty();

    @Option(
            names = "--cold",
            paramLabel = "BAR",
            description = "Cold gauge pressure; a car sheet's pressure is taken as cold.")
    private Optional<Double> cold = Optional.empty();

    @Option(names = "--hot", paramLabel = "BAR", description = "Hot gauge pressure to find the cold one for.")
    private Optional<Double> hot = Optional.empty();

    @Option(names = "--cold-temperature", paramLabel = "C", description = "Of the air in the cold tyre.")
    private Optional<Double> coldTemperature = Optional.empty();

    @Option(names = "--hot-temperature", paramLabel = "C", description = "Of the air in the hot tyre.")
    private Optional<Double> hotTemperature = Optional.empty();

    @Option(
            names = "--ambient",
            paramLabel = "BAR",
            description = "Pressure of the air around; 1.01325 bar when left out.")
    private Optional<Double> ambient = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        if (hot.isPresent()) { // nothing comes from the sheet, so that both axles are one sum
            return List.of(
                    sum(given, axle.orElse(Axle.FRONT), axle.map(Axle::words).orElse("")));
        }
        return Axle.chosen(given, axle, List.of(cold)).stream()
                .map(one -> sum(given, one, one.title(given, axle)))
                .toList();
    }

    private Calculation sum(Given given, Axle one, String title) {
        return new PressureSum(
                        title,
                        given.need(
                                new Ask("T_c", "cold temperature", Unit.CELSIUS, -40, 80, "--cold-temperature"),
                                coldTemperature),
                        given.need(
                                new Ask("T_h", "hot temperature", Unit.CELSIUS, -40, 200, "--hot-temperature"),
                                hotTemperature),
                        given.need(
                                new Ask("p_a", "pressure of the air around", Unit.BAR, 0.5, 1.1, "--ambient"),
                                ambient,
                                STANDARD_BAR),
                        coldPressure(given, one),
                        given.maybe(new Ask("p_h", "hot pressure wanted", Unit.BAR, 0.2, 10, "--hot"), hot))
                .calculation();
    }

    private Optional<Input> coldPressure(Given given, Axle one) {
        Ask ask = new Ask("p_c", "cold pressure", Unit.BAR, 0.2, 10, "--cold");
        if (hot.isPresent()) {
            return given.maybe(ask, cold);
        }
        return Optional.of(given.need(ask, cold, one.of(FromSheet.FRONT_PRESSURE, FromSheet.REAR_PRESSURE)));
    }
}
