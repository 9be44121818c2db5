package setwright.app.truthbench;

import static setwright.app.truthbench.DrawnDriver.between;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import setwright.app.world.RecordingWriter;
import setwright.app.world.World;
import setwright.app.world.WorldCar;
import setwright.core.car.SetupChange;
import setwright.core.judgement.SpeedRange;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.fault.DriverFault;
import setwright.core.simulation.fault.Fault;
import setwright.core.simulation.fault.FaultCatalogue;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.core.simulation.truth.TrueTrigger;

/** Draws cases. Each follows from the seed and its number alone, so that any one can be drawn again without the others. */
final class CaseDraw {
    private static final double BALANCED = 0.15;
    private static final double INCONSISTENT = 0.15;
    private static final double TECHNIQUE = 0.10;
    /** Of the faults of the car. */
    private static final double UNSEEN = 0.2;

    private static final int FEWEST_LAPS = 6;
    private static final int MOST_LAPS = 12;
    private static final double SLOWEST_HZ = 50.0;
    private static final double LEAST_KG_PER_M = 0.3e-3;
    private static final double MOST_KG_PER_M = 0.6e-3;

    private CaseDraw() {}

    /**
     * Draws a case.
     *
     * @param seed    of the whole bench
     * @param number  of the case, from 0
     * @param only    name of the fault that is wanted; empty for any
     */
    static BenchCase draw(long seed, int number, Optional<String> only) {
        Random random = new Random(seed * 1_000_003L + number);
        random.nextLong(); // the first numbers of neighbouring seeds are alike
        // numbers of its own, so that all other draws are the same with and without
        Random unseen = new Random(seed * 1_000_003L - 1L - number);
        unseen.nextLong();
        Kind kind = only.map(CaseDraw::kindOf).orElseGet(() -> kind(random.nextDouble(), unseen.nextDouble()));
        WorldCar car = car(random, only);
        double[] parameters = DrawnCar.balanced(car.sheet(), random);
        CircuitPlan circuit = circuit(random);
        DriverStyle good = DrawnDriver.good(random);
        DriverFault technique =
                random.nextBoolean() ? DriverFault.TOO_MUCH_TRAIL_BRAKING : DriverFault.THROTTLE_TOO_EARLY;
        DriverFault driverFault = kind == Kind.INCONSISTENT
                ? DriverFault.INCONSISTENT
                : only.flatMap(CaseDraw::driverFault).orElse(technique);
        UnseenFault hidden = UnseenFault.draw(car.sheet(), unseen);
        Optional<Fault> fault = kind == Kind.SETUP ? Optional.of(fault(car, only, random)) : Optional.empty();
        List<SetupChange> changes = fault.map(drawn -> FaultDraw.changes(car.sheet(), parameters, drawn, random))
                .orElse(List.of());
        boolean driver = kind == Kind.TECHNIQUE || kind == Kind.INCONSISTENT;
        boolean off = kind == Kind.UNSEEN;
        return new BenchCase(
                number,
                kind,
                fault.map(Fault::name).orElse(off ? hidden.words() : driver ? driverFault.words() : kind.words()),
                fault.map(CaseDraw::trigger)
                        .orElse(
                                off
                                        ? hidden.trigger()
                                        : kind == Kind.TECHNIQUE ? trigger(driverFault) : TrueTrigger.NONE),
                car,
                parameters,
                off ? hidden.in(car.sheet(), parameters, unseen) : parameters,
                changes,
                circuit,
                driver ? DrawnDriver.with(driverFault, good, random) : good,
                good,
                FEWEST_LAPS + random.nextInt(MOST_LAPS - FEWEST_LAPS + 1),
                between(random, LEAST_KG_PER_M, MOST_KG_PER_M),
                random.nextLong(),
                logger(random.nextLong()),
                RecordingWriter.Form.random(random.nextLong()));
    }

    /** Loggers slower than what is asked for are drawn again. */
    private static LoggerPlan logger(long seed) {
        LoggerPlan plan = LoggerPlan.random(seed);
        for (long other = seed + 1; plan.rateHz() < SLOWEST_HZ; other++) {
            plan = LoggerPlan.random(other);
        }
        return plan;
    }

    private static Kind kind(double share, double unseen) {
        if (share < BALANCED) {
            return Kind.BALANCED;
        }
        if (share < BALANCED + INCONSISTENT) {
            return Kind.INCONSISTENT;
        }
        if (share < BALANCED + INCONSISTENT + TECHNIQUE) {
            return Kind.TECHNIQUE;
        }
        return unseen < UNSEEN ? Kind.UNSEEN : Kind.SETUP;
    }

    private static Kind kindOf(String wanted) {
        for (Kind kind : Kind.values()) {
            if (kind.words().equals(wanted)) {
                return kind;
            }
        }
        if (driverFault(wanted).isPresent()) {
            return Kind.TECHNIQUE;
        }
        return FaultCatalogue.find(wanted)
                .map(fault -> Kind.SETUP)
                .orElseThrow(
                        () -> new IllegalArgumentException(
                                "there is no fault \"" + wanted + "\"; known are "
                                        + String.join(
                                                ", ",
                                                FaultCatalogue.all().stream()
                                                        .map(Fault::name)
                                                        .toList())
                                        + " and balanced, setup, unseen, technique, inconsistent, too much trail braking, throttle too early"));
    }

    private static Optional<DriverFault> driverFault(String words) {
        return List.of(DriverFault.values()).stream()
                .filter(fault -> fault.words().equals(words))
                .findFirst();
    }

    private static WorldCar car(Random random, Optional<String> only) {
        List<WorldCar> cars = World.cars().stream()
                .flatMap(name -> World.car(name).stream())
                .filter(car -> only.flatMap(FaultCatalogue::find)
                        .map(fault -> fault.appliesTo(car.sheet()))
                        .orElse(true))
                .toList();
        return cars.get(random.nextInt(cars.size()));
    }

    private static Fault fault(WorldCar car, Optional<String> only, Random random) {
        List<Fault> possible = FaultCatalogue.of(car.sheet());
        Fault drawn = possible.get(random.nextInt(possible.size()));
        return only.flatMap(FaultCatalogue::find).orElse(drawn);
    }

    /** One in four is a circuit of the invented world, the others are new. */
    private static CircuitPlan circuit(Random random) {
        long seed = random.nextLong();
        List<String> known = World.circuits();
        int choice = random.nextInt(4 * known.size());
        return choice < known.size() ? World.circuit(known.get(choice)).orElseThrow() : CircuitPlan.random(seed);
    }

    private static TrueTrigger trigger(Fault fault) {
        return switch (fault.trigger()) {
            case BRAKE_APPLICATION -> TrueTrigger.BRAKE;
            case BRAKE_RELEASE -> TrueTrigger.TRAIL_BRAKE;
            case TURN_IN -> TrueTrigger.ENTRY_SPEED;
            case THROTTLE_PICK_UP, THROTTLE_LIFT -> TrueTrigger.THROTTLE;
            case BUMP -> TrueTrigger.BUMP;
            case NONE -> fault.speed() == SpeedRange.HIGH ? TrueTrigger.SPEED : TrueTrigger.STEADY;
        };
    }

    private static TrueTrigger trigger(DriverFault fault) {
        return fault == DriverFault.THROTTLE_TOO_EARLY ? TrueTrigger.THROTTLE : TrueTrigger.TRAIL_BRAKE;
    }
}
