package setwright.core.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import setwright.core.advice.Advice.Move;
import setwright.core.advice.AdviceReview.Silent;
import setwright.core.advice.GearingAdvice.Place;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.ItemRange;
import setwright.core.car.sums.Gearing;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.judgement.Diagnosis;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/*
 * Design note. Only the top gear is looked at: the limiter in a lower one is a late upshift, which the driving faults name. The speed
 * that the limiter keeps from being reached is what the pull just before it, falling evenly to nothing, would have added: half of pull
 * times time. The final drive that lets the engine reach that speed at its limit is taken, in whole steps within the range.
 */

/** Holds the engine speed in top gear against the limit. */
final class GearingAdviser {
    /** As for the driving faults: loggers round and engines overshoot by about this much. */
    private static final double ON_LIMITER = 0.99;

    private static final double LEAST_S = 0.3;
    private static final double OPEN = 0.9;
    /** A straight counts when most laps show it. */
    private static final double MOST_LAPS = 0.5;
    /** Below it the top gear leaves more than two steps of a usual final drive unused (orientation). */
    private static final double NEAR = 0.93;
    /** Where an engine is to end on the longest straight: shift lights are set 3 to 5 % below the limit (common practice). */
    private static final double WANTED = 0.97;
    /** Road speed over the wheels' by the gear, within what slip and radius leave. */
    private static final double SAME_GEAR = 0.06;
    /** Pull is measured over this time before the limiter. */
    private static final double BEFORE_S = 0.4;

    private final Stint stint;
    private final HandlingTrace trace;
    private final CarSheet sheet;
    private final double limit;
    private final Channel engine;
    private final Optional<Channel> gear;
    private final int topGear;

    private record Run(int lap, int corner, double stationM, double seconds, double pullMps2) {}

    private GearingAdviser(Diagnosis diagnosis, CarSheet sheet, double limit) {
        this.stint = diagnosis.stint();
        this.trace = diagnosis.trace();
        this.sheet = sheet;
        this.limit = limit;
        this.engine = stint.recording().channel(Quantity.ENGINE_SPEED);
        this.gear = stint.recording().has(Quantity.GEAR)
                ? Optional.of(stint.recording().channel(Quantity.GEAR))
                : Optional.empty();
        this.topGear = sheet.gearRatios().size();
    }

    static void look(Diagnosis diagnosis, CarSheet sheet, List<Advice> advice, List<Silent> silent) {
        boolean recorded = diagnosis.stint().recording().has(Quantity.ENGINE_SPEED);
        Optional<SetupItem> finalDrive = sheet.item("final_drive");
        if (!recorded || sheet.revLimitRadPerS().isEmpty() || sheet.gearRatios().isEmpty() || finalDrive.isEmpty()) {
            silent.add(new Silent(
                    Topic.GEARING,
                    recorded,
                    recorded ? "the sheet lacks limit, gears or final drive" : "no engine speed was recorded"));
            return;
        }
        GearingAdviser adviser =
                new GearingAdviser(diagnosis, sheet, sheet.revLimitRadPerS().getAsDouble());
        List<Integer> inTop = new ArrayList<>();
        adviser.find(finalDrive.get(), inTop)
                .ifPresentOrElse(
                        advice::add,
                        () -> silent.add(new Silent(
                                Topic.GEARING,
                                true,
                                inTop.isEmpty()
                                        ? "the top gear is not used"
                                        : "in top gear the engine ends near its limit and not on it")));
    }

    private Optional<Advice> find(SetupItem finalDrive, List<Integer> usedInTop) {
        Gearing gearing = new Gearing(finalDrive.value(), sheet.tyreRadiusM());
        double ratio = sheet.gearRatios().get(topGear - 1);
        List<Run> runs = new ArrayList<>();
        TreeSet<Integer> inTop = new TreeSet<>();
        double highest = 0.0;
        for (Lap lap : stint.goodLaps()) {
            int i = lap.from();
            while (i < lap.to()) {
                boolean top = inTop(i, gearing, ratio);
                if (top) {
                    inTop.add(lap.number());
                    highest = Math.max(highest, engine.get(i) / limit);
                }
                int from = i;
                while (i < lap.to() && held(i, gearing, ratio)) {
                    highest = Math.max(highest, engine.get(i) / limit);
                    i++;
                }
                if ((i - from) * step() >= LEAST_S) {
                    runs.add(new Run(
                            lap.number(),
                            next(stint.station().get(from)),
                            stint.station().get(from),
                            (i - from) * step(),
                            pull(from)));
                }
                i = Math.max(i, from + 1);
            }
        }
        usedInTop.addAll(inTop);
        int laps = stint.goodLaps().size();
        double atLimit = gearing.speedMps(limit, ratio);
        Map<Integer, List<Run>> byCorner = new TreeMap<>();
        runs.forEach(run ->
                byCorner.computeIfAbsent(run.corner(), c -> new ArrayList<>()).add(run));
        byCorner.values()
                .removeIf(here -> here.stream().map(Run::lap).distinct().count() <= MOST_LAPS * laps);
        if (!byCorner.isEmpty()) {
            return Optional.of(onLimiter(byCorner, finalDrive, atLimit, ratio, highest));
        }
        boolean unused = inTop.size() > MOST_LAPS * laps && highest < NEAR;
        return unused ? Optional.of(neverNear(finalDrive, atLimit, ratio, highest, inTop)) : Optional.empty();
    }

