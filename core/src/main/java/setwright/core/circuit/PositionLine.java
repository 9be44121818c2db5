package setwright.core.circuit;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import setwright.core.numerics.PlanarCurve;
import setwright.core.numerics.Robust;

/**
 * Reference line through the middle of laps with positions.
 *
 * <p>x and y are smoothing splines of the time into a typical lap, not of distance: noise in the curvature then gives the
 * same noise in lateral acceleration everywhere, where a window in metres would be too short on the fast parts and too long
 * in hairpins. Where a lap strays from the others it fades out, so that the line is the middle of the rest.
 */
final class PositionLine {
    /** Nodes of the line lie about this far apart, m. */
    static final double STEP_M = 1.5;
    /** Lateral acceleration from the line's curvature shall be no noisier than this, m/s2: a fifth of the corner floor. */
    private static final double NOISE_GOAL = 0.2;
    /** A driver's path holds nothing quicker than about this, Hz (value from memory). */
    private static final double QUICKEST_HZ = 1.5;
    /** Slower than this and hairpins would be rounded off, Hz. */
    private static final double SLOWEST_HZ = 0.5;

    /** Steps in which the typical lap's timing is held; about 2 m apart on a long circuit. */
    private static final int TIMING_STEPS = 2000;

    /** A lap this many deviations off the middle has half its weight there. */
    private static final double FAR = 3.0;
    /** Reach of the average that fades a straying lap out and in, s. */
    private static final double FADE_S = 1.5;

    private final Motion motion;
    private final Track track;
    private final Cuts cuts;
    private final List<Integer> laps;
    /** Where the samples of each lap begin when all are laid behind each other, and at last how many they are. */
    private final int[] firsts;

    private final double[] time;
    private final double period;
    private final double cutoff;
    private final double demandNoise;

    /**
     * Prepares.
     *
     * @param laps  indices of the whole laps to use, at least one
     */
    PositionLine(Motion motion, Track track, Cuts cuts, List<Integer> laps) {
        this.motion = motion;
        this.track = track;
        this.cuts = cuts;
        this.laps = laps;
        this.firsts = new int[laps.size() + 1];
        for (int k = 0; k < laps.size(); k++) {
            firsts[k + 1] = firsts[k] + to(laps.get(k)) - from(laps.get(k));
        }
        this.time = LapTiming.times(motion, cuts, laps, TIMING_STEPS);
        this.period = time[TIMING_STEPS];
        double density = laps.size() * track.fixesPerS();
        double variance = Math.max(1e-8, track.noiseM() * track.noiseM());
        // Variance of the second derivative behind 1 / (1 + (ω/ωc)^6) is 0.0556 ωc^5 σ²/ρ; solved for ωc.
        double wanted = Math.pow(NOISE_GOAL * NOISE_GOAL * density / (0.0556 * variance), 0.2);
        this.cutoff = 2.0 * Math.PI * Math.max(SLOWEST_HZ, Math.min(QUICKEST_HZ, wanted / (2.0 * Math.PI)));
        this.demandNoise = Math.sqrt(0.0556 * Math.pow(cutoff, 5.0) * variance / density);
    }

    BuiltLine build() {
        PlanarCurve curve = fit(byDistance());
        double half = 0.0;
        for (int round = 0; round < 3; round++) {
            Samples samples = byPlace(curve.walk(0.0, STEP_M));
            half = samples.spread();
            curve = fit(samples);
        }
        PlanarCurve.Points points = curve.walk(0.0, STEP_M);
        points = curve.walk(startParameter(points), STEP_M);
        ReferenceLine line = line(points);
        return new BuiltLine(line, new LineQuality(line.lengthM(), laps.size(), true, half, demandNoise));
    }

    /** Where samples lie before there is a line: at the share of their lap's distance, laps being nearly equal in length. */
    private Samples byDistance() {
        Samples samples = new Samples(firsts[laps.size()]);
        IntStream.range(0, laps.size()).parallel().forEach(k -> {
            int lap = laps.get(k);
            double start = motion.distanceAt(cuts.start(lap));
            double length = motion.distanceAt(cuts.end(lap)) - start;
            int at = firsts[k];
            for (int i = from(lap); i < to(lap); i++) {
                double share = (motion.distance(i) - start) / length;
                samples.u[at] = Gaps.between(time, share * (time.length - 1));
                samples.x[at] = track.x(i);
                samples.y[at] = track.y(i);
                at++;
            }
        });
        return samples;
    }

