package setwright.app.command;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import setwright.app.world.World;
import setwright.app.world.WorldCar;
import setwright.core.car.CarSheet;
import setwright.core.simulation.fault.Fault;
import setwright.core.simulation.fault.FaultCatalogue;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.intake.yaml.Spelling;

/** What can be chosen from the invented world. */
final class WorldChoices {
    static final String NO_FAULT = "none";

    @Option(
            names = "--car",
            paramLabel = "NAME",
            description = "The car: orvane (rear-drive closed car), pirrel (light single-seater), hobbrick (front-drive"
                    + " touring car), vessane (mid-engine prototype). Default: ${DEFAULT-VALUE}.",
            defaultValue = "orvane")
    private String car;

    @Option(
            names = "--circuit",
            paramLabel = "NAME",
            description = "The circuit: pellisor (mixed, 3.5 km), skarnholt (tight, 2.6 km), velmarra (fast, 4.8 km)."
                    + " Default: ${DEFAULT-VALUE}.",
            defaultValue = "pellisor")
    private String circuit;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            description = "The same number gives the same laps. Default: ${DEFAULT-VALUE}.",
            defaultValue = "1")
    private long seed;

    long seed() {
        return seed;
    }

    WorldCar car() {
        return World.car(car).orElseThrow(() -> unknown("--car", car, World.cars()));
    }

    CircuitPlan circuit() {
        return World.circuit(circuit).orElseThrow(() -> unknown("--circuit", circuit, World.circuits()));
    }

    /** Returns the fault of a name; empty for none. */
    static Optional<Fault> fault(String name, CarSheet sheet) {
        if (name.equals(NO_FAULT)) {
            return Optional.empty();
        }
        List<String> known = FaultCatalogue.of(sheet).stream().map(Fault::name).toList();
        return Optional.of(FaultCatalogue.find(name)
                .filter(fault -> known.contains(fault.name()))
                .orElseThrow(() -> unknown("--fault", name, known)));
    }

    static BadOption unknown(String option, String found, Collection<String> known) {
        String near = Spelling.nearest(found, known)
                .map(word -> "Is \"" + word + "\" meant?")
                .orElse("There is: " + String.join(", ", known) + ".");
        return new BadOption(option + ": there is no \"" + found + "\". " + near);
    }
}