    private Advice onLimiter(
            Map<Integer, List<Run>> byCorner, SetupItem finalDrive, double atLimit, double ratio, double highest) {
        List<Place> places = byCorner.entrySet().stream()
                .map(entry -> new Place(
                        entry.getKey(),
                        median(entry.getValue().stream()
                                .mapToDouble(Run::stationM)
                                .toArray()),
                        median(entry.getValue().stream()
                                .mapToDouble(Run::seconds)
                                .toArray()),
                        (int) entry.getValue().stream().map(Run::lap).distinct().count()))
                .sorted(Comparator.comparingDouble(Place::seconds).reversed())
                .toList();
        double missed = byCorner.values().stream()
                .mapToDouble(here -> median(here.stream()
                        .mapToDouble(run -> 0.5 * Math.max(run.pullMps2(), 0.0) * run.seconds())
                        .toArray()))
                .max()
                .orElse(0.0);
        double wanted = Gearing.finalDriveFor(limit, atLimit + missed, ratio, sheet.tyreRadiusM());
        long steps = (long) Math.max(1.0, Math.ceil((finalDrive.value() - wanted) / finalDrive.step()));
        return advice(
                true,
                finalDrive,
                new ItemRange(finalDrive).asFarAs(-steps),
                places,
                atLimit,
                ratio,
                highest,
                byCorner.values().stream()
                        .flatMap(List::stream)
                        .map(Run::lap)
                        .distinct()
                        .sorted()
                        .toList());
    }

    private Advice neverNear(SetupItem finalDrive, double atLimit, double ratio, double highest, Set<Integer> inTop) {
        double wanted = finalDrive.value() * WANTED / highest;
        long steps = (long) Math.max(1.0, Math.floor((wanted - finalDrive.value()) / finalDrive.step()));
        return advice(
                false,
                finalDrive,
                new ItemRange(finalDrive).asFarAs(steps),
                List.of(),
                atLimit,
                ratio,
                highest,
                inTop.stream().sorted().toList());
    }

    private GearingAdvice advice(
            boolean onLimiter,
            SetupItem item,
            double to,
            List<Place> places,
            double atLimit,
            double ratio,
            double highest,
            List<Integer> laps) {
        boolean turns = Math.abs(to - item.value()) > 0.5 * item.step();
        return new GearingAdvice(
                onLimiter,
                topGear,
                highest,
                places,
                atLimit,
                turns
                        ? OptionalDouble.of(new Gearing(to, sheet.tyreRadiusM()).speedMps(limit, ratio))
                        : OptionalDouble.empty(),
                laps,
                places.stream().map(Place::corner).sorted().toList(),
                turns ? Optional.of(new Move(item.name(), item.value(), to, item.unit())) : Optional.empty());
    }

    private boolean held(int i, Gearing gearing, double ratio) {
        return engine.get(i) >= ON_LIMITER * limit && inTop(i, gearing, ratio);
    }

    /** The gear as recorded, else by the speed that the engine would have in it. */
    private boolean inTop(int i, Gearing gearing, double ratio) {
        if (!(trace.throttle().get(i) > OPEN)) {
            return false;
        }
        if (gear.isPresent()) {
            return Math.round(gear.get().get(i)) == topGear;
        }
        double expected = gearing.engineRadPerS(trace.speed().get(i), ratio);
        return Math.abs(engine.get(i) / expected - 1.0) < SAME_GEAR;
    }

    private double pull(int from) {
        int before = Math.max(0, from - (int) Math.round(BEFORE_S / step()));
        return (trace.speed().get(from) - trace.speed().get(before)) / Math.max((from - before) * step(), 1.0e-9);
    }

    private double step() {
        return stint.recording().stepS();
    }

    /** Number of the corner that a place leads to. */
    private int next(double stationM) {
        List<Corner> corners = stint.circuit().corners();
        return corners.stream()
                .filter(corner -> corner.apexM() >= stationM)
                .findFirst()
                .or(() -> corners.stream().findFirst())
                .map(Corner::number)
                .orElse(0);
    }

    private static double median(double[] values) {
        return Robust.median(values);
    }
}
