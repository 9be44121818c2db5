package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.DampingSum;
import setwright.core.car.worked.Input;
import setwright.core.car.worked.Unit;

/** Damper rate to damping ratio, and back. */
@Command(
        name = "damping",
        description = "Damper rate to damping ratio, or a wanted ratio to a damper rate.",
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums damping --car car.yaml --axle front --damper 4000",
            "  setwright sums damping --spring 120 --motion-ratio 0.8 --mass 280 --ratio 0.7"
        })
final class DampingCommand extends CarSumCommand {
    @Option(names = "--axle", paramLabel = "AXLE", description = "front or rear of the car sheet; both when left out.")
    private Optional<Axle> axle = Optional.empty();

    @Option(names = "--spring", paramLabel = "N/MM", description = "Spring rate.")
    private Optional<Double> spring = Optional.empty();

    @Option(names = "--motion-ratio", paramLabel = "RATIO", description = "Spring travel over wheel travel.")
    private Optional<Double> motionRatio = Optional.empty();

    @Option(
            names = "--damper-motion-ratio",
            paramLabel = "RATIO",
            description = "Damper travel over wheel travel; the spring's when left out.")
    private Optional<Double> damperRatio = Optional.empty();

    @Option(names = "--mass", paramLabel = "KG", description = "Sprung mass on this wheel.")
    private Optional<Double> mass = Optional.empty();

    @Option(names = "--damper", paramLabel = "N S/M", description = "Rate of the damper: force over speed.")
    private Optional<Double> damper = Optional.empty();

    @Option(names = "--ratio", paramLabel = "D", description = "Damping ratio to find the damper for; 1 is critical.")
    private Optional<Double> ratio = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        Ask asked = new Ask("c_d", "damper rate", Unit.DAMPING, 10, 100_000, "--damper");
        Optional<Input> wanted =
                given.maybe(new Ask("D", "damping ratio wanted", Unit.NONE, 0.01, 3, "--ratio"), ratio);
        Optional<Input> found =
                wanted.isPresent() ? given.maybe(asked, damper) : Optional.of(given.need(asked, damper));
        return Axle.chosen(given, axle, List.of(spring, motionRatio, damperRatio, mass, damper)).stream()
                .map(one -> corner(given, one, found, wanted))
                .toList();
    }

    private Calculation corner(Given given, Axle one, Optional<Input> found, Optional<Input> wanted) {
        Input springRatio = given.need(
                CornerAsk.MOTION_RATIO, motionRatio, one.of(FromSheet.FRONT_MOTION_RATIO, FromSheet.REAR_MOTION_RATIO));
        return new DampingSum(
                        one.title(given, axle),
                        given.need(CornerAsk.SPRING, spring, one.of(FromSheet.FRONT_SPRING, FromSheet.REAR_SPRING)),
                        springRatio,
                        given.need(
                                new Ask(
                                        "MR_d",
                                        "motion ratio of the damper",
                                        Unit.NONE,
                                        0.1,
                                        3,
                                        "--damper-motion-ratio"),
                                damperRatio,
                                springRatio.value()),
                        given.need(CornerAsk.MASS, mass, one.of(FromSheet.FRONT_WHEEL_MASS, FromSheet.REAR_WHEEL_MASS)),
                        found,
                        wanted)
                .calculation();
    }
}
