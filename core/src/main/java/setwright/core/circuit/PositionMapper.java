package setwright.core.circuit;

import java.util.Arrays;
import java.util.Optional;

/**
 * Lays positions on a reference line: the nearest place on it, searched where the car must be by its last station and
 * speed, and all round the line when it is lost.
 *
 * <p>The station is then carried by speed between fixes: the difference between projected station and travelled distance,
 * which changes slowly, is averaged over half a second when fixes are noisy.
 */
final class PositionMapper {
    /** Further from the line than this (a wide road and a run-off) a better place is looked for everywhere, m. */
    private static final double LOST_M = 30.0;

    private final ReferenceLine line;
    private final Motion motion;
    private final Track track;
    private final double[] cosine;
    private final double[] sine;

    PositionMapper(ReferenceLine line, Motion motion, Track track) {
        this.line = line;
        this.motion = motion;
        this.track = track;
        this.cosine = new double[line.nodeCount()];
        this.sine = new double[line.nodeCount()];
        for (int i = 0; i < cosine.length; i++) {
            cosine[i] = Math.cos(line.heading(i));
            sine[i] = Math.sin(line.heading(i));
        }
    }

    /** Places the samples from {@code from} (inclusive) to {@code to} (exclusive); others stay NaN. */
    Placement place(int from, int to) {
        Placement part = part(from, to);
        if (from == 0 && to == motion.size()) {
            return part;
        }
        double[] station = nan(motion.size());
        double[] offset = nan(motion.size());
        System.arraycopy(part.station(), 0, station, from, to - from);
        System.arraycopy(part.offset(), 0, offset, from, to - from);
        return new Placement(station, offset);
    }

    /** The same without the others: what is first is the place of sample {@code from}. */
    Placement part(int from, int to) {
        int size = to - from;
        double[] ahead = nan(size);
        double[] offset = nan(size);
        double unwrapped = Double.NaN;
        int last = -1;
        double[] projected = new double[2];
        for (int i = from; i < to; i++) {
            if (!track.known(i)) {
                continue;
            }
            int node;
            double travelled = last < 0 ? 0.0 : motion.distance(i) - motion.distance(last);
            if (Double.isNaN(unwrapped)) {
                node = search(i);
                unwrapped = node * line.stepM();
            } else {
                node = near(i, unwrapped + travelled, 8.0 + 3.0 * track.noiseM() + 0.15 * travelled);
                double lost = LOST_M + 4.0 * track.noiseM();
                if (square(track.x(i), track.y(i), node) > lost * lost) {
                    node = search(i);
                }
            }
            project(track.x(i), track.y(i), node, projected);
            double station = projected[0];
            offset[i - from] = projected[1];
            double expected = unwrapped + (last < 0 ? 0.0 : travelled);
            double length = line.lengthM();
            unwrapped = station + length * Math.rint((expected - station) / length);
            ahead[i - from] = unwrapped - motion.distance(i);
            last = i;
        }
        double half = track.noiseM() > 0.05 ? 0.25 : 0.0;
        int reach = (int) Math.round(half * motion.rateHz());
        smooth(ahead, reach, 5.0 + 5.0 * track.noiseM());
        double[] station = nan(size);
        // Where only the position is missing speed carries the station.
        ahead = last < 0 ? ahead : Gaps.bridged(ahead);
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(ahead[i - from]) && (track.known(i) || motion.known(i))) {
                station[i - from] = line.wrap(ahead[i - from] + motion.distance(i));
            }
        }
        return new Placement(station, offset);
    }

    private double square(double x, double y, int node) {
        double dx = x - line.x(node);
        double dy = y - line.y(node);
        return dx * dx + dy * dy;
    }

    private int near(int sample, double expectedM, double reachM) {
        int nodes = line.nodeCount();
        int low = (int) Math.floor((expectedM - reachM) / line.stepM());
        int high = (int) Math.ceil((expectedM + reachM) / line.stepM());
        double x = track.x(sample);
        double y = track.y(sample);
        int node = Math.floorMod(low, nodes);
        int best = node;
        double nearest = Double.POSITIVE_INFINITY;
        for (int k = low; k <= high; k++) {
            double square = square(x, y, node);
            if (square < nearest) {
                nearest = square;
                best = node;
            }
            node = node + 1 < nodes ? node + 1 : 0;
        }
        return best;
    }

    private int search(int sample) {
        Optional<Track.Fix> fix = track.fixAt(sample);
        boolean moving =
                fix.isPresent() && Math.hypot(fix.get().dx(), fix.get().dy()) * motion.rateHz() > Motion.CRAWL_MPS;
        return search(
                track.x(sample), track.y(sample), moving ? Optional.of(fix.get().course()) : Optional.empty());
    }

    private int search(double x, double y, Optional<Double> course) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int node = 0; node < line.nodeCount(); node++) {
            double distance = Math.hypot(x - line.x(node), y - line.y(node));
            // Where two stretches run side by side or cross, the course decides: turned round counts as 100 m.
            double turned = course.isPresent() ? 50.0 * (1.0 - Math.cos(course.get() - line.heading(node))) : 0.0;
            if (distance + turned < least) {
                least = distance + turned;
                best = node;
            }
        }
        return best;
    }

    /** Station of one place, searched everywhere, m. */
    double station(Track.Fix fix) {
        boolean moving = Math.hypot(fix.dx(), fix.dy()) * motion.rateHz() > Motion.CRAWL_MPS;
        int node = search(fix.x(), fix.y(), moving ? Optional.of(fix.course()) : Optional.empty());
        double[] projected = new double[2];
        project(fix.x(), fix.y(), node, projected);
        return line.wrap(projected[0]);
    }

    /** Writes station and offset. */
    private void project(double x, double y, int node, double[] projected) {
        double px = x - line.x(node);
        double py = y - line.y(node);
        double curvature = line.curvature(node);
        double side = -px * sine[node] + py * cosine[node];
        double along = (px * cosine[node] + py * sine[node]) / Math.max(0.2, 1.0 - curvature * side);
        along = Math.max(-line.stepM(), Math.min(line.stepM(), along));
        projected[0] = node * line.stepM() + along;
        projected[1] = side - 0.5 * curvature * along * along;
    }

    /** Running mean over {@code reach} samples each way, not across jumps. */
    private static void smooth(double[] values, int reach, double jump) {
        if (reach < 1) {
            return;
        }
        double[] raw = values.clone();
        int begin = 0;
        while (begin < raw.length) {
            int end = begin + 1;
            while (end < raw.length && Math.abs(raw[end] - raw[end - 1]) < jump) {
                end++;
            }
            double[] sum = new double[end - begin + 1];
            for (int i = begin; i < end; i++) {
                sum[i - begin + 1] = sum[i - begin] + raw[i];
            }
            for (int i = begin; i < end; i++) {
                int wide = Math.min(reach, Math.min(i - begin, end - 1 - i));
                values[i] = (sum[i - begin + wide + 1] - sum[i - begin - wide]) / (2 * wide + 1);
            }
            begin = end;
        }
    }

    private static double[] nan(int size) {
        double[] values = new double[size];
        Arrays.fill(values, Double.NaN);
        return values;
    }
}
