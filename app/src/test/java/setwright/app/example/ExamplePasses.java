package setwright.app.example;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.random.RandomGenerator;
import setwright.core.circuit.Corner;
import setwright.core.handling.CornerEvents;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.PassShapes;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.Slide;
import setwright.core.handling.SpeedClass;
import setwright.core.recording.Channel;

/** The evidence table of the invented stint: oversteer on entry of slow corners, a little push on two exits. */
final class ExamplePasses {
    private final ExampleDriving driving;
    private final RandomGenerator random;

    ExamplePasses(ExampleDriving driving, RandomGenerator random) {
        this.driving = driving;
        this.random = random;
    }

    CornerPass pass(int lap, Corner corner) {
        double shift = driving.shift[lap][corner.number() - 1];
        double slowest = slowest(corner);
        OptionalDouble brakeOn = first(corner.startM(), corner.apexM(), s -> driving.brakeAt(s) > 0.1);
        OptionalDouble brakeOff = brakeOn.isEmpty()
                ? OptionalDouble.empty()
                : last(brakeOn.getAsDouble(), corner.turnOutM(), s -> driving.brakeAt(s) > 0.05);
        OptionalDouble pickUp = first(slowest, corner.endM(), s -> driving.throttleAt(s) > 0.1);
        double turnIn = corner.turnInM() - 6.0 + 0.6 * shift;
        CornerEvents events = new CornerEvents(
                moved(brakeOn, shift),
                moved(brakeOn, shift + 12.0),
                OptionalDouble.of(turnIn),
                moved(brakeOff, 0.7 * shift),
                OptionalDouble.of(corner.apexM() + shift),
                OptionalDouble.of(slowest + shift),
                moved(pickUp, 1.4 * shift + random.nextGaussian()),
                moved(pickUp, shift + 25.0),
                OptionalDouble.of(corner.turnOutM() + 8.0));
        Map<Phase, PhaseBalance> phases = phases(corner, events, slowest);
        double lowest = driving.speedAt(slowest) + 0.25 * random.nextGaussian();
        return new CornerPass(
                lap,
                corner.number(),
                speedClass(corner),
                events,
                90.0 * lap + turnIn / 40.0,
                phases,
                slides(turnIn, lap, phases),
                hands(corner, lap, turnIn, phases),
                new Habits(0.0, 0.0, 0.0, 0.0, 0.0, 0.2, 0.0, 0.8, 0.1, 0.4, 0.8, 0.0, Double.NaN, -0.3, 1.5, 1.2),
                shapes(corner, shift),
                driving.speedAt(turnIn),
                lowest,
                driving.speedAt(corner.endM()),
                time(corner) + 0.03 * random.nextGaussian(),
                0.55);
    }

    /** Excess that the invented car has there, deg; positive: understeer. */
    static double excessDeg(SpeedClass speedClass, int corner, Phase phase) {
        if (phase == Phase.ENTRY) {
            return speedClass == SpeedClass.LOW ? -0.46 : -0.11;
        }
        if (phase == Phase.EXIT && (corner == 5 || corner == 9)) {
            return 0.27;
        }
        return 0.02;
    }

    SpeedClass speedClass(Corner corner) {
        double v = driving.speedAt(slowest(corner));
        return v < 25.0 ? SpeedClass.LOW : v > 40.0 ? SpeedClass.HIGH : SpeedClass.MEDIUM;
    }

    private Map<Phase, PhaseBalance> phases(Corner corner, CornerEvents events, double slowest) {
        Map<Phase, PhaseBalance> phases = new EnumMap<>(Phase.class);
        double turnIn = events.turnIn().orElse(corner.turnInM());
        double off = Math.max(turnIn, events.brakeOff().orElse(turnIn));
        double pick = Math.max(off + 1.0, events.throttlePickUp().orElse(slowest));
        if (events.brakeOn().isPresent()) {
            put(phases, corner, Phase.BRAKING, events.brakeOn().getAsDouble(), turnIn);
            put(phases, corner, Phase.ENTRY, turnIn, off);
        }
        put(phases, corner, Phase.MID, off, pick);
        put(phases, corner, Phase.EXIT, pick, corner.turnOutM() + 15.0);
        return phases;
    }

