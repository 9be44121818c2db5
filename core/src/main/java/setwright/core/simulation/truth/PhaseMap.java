package setwright.core.simulation.truth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import setwright.core.circuit.Corner;
import setwright.core.circuit.CornerFinder;
import setwright.core.circuit.ReferenceLine;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.numerics.Robust;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.truth.CornerPhases.Span;

/*
 * Design note. Two cars are compared place by place. Had each its own phases, the same car braked a little longer would seem to
 * have another balance. So the phases are those of the recorded stint, as stretches of the line, and hold for both cars.
 */

/** The corners of a circuit as they were driven, and their phases. */
public final class PhaseMap {
    /** Without a brake, entry lasts until the wheel is turned this share of the way to its most in distance. */
    private static final double ENTRY_SHARE = 0.8;

    private final double lengthM;
    private final List<CornerPhases> corners;

    private PhaseMap(double lengthM, List<CornerPhases> corners) {
        this.lengthM = lengthM;
        this.corners = List.copyOf(corners);
    }

    /**
     * Reads the phases off a stint.
     *
     * @param line     that the stations of the history belong to
     * @param history  of the recorded stint
     * @param laps     indices of the laps that count, 0 is the out lap
     */
    public static PhaseMap of(ReferenceLine line, DriveHistory history, List<Integer> laps) {
        Distance distance = new Distance(history, line.lengthM());
        List<Corner> found = CornerFinder.find(line, meanSpeeds(line, history, distance, laps), 0.0);
        List<CornerPhases> corners = found.stream()
                .map(corner -> phases(line, history, distance, laps, corner))
                .toList();
        return new PhaseMap(line.lengthM(), corners);
    }

    private static double[] meanSpeeds(
            ReferenceLine line, DriveHistory history, Distance distance, List<Integer> laps) {
        double[] speeds = new double[line.nodeCount()];
        for (int i = 0; i < speeds.length; i++) {
            double sum = 0.0;
            for (int lap : laps) {
                int k = distance.sampleAt(lap * line.lengthM() + i * line.stepM());
                sum += history.at(Signal.FORWARD_SPEED, Math.min(k, history.count() - 1));
            }
            speeds[i] = sum / laps.size();
        }
        return speeds;
    }

    private static CornerPhases phases(
            ReferenceLine line, DriveHistory history, Distance distance, List<Integer> laps, Corner corner) {
        List<PassEvents> passes = new ArrayList<>();
        double lowest = 0.0;
        for (int lap : laps) {
            double start = lap * line.lengthM();
            passes.add(PassEvents.of(history, distance, start, corner));
            lowest += lowest(history, distance, start, corner) / laps.size();
        }
        double brakeOn = usual(passes, PassEvents::brakeOn);
        double turnIn = usual(passes, PassEvents::turnIn);
        double brakeOff = usual(passes, PassEvents::brakeOff);
        double pickUp = usual(passes, PassEvents::pickUp);
        double most = usual(passes, PassEvents::mostLock);
        double straight = usual(passes, PassEvents::straight);
        double steered = turnIn + ENTRY_SHARE * (most - turnIn);
        double entryEnd = brakeOff > turnIn ? brakeOff : steered;
        entryEnd = pickUp > turnIn ? Math.min(entryEnd, pickUp) : entryEnd;
        double midEnd = pickUp > turnIn ? pickUp : Math.max(most, entryEnd);
        midEnd = Math.max(entryEnd, Math.min(midEnd, straight));
        Map<Phase, Span> spans = new EnumMap<>(Phase.class);
        put(spans, Phase.BRAKING, brakeOn, Math.min(turnIn, brakeOff));
        put(spans, Phase.ENTRY, turnIn, entryEnd);
        put(spans, Phase.MID, entryEnd, midEnd);
        put(spans, Phase.EXIT, midEnd, straight);
        return new CornerPhases(
                corner,
                SpeedClass.of(lowest),
                lowest,
                spans,
                new CornerPhases.Events(brakeOn, turnIn, brakeOff, pickUp, straight));
    }

    private static void put(Map<Phase, Span> spans, Phase phase, double from, double to) {
        if (to > from) {
            spans.put(phase, new Span(from, to));
        }
    }

    private static double usual(List<PassEvents> passes, ToDoubleFunction<PassEvents> event) {
        double[] places = passes.stream()
                .mapToDouble(event)
                .filter(place -> !Double.isNaN(place))
                .toArray();
        return 2 * places.length > passes.size() ? Robust.quantile(places, 0.5) : Double.NaN;
    }

    private static double lowest(DriveHistory history, Distance distance, double lapStartM, Corner corner) {
        double lowest = Double.POSITIVE_INFINITY;
        int last = Math.min(distance.sampleAt(lapStartM + corner.turnOutM()), history.count() - 1);
        for (int k = distance.sampleAt(lapStartM + corner.turnInM()); k <= last; k++) {
            lowest = Math.min(lowest, history.at(Signal.FORWARD_SPEED, k));
        }
        return lowest;
    }

    /** Returns the corners in driving order. */
    public List<CornerPhases> corners() {
        return corners;
    }

    /** Returns the length of the lap, m. */
    public double lengthM() {
        return lengthM;
    }
}
