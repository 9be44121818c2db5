package setwright.core.slip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/*
 * Design note. A wheel is beyond its peak and on its way to lock or spin at one and a half times the slip ratio of the peak, which for
 * racing tyres is 0.10 to 0.11 (Perantoni and Limebeer, Vehicle System Dynamics 52(5), 2014, value from memory): 0.15. Sensors' noise
 * is a tenth of it at most. Without wheel speeds the engine tells the mean speed of the driven wheels while a gear is engaged; of
 * locks nothing is said then: a deceleration that falls short may have many reasons.
 */

/** Finds locked and spinning wheels. */
final class WheelEventFinder {
    private static final double BEYOND = 0.15;
    private static final double SHORTEST_S = 0.08;
    private static final double LEAST_SPEED = 10.0;
    private static final double PRESSED = 0.05;
    /** In a bend an inner wheel carries little; that it locks while the outer does not costs nothing but its tread. */
    private static final double BEND_MPS2 = 3.0;

    /** A gear change lasts below half a second (common practice); while it does, engine and wheels are apart. */
    private static final double SHIFT_S = 0.5;

    private static final int LEAST_ROLLING = 100;
    private static final List<Quantity> WHEELS = List.of(
            Quantity.WHEEL_SPEED_FRONT_LEFT,
            Quantity.WHEEL_SPEED_FRONT_RIGHT,
            Quantity.WHEEL_SPEED_REAR_LEFT,
            Quantity.WHEEL_SPEED_REAR_RIGHT);

    private final Stint stint;
    private final HandlingTrace trace;
    private final CarSheet sheet;
    private final List<WheelEvent> events = new ArrayList<>();

    private WheelEventFinder(Stint stint, HandlingTrace trace, CarSheet sheet) {
        this.stint = stint;
        this.trace = trace;
        this.sheet = sheet;
    }

    static WheelEvidence find(Stint stint, HandlingTrace trace, CarSheet sheet) {
        WheelEventFinder finder = new WheelEventFinder(stint, trace, sheet);
        boolean wheels = WHEELS.stream().allMatch(stint.recording()::has);
        boolean engine = stint.recording().has(Quantity.ENGINE_SPEED)
                && stint.recording().has(Quantity.GEAR);
        if (wheels) {
            finder.byWheels();
        } else if (engine) {
            finder.byEngine();
        }
        finder.events.sort(Comparator.comparingDouble(WheelEvent::timeS));
        return new WheelEvidence(wheels, wheels || engine, wheels, finder.events);
    }

    private void byWheels() {
        double[][] slip = new double[4][];
        for (int wheel = 0; wheel < 4; wheel++) {
            slip[wheel] = slip(wheel);
        }
        int count = slip[0].length;
        double[] front = new double[count];
        double[] rear = new double[count];
        double[] frontInside = new double[count];
        double[] rearInside = new double[count];
        double[] spin = new double[count];
        double[] inside = new double[count];
        for (int i = 0; i < count; i++) {
            boolean brakes = trace.brake().get(i) > PRESSED;
            boolean drives = trace.throttle().get(i) > PRESSED && !brakes;
            if (brakes) {
                front[i] = lock(slip, 0, i, false);
                frontInside[i] = lock(slip, 0, i, true);
                rear[i] = lock(slip, 2, i, false);
                rearInside[i] = lock(slip, 2, i, true);
            }
            if (drives) {
                boolean left = trace.lateral().get(i) > 0.0;
                double most = 0.0;
                double alone = 0.0;
                for (int axle = 0; axle < 2; axle++) {
                    if (sheet.drivenAxle() == (axle == 0 ? DrivenAxle.REAR : DrivenAxle.FRONT)) {
                        continue;
                    }
                    double inner = slip[2 * axle + (left ? 0 : 1)][i];
                    double outer = slip[2 * axle + (left ? 1 : 0)][i];
                    most = Math.max(most, Math.min(inner, outer));
                    alone = outer < BEYOND ? Math.max(alone, inner) : alone;
                }
                spin[i] = most;
                inside[i] = alone;
            }
        }
        collect(front, -1.0, WheelEvent.Kind.FRONT_LOCK);
        collect(rear, -1.0, WheelEvent.Kind.REAR_LOCK);
        collect(frontInside, -1.0, WheelEvent.Kind.INSIDE_FRONT_LOCK);
        collect(rearInside, -1.0, WheelEvent.Kind.INSIDE_REAR_LOCK);
        collect(spin, 1.0, WheelEvent.Kind.WHEELSPIN);
        collect(inside, 1.0, WheelEvent.Kind.INSIDE_WHEELSPIN);
    }

