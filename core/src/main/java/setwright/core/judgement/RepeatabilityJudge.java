package setwright.core.judgement;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerEvents;
import setwright.core.handling.CornerPass;
import setwright.core.handling.PassShapes;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.judgement.Repeatability.Measure;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;

/*
 * Design note. No fixed limit in metres decides whether a driver is steady enough: what matters is whether, with this
 * scatter and this many laps, one typical setup change could be seen at all. A corner counts when both the smallest change
 * of balance and the smallest change of time that could be told there are below what such a change does; the driving as a
 * whole, when most corners count. Metres and
 * km/h are still measured, since they are what a coach talks about; orientation values (common practice, no authority)
 * only pick the measure to name first.
 */

/** Judges whether the laps are alike enough to read the car from them. */
final class RepeatabilityJudge {
    private static final int FEWEST_PASSES = 3;

    private RepeatabilityJudge() {}

    static Repeatability judge(Stint stint, List<CornerPass> passes) {
        Map<Integer, List<CornerPass>> byCorner =
                passes.stream().collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        List<AtCorner> corners = new ArrayList<>();
        byCorner.forEach((corner, here) -> corners.add(atCorner(corner, here)));
        double[] times = stint.goodLaps().stream().mapToDouble(Lap::timeS).toArray();
        double scatter = times.length < 2 ? Double.NaN : Robust.qn(times);
        double smallestTime =
                times.length < 2 ? Double.POSITIVE_INFINITY : SmallestEffect.inDeviations(times.length) * scatter;
        double smallestBalance = Robust.median(
                corners.stream().mapToDouble(AtCorner::smallestBalanceRad).toArray());
        long steady = corners.stream().filter(AtCorner::repeatable).count();
        boolean repeatable =
                !corners.isEmpty() && 2 * steady >= corners.size() && smallestBalance < Yardstick.BALANCE_RAD;
        return new Repeatability(
                repeatable,
                scatter,
                smallestTime,
                smallestBalance,
                Yardstick.BALANCE_RAD,
                corners,
                why(repeatable, steady, corners.size(), smallestBalance, smallestTime, times.length));
    }

    private static String why(
            boolean repeatable, long steady, int corners, double smallestBalance, double smallestTime, int laps) {
        if (laps < FEWEST_PASSES) {
            return String.format(
                    Locale.ROOT,
                    "%d lap%s cannot tell whether the driving is repeatable; it takes at least %d.",
                    laps,
                    laps == 1 ? "" : "s",
                    FEWEST_PASSES);
        }
        return String.format(
                Locale.ROOT,
                "Repeatable in %d of %d corners. With this scatter and %d laps, a change of balance of %.2f deg and of lap"
                        + " time of %.2f s could be told from chance; one typical setup change moves the balance by %.2f"
                        + " deg%s.",
                steady,
                corners,
                laps,
                Math.toDegrees(smallestBalance),
                smallestTime,
                Math.toDegrees(Yardstick.BALANCE_RAD),
                repeatable ? "" : ", so these laps cannot judge the car");
    }

