package setwright.app.command.sums;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import setwright.core.car.worked.Input;
import setwright.core.car.worked.Origin;
import setwright.core.car.worked.RollSum;
import setwright.core.car.worked.Unit;

/** Options that say how both axles are sprung. */
final class SpringsMixin {
    @Option(names = "--front-spring", paramLabel = "N/MM", description = "Front spring rate.")
    private Optional<Double> frontSpring = Optional.empty();

    @Option(names = "--rear-spring", paramLabel = "N/MM", description = "Rear spring rate.")
    private Optional<Double> rearSpring = Optional.empty();

    @Option(names = "--front-motion-ratio", paramLabel = "RATIO", description = "Front spring over wheel travel.")
    private Optional<Double> frontRatio = Optional.empty();

    @Option(names = "--rear-motion-ratio", paramLabel = "RATIO", description = "Rear spring over wheel travel.")
    private Optional<Double> rearRatio = Optional.empty();

    @Option(
            names = "--front-bar",
            paramLabel = "N/MM",
            description = "Wheel rate of the front bar; none when left out.")
    private Optional<Double> frontBar = Optional.empty();

    @Option(names = "--rear-bar", paramLabel = "N/MM", description = "Wheel rate of the rear bar; none when left out.")
    private Optional<Double> rearBar = Optional.empty();

    @Option(names = "--front-track", paramLabel = "M", description = "Front track.")
    private Optional<Double> frontTrack = Optional.empty();

    @Option(names = "--rear-track", paramLabel = "M", description = "Rear track.")
    private Optional<Double> rearTrack = Optional.empty();

    RollSum.AxleInputs axle(Given given, Axle axle) {
        String name = axle.words();
        String end = axle.of("f", "r");
        return new RollSum.AxleInputs(
                given.need(
                        new Ask("k_s" + end, name + " spring rate", Unit.N_PER_MM, 1, 2000, "--" + name + "-spring"),
                        axle.of(frontSpring, rearSpring),
                        axle.of(FromSheet.FRONT_SPRING, FromSheet.REAR_SPRING)),
                given.need(
                        new Ask("MR_" + end, name + " motion ratio", Unit.NONE, 0.1, 3, "--" + name + "-motion-ratio"),
                        axle.of(frontRatio, rearRatio),
                        axle.of(FromSheet.FRONT_MOTION_RATIO, FromSheet.REAR_MOTION_RATIO)),
                given.need(
                        new Ask("k_b" + end, name + " bar, wheel rate", Unit.N_PER_MM, 0, 2000, "--" + name + "-bar"),
                        axle.of(frontBar, rearBar),
                        axle.of(FromSheet.FRONT_BAR, FromSheet.REAR_BAR),
                        0.0),
                track(given, axle));
    }

    Input track(Given given, Axle axle) {
        String name = axle.words();
        return given.need(
                new Ask("t_" + axle.of("f", "r"), name + " track", Unit.METRE, 0.5, 3, "--" + name + "-track"),
                axle.of(frontTrack, rearTrack),
                axle.of(FromSheet.FRONT_TRACK, FromSheet.REAR_TRACK));
    }

    /** Returns the roll stiffness that an axle's springs and bar make, for a sum that starts from it. */
    Input rollStiffness(Given given, Axle axle) {
        RollSum.AxleInputs inputs = axle(given, axle);
        List<Origin> origins = Stream.of(inputs.spring(), inputs.motionRatio(), inputs.bar(), inputs.track())
                .map(Input::origin)
                .toList();
        Origin origin = origins.contains(Origin.GIVEN)
                ? Origin.GIVEN
                : origins.contains(Origin.SHEET) ? Origin.SHEET : Origin.ASSUMED;
        return new Input(
                "K_" + axle.of("f", "r"),
                axle.words() + " roll stiffness (springs and bar)",
                Unit.NM_PER_DEG.shown(inputs.rollStiffness()),
                Unit.NM_PER_DEG,
                origin);
    }
}
