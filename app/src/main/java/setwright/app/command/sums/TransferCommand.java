package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import setwright.app.command.Examples;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.Input;
import setwright.core.car.worked.TransferSum;
import setwright.core.car.worked.Unit;

/** Wheel loads under acceleration. */
@Command(
        name = "transfer",
        description = "Load transfer, its front share, roll angle and wheel loads.",
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright sums transfer --car car.yaml --lateral 1.4",
            "  setwright sums transfer --car car.yaml --longitudinal -1.1"
        })
final class TransferCommand extends CarSumCommand {
    private static final double USUAL_HUB_HEIGHT_M = 0.3;

    @Mixin
    private CarMixin car = new CarMixin();

    @Mixin
    private SpringsMixin springs = new SpringsMixin();

    @Option(names = "--lateral", paramLabel = "G", description = "Lateral acceleration; 1 g when left out.")
    private Optional<Double> lateral = Optional.empty();

    @Option(
            names = "--longitudinal",
            paramLabel = "G",
            description = "Longitudinal acceleration, negative under braking; 0 when left out.")
    private Optional<Double> longitudinal = Optional.empty();

    @Option(
            names = "--front-roll-stiffness",
            paramLabel = "N M/DEG",
            description = "Instead of front spring, motion ratio and bar.")
    private Optional<Double> frontStiffness = Optional.empty();

    @Option(
            names = "--rear-roll-stiffness",
            paramLabel = "N M/DEG",
            description = "Instead of rear spring, motion ratio and bar.")
    private Optional<Double> rearStiffness = Optional.empty();

    @Option(names = "--front-roll-centre", paramLabel = "M", description = "Height of the front roll centre.")
    private Optional<Double> frontCentre = Optional.empty();

    @Option(names = "--rear-roll-centre", paramLabel = "M", description = "Height of the rear roll centre.")
    private Optional<Double> rearCentre = Optional.empty();

    @Option(names = "--front-unsprung", paramLabel = "KG", description = "Unsprung mass of the front axle.")
    private Optional<Double> frontUnsprung = Optional.empty();

    @Option(names = "--rear-unsprung", paramLabel = "KG", description = "Unsprung mass of the rear axle.")
    private Optional<Double> rearUnsprung = Optional.empty();

    @Option(names = "--unsprung-height", paramLabel = "M", description = "Height of the unsprung masses.")
    private Optional<Double> hubHeight = Optional.empty();

    @Override
    List<Calculation> calculations(Given given) {
        return List.of(new TransferSum(
                        car.mass(given),
                        car.frontWeight(given),
                        car.wheelbase(given),
                        car.height(given),
                        axle(given, Axle.FRONT),
                        axle(given, Axle.REAR),
                        given.need(
                                new Ask("h_u", "height of the unsprung masses", Unit.METRE, 0, 1, "--unsprung-height"),
                                hubHeight,
                                FromSheet.TYRE_RADIUS,
                                USUAL_HUB_HEIGHT_M),
                        given.need(new Ask("a_y", "lateral acceleration", Unit.G, 0, 8, "--lateral"), lateral, 1.0),
                        given.need(
                                new Ask("a_x", "acceleration forward", Unit.G, -8, 4, "--longitudinal"),
                                longitudinal,
                                0.0))
                .calculation());
    }

    private TransferSum.AxleInputs axle(Given given, Axle axle) {
        String name = axle.words();
        String end = axle.of("f", "r");
        Optional<Input> stiffness = given.maybe(
                new Ask(
                        "K_" + end,
                        name + " roll stiffness",
                        Unit.NM_PER_DEG,
                        0,
                        1_000_000,
                        "--" + name + "-roll-stiffness"),
                axle.of(frontStiffness, rearStiffness));
        return new TransferSum.AxleInputs(
                stiffness.orElseGet(() -> springs.rollStiffness(given, axle)),
                given.need(
                        new Ask(
                                "z_" + end,
                                name + " roll centre height",
                                Unit.METRE,
                                -0.5,
                                1,
                                "--" + name + "-roll-centre"),
                        axle.of(frontCentre, rearCentre),
                        0.0),
                springs.track(given, axle),
                given.need(
                        new Ask("m_u" + end, name + " unsprung mass", Unit.MASS, 0, 1000, "--" + name + "-unsprung"),
                        axle.of(frontUnsprung, rearUnsprung),
                        0.0));
    }
}