    private static AtCorner atCorner(int corner, List<CornerPass> passes) {
        Map<Measure, Double> scatter = new EnumMap<>(Measure.class);
        put(scatter, Measure.BRAKE_POINT, events(passes, CornerEvents::brakeOn));
        put(scatter, Measure.TURN_IN, events(passes, CornerEvents::turnIn));
        put(scatter, Measure.BRAKE_OFF, events(passes, CornerEvents::brakeOff));
        put(scatter, Measure.THROTTLE_PICK_UP, events(passes, CornerEvents::throttlePickUp));
        put(
                scatter,
                Measure.LOWEST_SPEED,
                passes.stream().mapToDouble(pass -> 3.6 * pass.lowestSpeedMps()).toArray());
        scatter.put(Measure.LINE, shape(passes, PassShapes::offset, 1.0));
        scatter.put(Measure.BRAKE_SHAPE, shape(passes, PassShapes::brake, 100.0));
        scatter.put(Measure.THROTTLE_SHAPE, shape(passes, PassShapes::throttle, 100.0));
        scatter.values().removeIf(value -> !Double.isFinite(value));
        if (passes.size() < FEWEST_PASSES) {
            return new AtCorner(
                    corner,
                    false,
                    worst(scatter),
                    scatter,
                    passes.size(),
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    "it was driven only " + (passes.size() == 1 ? "once" : "twice"));
        }
        double perGroup = SmallestEffect.inDeviations(passes.size());
        double smallestBalance = perGroup * balanceScatter(passes);
        double[] times = passes.stream().mapToDouble(CornerPass::timeS).toArray();
        double smallestTime = perGroup * Robust.qn(times);
        double usualTime = Robust.median(times) * Yardstick.timeShare(Yardstick.BALANCE_RAD);
        double atLeast = ScatterInterval.lowerFactor(passes.size());
        String why = "";
        if (!(atLeast * smallestBalance < Yardstick.BALANCE_RAD)) {
            why = String.format(
                    Locale.ROOT,
                    "its balance scatters so that no change below %.2f deg shows",
                    Math.toDegrees(smallestBalance));
        } else if (!(atLeast * smallestTime < usualTime)) {
            why = String.format(
                    Locale.ROOT,
                    "its time scatters so that no change below %.3f s shows, where a typical setup change makes %.3f s",
                    smallestTime,
                    usualTime);
        }
        return new AtCorner(
                corner, why.isEmpty(), worst(scatter), scatter, passes.size(), smallestBalance, smallestTime, why);
    }

    /** Root mean square over the phases of the robust scatter over the laps, rad. */
    private static double balanceScatter(List<CornerPass> passes) {
        double sum = 0.0;
        int count = 0;
        for (Phase phase : Phase.values()) {
            double[] excess = passes.stream()
                    .flatMap(pass -> pass.phase(phase).stream())
                    .mapToDouble(PhaseBalance::excessRad)
                    .filter(Double::isFinite)
                    .toArray();
            if (excess.length >= FEWEST_PASSES) {
                double scatter = Robust.qn(excess);
                sum += scatter * scatter;
                count++;
            }
        }
        return count == 0 ? Double.POSITIVE_INFINITY : Math.sqrt(sum / count);
    }

    private static void put(Map<Measure, Double> scatter, Measure measure, double[] values) {
        if (values.length >= FEWEST_PASSES) {
            scatter.put(measure, Robust.qn(values));
        }
    }

    private static double[] events(List<CornerPass> passes, Function<CornerEvents, OptionalDouble> event) {
        return passes.stream()
                .map(pass -> event.apply(pass.events()))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
    }

    /** Distance of the passes' curves from their median curve: root mean square over the corner, median over passes. */
    private static double shape(List<CornerPass> passes, Function<PassShapes, Channel> curve, double factor) {
        double[] middle = new double[PassShapes.POINTS];
        for (int i = 0; i < middle.length; i++) {
            int point = i;
            ToDoubleFunction<CornerPass> value =
                    pass -> curve.apply(pass.shapes()).get(point);
            middle[i] = Robust.median(passes.stream().mapToDouble(value).toArray());
        }
        double[] distance = passes.stream()
                .mapToDouble(pass -> distance(curve.apply(pass.shapes()), middle))
                .toArray();
        return factor * Robust.median(distance);
    }

    private static double distance(Channel curve, double[] middle) {
        double sum = 0.0;
        for (int i = 0; i < middle.length; i++) {
            double away = curve.get(i) - middle[i];
            sum += away * away;
        }
        return Math.sqrt(sum / middle.length);
    }

    private static Measure worst(Map<Measure, Double> scatter) {
        Measure worst = Measure.LOWEST_SPEED;
        double most = 0.0;
        for (Map.Entry<Measure, Double> entry : scatter.entrySet()) {
            double ratio = entry.getValue() / usual(entry.getKey());
            if (ratio > most) {
                most = ratio;
                worst = entry.getKey();
            }
        }
        return worst;
    }

    /** Scatter of a steady driver, in the measure's unit: orientation only (common practice). */
    private static double usual(Measure measure) {
        return switch (measure) {
            case BRAKE_POINT, TURN_IN, BRAKE_OFF, THROTTLE_PICK_UP -> 4.0;
            case LOWEST_SPEED -> 1.5;
            case LINE -> 0.5;
            case BRAKE_SHAPE, THROTTLE_SHAPE -> 6.0;
        };
    }
}