    /** Slip ratio of the wheel that would lock the axle, or of an unloaded inner wheel that locks alone in a bend. */
    private double lock(double[][] slip, int leftWheel, int i, boolean alone) {
        double lateral = trace.lateral().get(i);
        double left = slip[leftWheel][i];
        double right = slip[leftWheel + 1][i];
        if (!(Math.abs(lateral) > BEND_MPS2)) {
            return alone ? 0.0 : Math.min(left, right);
        }
        double inner = lateral > 0.0 ? left : right;
        double outer = lateral > 0.0 ? right : left;
        if (!alone) {
            return outer;
        }
        return outer > -BEYOND ? inner : 0.0;
    }

    /** Slip ratio of a wheel: its speed against that of its own path, with its rolling radius taken from where it rolls. */
    private double[] slip(int wheel) {
        Channel speed = stint.recording().channel(WHEELS.get(wheel));
        double half = 0.5 * (wheel < 2 ? sheet.trackFrontM() : sheet.trackRearM());
        double toLeft = wheel % 2 == 0 ? half : -half;
        double[] ratio = new double[speed.size()];
        double[] rolling = new double[speed.size()];
        for (int i = 0; i < ratio.length; i++) {
            double v = trace.speed().get(i);
            double own = v - toLeft * trace.yawRate().get(i);
            ratio[i] = v > LEAST_SPEED ? speed.get(i) / own : Double.NaN;
            boolean free = trace.brake().get(i) < 0.02
                    && Math.abs(trace.forward().get(i)) < 1.5
                    && Math.abs(trace.lateral().get(i)) < 2.0;
            rolling[i] = free ? ratio[i] : Double.NaN;
        }
        double[] known = Robust.finite(rolling);
        double scale = known.length < LEAST_ROLLING ? 1.0 : Robust.median(known);
        return Arrays.stream(ratio).map(r -> r / scale - 1.0).toArray();
    }

    private void byEngine() {
        Channel engine = stint.recording().channel(Quantity.ENGINE_SPEED);
        Channel gear = stint.recording().channel(Quantity.GEAR);
        Map<Long, List<Double>> byGear = new HashMap<>();
        int count = engine.size();
        for (int i = 0; i < count; i++) {
            double v = trace.speed().get(i);
            if (v > LEAST_SPEED
                    && Double.isFinite(engine.get(i))
                    && Math.abs(trace.forward().get(i)) < 3.0) {
                byGear.computeIfAbsent(Math.round(gear.get(i)), g -> new ArrayList<>())
                        .add(engine.get(i) / v);
            }
        }
        Map<Long, Double> usual = new HashMap<>();
        byGear.forEach((g, ratios) -> {
            if (g > 0 && ratios.size() >= LEAST_ROLLING) {
                usual.put(
                        g,
                        Robust.median(
                                ratios.stream().mapToDouble(Double::doubleValue).toArray()));
            }
        });
        double[] spin = new double[count];
        int shift = (int) Math.round(SHIFT_S / stint.recording().stepS());
        int since = shift;
        for (int i = 1; i < count; i++) {
            boolean same = Math.round(gear.get(i)) == Math.round(gear.get(i - 1));
            since = same ? since + 1 : 0;
            boolean still = i + shift < count && Math.round(gear.get(i + shift)) == Math.round(gear.get(i));
            double ratio = usual.getOrDefault(Math.round(gear.get(i)), Double.NaN);
            double v = trace.speed().get(i);
            boolean drives = trace.throttle().get(i) > PRESSED && trace.brake().get(i) < PRESSED;
            if (since > shift && still && drives && v > LEAST_SPEED) {
                spin[i] = engine.get(i) / v / ratio - 1.0;
            }
        }
        collect(spin, 1.0, WheelEvent.Kind.WHEELSPIN);
    }

    private void collect(double[] slip, double side, WheelEvent.Kind kind) {
        double step = stint.recording().stepS();
        for (Lap lap : stint.goodLaps()) {
            int i = lap.from();
            while (i < lap.to()) {
                if (!(side * slip[i] > BEYOND)) {
                    i++;
                    continue;
                }
                int from = i;
                double most = 0.0;
                while (i < lap.to() && side * slip[i] > BEYOND) {
                    most = Math.max(most, side * slip[i]);
                    i++;
                }
                double station = stint.station().get(from);
                if ((i - from) * step >= SHORTEST_S) {
                    events.add(new WheelEvent(
                            kind, lap.number(), corner(station), station, from * step, (i - from) * step, side * most));
                }
            }
        }
    }

    private OptionalInt corner(double station) {
        double length = stint.circuit().line().lengthM();
        for (Corner corner : stint.circuit().corners()) {
            for (double shift = -length; shift <= length; shift += length) {
                if (station + shift >= corner.startM() && station + shift <= corner.endM()) {
                    return OptionalInt.of(corner.number());
                }
            }
        }
        return OptionalInt.empty();
    }
}