    private Samples byPlace(PlanarCurve.Points points) {
        PositionMapper mapper = new PositionMapper(line(points), motion, track);
        Samples samples = new Samples(firsts[laps.size()]);
        IntStream.range(0, laps.size()).parallel().forEach(k -> {
            int from = from(laps.get(k));
            int to = to(laps.get(k));
            Placement placement = mapper.part(from, to);
            int at = firsts[k];
            for (int i = from; i < to; i++) {
                samples.u[at] = parameter(points, placement.station()[i - from]);
                samples.x[at] = track.x(i);
                samples.y[at] = track.y(i);
                samples.offset[at] = placement.offset()[i - from];
                at++;
            }
        });
        return samples;
    }

    /** Positions of all laps, one lap behind the other, the parameter where each lies, and its offset from the line so far. */
    private static final class Samples {
        private final double[] u;
        private final double[] x;
        private final double[] y;
        private final double[] offset;

        Samples(int count) {
            u = new double[count];
            x = new double[count];
            y = new double[count];
            offset = new double[count];
        }

        double spread() {
            double[] size = offset.clone();
            for (int i = 0; i < size.length; i++) {
                size[i] = Math.abs(size[i]);
            }
            return Robust.median(size);
        }
    }

    private PlanarCurve curve(double[] u, double[] x, double[] y, double[] weight) {
        double total = 0.0;
        for (double w : weight) {
            total += w;
        }
        double roughness = total / period / Math.pow(cutoff, 6.0);
        // Eight knots in a cycle of the cut-off frequency leave the smoothing to the penalty.
        int knots = Math.max(16, (int) Math.ceil(8.0 * period * cutoff / (2.0 * Math.PI)));
        return PlanarCurve.fit(period, knots, u, x, y, weight, roughness);
    }

    private int from(int lap) {
        return Math.max(0, (int) Math.ceil(cuts.start(lap)));
    }

    private int to(int lap) {
        return Math.min(motion.size(), (int) Math.ceil(cuts.end(lap)));
    }

    private double parameter(PlanarCurve.Points points, double station) {
        if (Double.isNaN(station)) {
            return Double.NaN;
        }
        int nodes = points.parameter().length;
        double place = station / points.step();
        int node = Math.min((int) place, nodes - 1);
        double before = points.parameter()[node];
        double after = node + 1 < nodes ? points.parameter()[node + 1] : points.parameter()[0] + period;
        return before + (place - node) * (after - before);
    }

    private PlanarCurve fit(Samples samples) {
        double scale = Math.max(0.3, Math.max(track.noiseM(), 1.4826 * samples.spread()));
        double[] weight = new double[samples.u.length];
        IntStream.range(0, laps.size())
                .parallel()
                .forEach(k -> weigh(samples.offset, firsts[k], firsts[k + 1], FAR * scale, weight));
        return curve(samples.u, samples.x, samples.y, weight);
    }

    /**
     * Lets a lap fade out of the mean where it strays. Its offset is averaged over a second or two first: weights that jump
     * from sample to sample would bend the mean between laps, and its curvature with it.
     */
    private void weigh(double[] offset, int from, int to, double far, double[] weight) {
        int reach = Math.max(1, (int) Math.round(FADE_S * motion.rateHz()));
        double[] sum = new double[to - from + 1];
        for (int i = from; i < to; i++) {
            double size = Double.isNaN(offset[i]) ? 0.0 : Math.min(Math.abs(offset[i]), 10.0 * far);
            sum[i - from + 1] = sum[i - from] + size;
        }
        for (int i = from; i < to; i++) {
            int a = Math.max(0, i - from - reach);
            int b = Math.min(to - from, i - from + reach + 1);
            double ratio = (sum[b] - sum[a]) / (b - a) / far;
            weight[i] = 1.0 / (1.0 + ratio * ratio * ratio * ratio);
        }
    }

    private double startParameter(PlanarCurve.Points points) {
        PositionMapper mapper = new PositionMapper(line(points), motion, track);
        double length = points.step() * points.x().length;
        double[] stations = new double[laps.size()];
        for (int k = 0; k < stations.length; k++) {
            Optional<Track.Fix> fix = track.fixAt(cuts.start(laps.get(k)));
            stations[k] = Double.NaN;
            if (fix.isPresent()) {
                double station = mapper.station(fix.get());
                stations[k] = station > 0.5 * length ? station - length : station;
            }
        }
        double middle = Robust.median(stations);
        double start = Double.isNaN(middle) ? 0.0 : middle;
        return parameter(points, start < 0.0 ? start + length : start);
    }

    static ReferenceLine line(PlanarCurve.Points points) {
        return new ReferenceLine(points.step(), points.x(), points.y(), points.heading(), points.curvature());
    }
}
