package setwright.core.judgement.driving;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.LostTime;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.Repeatability.Measure;
import setwright.core.judgement.ScatterInterval;
import setwright.core.judgement.driving.MovingEvent.Source;
import setwright.core.numerics.Robust;
import setwright.core.numerics.SlopeInterval;

/*
 * Design note. Only one event of a corner is asked what it costs, the one that scatters most against the driver's other
 * corners: whoever asks all of them finds one in twenty that costs by chance. The answer comes from his own laps, as the slope
 * of the corner's time over the event, and counts when its 95 % interval leaves out zero. For the brake point alone physics
 * can say something where the laps cannot: who brakes s metres early reaches his turn-in speed s metres early and rolls
 * these at that speed instead of the speed on the straight, which takes s (1/v_in - 1/v_straight) longer. He may spend part
 * of that on better things, so it is an upper end and only given where the laps do not speak against it.
 */

/** Finds the event that moves most at a corner and what that costs. */
final class EventCost {
    private static final int FEWEST_CORNERS = 3;
    private static final int FEWEST_PASSES = 6;
    /** Positions and speeds are logged about so well: less movement than this is none (orientation). */
    private static final double LEAST_M = 0.5;

    private static final double LEAST_KMH = 0.3;
    /** Physics is not asked for less than a loop timer prints, s. */
    private static final double LEAST_S = 0.01;

    private static final Map<Measure, ToDoubleFunction<CornerPass>> VALUES = new EnumMap<>(Map.of(
            Measure.BRAKE_POINT, pass -> pass.events().brakeOn().orElse(Double.NaN),
            Measure.TURN_IN, pass -> pass.events().turnIn().orElse(Double.NaN),
            Measure.BRAKE_OFF, pass -> pass.events().brakeOff().orElse(Double.NaN),
            Measure.THROTTLE_PICK_UP, pass -> pass.events().throttlePickUp().orElse(Double.NaN),
            Measure.LOWEST_SPEED, pass -> 3.6 * pass.lowestSpeedMps()));

    private EventCost() {}

    static Optional<MovingEvent> at(Repeatability driving, Repeatability.AtCorner corner, List<CornerPass> passes) {
        Optional<Measure> most = VALUES.keySet().stream()
                .filter(measure -> corner.scatter().containsKey(measure))
                .filter(measure -> elsewhere(driving, corner, measure) > 0.0)
                .max(Comparator.comparingDouble(
                        measure -> here(corner, measure) / elsewhere(driving, corner, measure)));
        return most.map(measure -> event(driving, corner, passes, measure));
    }

    private static double here(Repeatability.AtCorner corner, Measure measure) {
        return corner.scatter().getOrDefault(measure, Double.NaN);
    }

    /** Median scatter of a measure over the driver's other corners; 0 when too few have it. */
    private static double elsewhere(Repeatability driving, Repeatability.AtCorner corner, Measure measure) {
        double[] others = driving.corners().stream()
                .filter(other -> other.corner() != corner.corner())
                .filter(other -> other.scatter().containsKey(measure))
                .mapToDouble(other -> here(other, measure))
                .toArray();
        return others.length < FEWEST_CORNERS ? 0.0 : Robust.median(others);
    }

    private static MovingEvent event(
            Repeatability driving, Repeatability.AtCorner corner, List<CornerPass> passes, Measure measure) {
        ToDoubleFunction<CornerPass> value = VALUES.getOrDefault(measure, pass -> Double.NaN);
        double[] values = passes.stream().mapToDouble(value).toArray();
        double[] times = passes.stream().mapToDouble(CornerPass::timeS).toArray();
        double scatter = here(corner, measure);
        double elsewhere = elsewhere(driving, corner, measure);
        int seen = Robust.finite(values).length;
        SlopeInterval slope = SlopeInterval.of(values, times);
        boolean moves = scatter > (measure == Measure.LOWEST_SPEED ? LEAST_KMH : LEAST_M) && seen >= FEWEST_PASSES;
        Source source = Source.NONE;
        Optional<LostTime> cost = Optional.empty();
        double better = 0.0;
        if (moves && slope.clear()) {
            source = Source.LAPS;
            better = -slope.slope();
            double way = way(values, better);
            double[] ends = {Math.abs(slope.low()) * way, Math.abs(slope.high()) * way};
            Arrays.sort(ends);
            cost = Optional.of(new LostTime(Math.abs(slope.slope()) * way, ends[0], ends[1]));
        } else if (moves && measure == Measure.BRAKE_POINT) {
            double perMetre = early(passes);
            double most = perMetre * way(values, 1.0);
            if (most >= LEAST_S && slope.low() <= -perMetre) {
                source = Source.PHYSICS;
                better = 1.0;
                cost = Optional.of(new LostTime(0.5 * most, 0.0, most));
            }
        }
        return new MovingEvent(
                measure,
                scatter,
                elsewhere,
                scatter * ScatterInterval.lowerFactor(seen) > elsewhere,
                source,
                cost,
                direction(measure, better),
                lap(passes, values, true),
                lap(passes, values, false));
    }

    /** Way from the middle of the laps to their better quarter. */
    private static double way(double[] values, double better) {
        return Math.abs(Robust.quantile(values, better > 0.0 ? 0.75 : 0.25) - Robust.median(values));
    }

    /** Time lost by each metre that he brakes early, at most, s/m; 0 where that cannot be said. */
    private static double early(List<CornerPass> passes) {
        double straight = Robust.median(passes.stream()
                .mapToDouble(pass -> pass.shapes().speed().get(0))
                .toArray());
        double turnIn = Robust.median(
                passes.stream().mapToDouble(CornerPass::entrySpeedMps).toArray());
        return turnIn > 0.0 && straight > turnIn ? 1.0 / turnIn - 1.0 / straight : 0.0;
    }

    private static String direction(Measure measure, double better) {
        if (better == 0.0) {
            return "";
        }
        if (measure == Measure.LOWEST_SPEED) {
            return better > 0.0 ? "faster" : "slower";
        }
        return better > 0.0 ? "later" : "earlier";
    }

    private static int lap(List<CornerPass> passes, double[] values, boolean lowest) {
        return IntStream.range(0, values.length)
                .filter(i -> Double.isFinite(values[i]))
                .boxed()
                .min(Comparator.comparingDouble(i -> lowest ? values[i] : -values[i]))
                .map(i -> passes.get(i).lap())
                .orElse(0);
    }
}