    private void put(Map<Phase, PhaseBalance> phases, Corner corner, Phase phase, double from, double to) {
        if (to - from < 1.0) {
            return;
        }
        double middle = 0.5 * (from + to);
        double speed = driving.speedAt(middle);
        double reference = Math.toRadians(0.9);
        double excess =
                Math.toRadians(excessDeg(speedClass(corner), corner.number(), phase) + 0.13 * random.nextGaussian());
        phases.put(
                phase,
                new PhaseBalance(
                        phase,
                        from,
                        to,
                        (to - from) / speed,
                        reference + excess,
                        reference,
                        0.0,
                        0.8,
                        0.95,
                        11.0,
                        speed));
    }

    private List<HandsEvent> hands(Corner corner, int lap, double turnIn, Map<Phase, PhaseBalance> phases) {
        List<HandsEvent> hands = new ArrayList<>();
        PhaseBalance entry = phases.get(Phase.ENTRY);
        if (entry != null && Math.toDegrees(entry.excessRad()) < -0.4) {
            double at = turnIn + 0.6 * (entry.toM() - turnIn) + random.nextGaussian();
            hands.add(
                    new HandsEvent(HandsEvent.Kind.CORRECTION, Phase.ENTRY, at, 80.0 * lap, 0.28, Math.toRadians(9.0)));
            if (random.nextInt(3) == 0) {
                hands.add(new HandsEvent(
                        HandsEvent.Kind.HOLD, Phase.ENTRY, at - 6.0, 80.0 * lap, 0.2, Math.toRadians(5.0)));
            }
        }
        if (corner.number() == 9 && random.nextInt(2) == 0) {
            hands.add(new HandsEvent(
                    HandsEvent.Kind.WIND_ON, Phase.EXIT, corner.apexM() + 15.0, 80.0 * lap, 0.4, Math.toRadians(14.0)));
        }
        return hands;
    }

    private static List<Slide> slides(double turnIn, int lap, Map<Phase, PhaseBalance> phases) {
        PhaseBalance entry = phases.get(Phase.ENTRY);
        if (entry == null || Math.toDegrees(entry.excessRad()) > -0.42) {
            return List.of();
        }
        return List.of(new Slide(
                Slide.Axle.REAR,
                Phase.ENTRY,
                turnIn + 0.5 * (entry.toM() - turnIn),
                80.0 * lap,
                0.4,
                Math.toRadians(0.9),
                new Slide.Inputs(0.3, 0.0, 0.5, 0.0, 0.0, 0.0, 0.1, 0.4)));
    }

    private PassShapes shapes(Corner corner, double shift) {
        double[][] curves = new double[4][PassShapes.POINTS];
        for (int i = 0; i < PassShapes.POINTS; i++) {
            double s = corner.startM() + (corner.endM() - corner.startM()) * i / (PassShapes.POINTS - 1.0) - shift;
            curves[0][i] = driving.speedAt(s);
            curves[1][i] = driving.brakeAt(s);
            curves[2][i] = driving.throttleAt(s);
        }
        return new PassShapes(
                Channel.of(curves[0]), Channel.of(curves[1]), Channel.of(curves[2]), Channel.of(curves[3]));
    }

    private double time(Corner corner) {
        double time = 0.0;
        for (double s = corner.startM(); s < corner.endM(); s += 1.0) {
            time += 1.0 / driving.speedAt(s);
        }
        return time;
    }

    private double slowest(Corner corner) {
        double best = corner.apexM();
        for (double s = corner.turnInM(); s <= corner.turnOutM(); s += 1.0) {
            if (driving.speedAt(s) < driving.speedAt(best) - 1e-9) {
                best = s;
            }
        }
        return best;
    }

    private static OptionalDouble first(double from, double to, DoublePredicate found) {
        for (double s = from; s <= to; s += 1.0) {
            if (found.test(s)) {
                return OptionalDouble.of(s);
            }
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble last(double from, double to, DoublePredicate found) {
        for (double s = to; s >= from; s -= 1.0) {
            if (found.test(s)) {
                return OptionalDouble.of(s);
            }
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble moved(OptionalDouble station, double by) {
        return station.isPresent() ? OptionalDouble.of(station.getAsDouble() + by) : station;
    }
}
