package setwright.app.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.recording.Channel;

/** Lays the judged laps over each other at a corner. */
public final class TraceBuilder {
    /** Enough for a screen's width, few enough to keep the report small. */
    private static final int POINTS = 110;

    private static final double LEAST_STEP_M = 1.0;

    private final Answer answer;
    private final Stint stint;

    public TraceBuilder(Answer answer) {
        this.answer = answer;
        this.stint = answer.diagnosis().stint();
    }

    /** Returns the traces of a corner; laps without data there are left out. */
    public CornerTraces build(Corner corner) {
        double[] stations = stations(corner);
        List<Integer> laps = new ArrayList<>();
        List<Map<TraceKind, double[]>> rows = new ArrayList<>();
        for (Lap lap : stint.goodLaps()) {
            int[] samples = samples(corner, lap);
            if (samples.length > 1) {
                laps.add(lap.number());
                rows.add(resample(corner, samples, stations));
            }
        }
        OptionalInt best = bestLap(corner, laps);
        Map<TraceKind, CornerTraces.Curve> curves = new EnumMap<>(TraceKind.class);
        for (TraceKind kind : TraceKind.values()) {
            curves.put(
                    kind,
                    curve(
                            rows.stream()
                                    .map(row -> row.getOrDefault(kind, new double[0]))
                                    .toList(),
                            best.isPresent() ? laps.indexOf(best.getAsInt()) : -1,
                            stations.length));
        }
        return new CornerTraces(corner.number(), Channel.of(stations), laps, best, curves);
    }

    private static double[] stations(Corner corner) {
        double length = Math.max(corner.endM() - corner.startM(), LEAST_STEP_M);
        int count = (int) Math.max(2, Math.min(POINTS, Math.floor(length / LEAST_STEP_M) + 1));
        double[] stations = new double[count];
        for (int i = 0; i < count; i++) {
            stations[i] = corner.startM() + length * i / (count - 1.0);
        }
        return stations;
    }

    /** Samples of the pass nearest the corner's apex in that lap, from the corner's start to its end. */
    private int[] samples(Corner corner, Lap lap) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = lap.from(); i < lap.to(); i++) {
            double distance = Math.abs(fromApex(corner, i));
            if (distance < least) {
                least = distance;
                nearest = i;
            }
        }
        if (nearest < 0 || least > corner.endM() - corner.startM()) {
            return new int[0];
        }
        int from = nearest;
        while (from > 0 && fromApex(corner, from - 1) >= corner.startM() - corner.apexM() && !turnsBack(corner, from)) {
            from--;
        }
        int to = nearest;
        while (to < stint.recording().sampleCount() - 1
                && fromApex(corner, to + 1) <= corner.endM() - corner.apexM()
                && !turnsBack(corner, to + 1)) {
            to++;
        }
        return IntStream.rangeClosed(from, to).toArray();
    }

    /** Whether the station falls back by more than noise between a sample and the one before: another lap, or a spin. */
    private boolean turnsBack(Corner corner, int sample) {
        return fromApex(corner, sample) < fromApex(corner, sample - 1) - 50.0;
    }

    /** Distance of a sample from the corner's apex along the line, in (-length/2, length/2]; NaN where unknown. */
    private double fromApex(Corner corner, int sample) {
        double length = stint.circuit().line().lengthM();
        double difference = stint.station().get(sample) - corner.apexM();
        return difference - length * Math.rint(difference / length);
    }

    private Map<TraceKind, double[]> resample(Corner corner, int[] samples, double[] stations) {
        Map<TraceKind, double[]> row = new EnumMap<>(TraceKind.class);
        for (TraceKind kind : TraceKind.values()) {
            row.put(kind, new double[stations.length]);
        }
        int i = 0;
        for (int p = 0; p < stations.length; p++) {
            double target = stations[p] - corner.apexM();
            while (i < samples.length - 2 && fromApex(corner, samples[i + 1]) < target) {
                i++;
            }
            double before = fromApex(corner, samples[i]);
            double after = fromApex(corner, samples[i + 1]);
            double share = after > before ? (target - before) / (after - before) : 0.0;
            boolean inside = share >= -1.0 && share <= 2.0;
            for (Map.Entry<TraceKind, double[]> entry : row.entrySet()) {
                double left = value(entry.getKey(), corner, samples[i]);
                double right = value(entry.getKey(), corner, samples[i + 1]);
                entry.getValue()[p] = inside ? left + share * (right - left) : Double.NaN;
            }
        }
        return row;
    }

    private double value(TraceKind kind, Corner corner, int sample) {
        return kind.value(answer.diagnosis().trace(), answer.car(), corner, sample);
    }

    private OptionalInt bestLap(Corner corner, List<Integer> laps) {
        return answer.diagnosis().passes().stream()
                .filter(pass -> pass.corner() == corner.number() && laps.contains(pass.lap()))
                .filter(pass -> pass.timeS() > 0.0)
                .min(Comparator.comparingDouble(CornerPass::timeS))
                .map(pass -> OptionalInt.of(pass.lap()))
                .orElse(OptionalInt.empty());
    }

    private static CornerTraces.Curve curve(List<double[]> rows, int best, int points) {
        double[] typical = new double[points];
        double[] low = new double[points];
        double[] high = new double[points];
        for (int p = 0; p < points; p++) {
            int point = p;
            double[] column = rows.stream().mapToDouble(row -> row[point]).toArray();
            typical[p] = Spread.of(column).median();
            low[p] = Arrays.stream(column).filter(Double::isFinite).min().orElse(Double.NaN);
            high[p] = Arrays.stream(column).filter(Double::isFinite).max().orElse(Double.NaN);
        }
        double[] bestRow = new double[points];
        Arrays.fill(bestRow, Double.NaN);
        return new CornerTraces.Curve(
                Channel.of(typical),
                Channel.of(low),
                Channel.of(high),
                Channel.of(best >= 0 ? rows.get(best) : bestRow));
    }
}
