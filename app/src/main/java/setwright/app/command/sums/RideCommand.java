package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.RideSum;
import setwright.core.car.worked.Unit;

/** Spring rate to ride frequency, and back. */
@Command(
        name = "ride",
        description = "Spring rate to ride frequency, or a wanted frequency to a spring rate.",
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums ride --car car.yaml",
            "  setwright sums ride --spring 120 --motion-ratio 0.8 --mass 280"
        })
final class RideCommand extends CarSumCommand {
    @Option(names = "--axle", paramLabel = "AXLE", description = "front or rear of the car sheet; both when left out.")
    private Optional<Axle> axle = Optional.empty();

    @Option(names = "--spring", paramLabel = "N/MM", description = "Spring rate.")
    private Optional<Double> spring = Optional.empty();

    @Option(names = "--motion-ratio", paramLabel = "RATIO", description = "Spring travel over wheel travel.")
    private Optional<Double> motionRatio = Optional.empty();

    @Option(names = "--mass", paramLabel = "KG", description = "Sprung mass on this wheel.")
    private Optional<Double> mass = Optional.empty();

    @Option(names = "--tyre-rate", paramLabel = "N/MM", description = "Vertical rate of the tyre.")
    private Optional<Double> tyre = Optional.empty();

    @Option(names = "--frequency", paramLabel = "HZ", description = "Frequency to find the spring for.")
    private Optional<Double> frequency = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        return Axle.chosen(given, axle, List.of(spring, motionRatio, mass)).stream()
                .map(one -> new RideSum(
                                one.title(given, axle),
                                given.need(
                                        CornerAsk.MOTION_RATIO,
                                        motionRatio,
                                        one.of(FromSheet.FRONT_MOTION_RATIO, FromSheet.REAR_MOTION_RATIO)),
                                given.need(
                                        CornerAsk.MASS,
                                        mass,
                                        one.of(FromSheet.FRONT_WHEEL_MASS, FromSheet.REAR_WHEEL_MASS)),
                                frequency.isPresent()
                                        ? given.maybe(
                                                CornerAsk.SPRING,
                                                spring,
                                                one.of(FromSheet.FRONT_SPRING, FromSheet.REAR_SPRING))
                                        : Optional.of(given.need(
                                                CornerAsk.SPRING,
                                                spring,
                                                one.of(FromSheet.FRONT_SPRING, FromSheet.REAR_SPRING))),
                                given.maybe(new Ask("k_t", "tyre rate", Unit.N_PER_MM, 20, 2000, "--tyre-rate"), tyre),
                                given.maybe(
                                        new Ask("f", "frequency wanted", Unit.HERTZ, 0.3, 15, "--frequency"),
                                        frequency))
                        .calculation())
                .toList();
    }
}
