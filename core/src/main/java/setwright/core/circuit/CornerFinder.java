package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import setwright.core.numerics.Robust;

/**
 * Finds the corners of a circuit from the lateral acceleration that the line demands at the speed driven, {@code κ v²}.
 *
 * <p>A corner begins where the demand rises above the release level and ends where it falls below it, provided that it
 * reaches the corner level in between and either slows the car or asks for much of its grip. Two peaks in the same direction
 * are one corner (a double apex) unless the demand between them falls low for longer than {@link #STRAIGHT_S}; a change of
 * direction always parts corners.
 */
public final class CornerFinder {
    /** Below this no tyre is worked enough to judge a car, m/s2: a tenth of g (common practice for steady driving). */
    static final double FLOOR = 1.0;
    /** The corner level as a share of the demand that this car reaches in its corners: bends below it ask for no grip. */
    static final double SHARE = 0.15;
    /** Release level as a share of the corner level, so that noise at the level cannot part a corner. */
    static final double RELEASE = 0.5;
    /**
     * Two peaks may be two corners when the demand between them falls below this share of the lower: then half of the grip
     * (0.7², friction circle) and more is free for driving or braking.
     */
    static final double VALLEY = 0.7;
    /** A bend taken without slowing always counts when it asks for this share of the grip shown: half of it is used (0.7²). */
    static final double FULL = 0.7;
    /** Where more of the grip lies idle, it counts down to this share when it turns by more than {@link #KINK_RAD}. */
    static final double HALF = 0.5;
    /** Flat-out bends that turn less are kinks in a straight and get no number (common practice): 30 degrees. */
    static final double KINK_RAD = Math.PI / 6.0;
    /** A fall of speed by more than this is the driver's doing, not drag or noise. */
    static final double SLOWED = 0.05;
    /** A driver needs about this long to unwind the wheel, see the next corner and turn in anew (common practice), s. */
    static final double STRAIGHT_S = 0.8;
    /** The approach begins this long before the speed starts to fall, for the laps that brake earlier, s. */
    private static final double MARGIN_S = 0.5;
    /** Without braking the approach is this long, s; and so is the way out of a corner where nothing ends it sooner. */
    private static final double FREE_S = 1.0;

    private final ReferenceLine line;
    private final double[] speed;
    private final double[] demand;
    private final int nodes;

    private CornerFinder(ReferenceLine line, double[] speed) {
        this.line = line;
        this.speed = speed;
        this.nodes = line.nodeCount();
        this.demand = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            demand[i] = line.curvature(i) * speed[i] * speed[i];
        }
    }

    /**
     * Finds the corners.
     *
     * @param line         the reference line
     * @param speedMps     typical speed at each node, &gt; 0
     * @param demandNoise  standard deviation of the demand from noise in the curvature, m/s2, &gt;= 0
     * @return corners in driving order, numbered from 1 after the start line; apexes lie in [0, length)
     */
    public static List<Corner> find(ReferenceLine line, double[] speedMps, double demandNoise) {
        if (speedMps.length != line.nodeCount()) {
            throw new IllegalArgumentException(
                    "one speed per node is needed, got " + speedMps.length + " for " + line.nodeCount() + " nodes");
        }
        return new CornerFinder(line, speedMps.clone()).corners(demandNoise);
    }

    /** A stretch of nodes, {@code first} in [0, nodes), {@code last} not before it and perhaps beyond the last node. */
    private record Bend(int first, int last, double sign, double peak, double speed) {}

    private List<Corner> corners(double demandNoise) {
        double[] size = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            size[i] = Math.abs(demand[i]);
        }
        // Four deviations of noise are crossed less than once in a lap by chance.
        double level = Math.max(Math.max(FLOOR, 4.0 * demandNoise), SHARE * Robust.quantile(size, 0.9));
        List<Bend> bends = new ArrayList<>();
        for (Bend run : joined(bends(RELEASE * level))) {
            split(run, RELEASE * level, bends);
        }
        bends.removeIf(bend -> bend.peak() < level);
        List<Bend> candidates = List.copyOf(bends);
        bends.removeIf(bend -> !slowsTheCar(bend)
                && !asksForGrip(bend, candidates, FULL)
                && !(turned(bend) > KINK_RAD && asksForGrip(bend, candidates, HALF)));
        bends.sort((a, b) -> Integer.compare(apex(a) % nodes, apex(b) % nodes));
        return numbered(bends);
    }

    private List<Bend> bends(double release) {
        List<Bend> bends = new ArrayList<>();
        int start = 0;
        while (start < nodes && sign(start, release) == sign(start - 1, release)) {
            start++;
        }
        if (start == nodes) {
            double whole = sign(0, release);
            return whole == 0.0 ? bends : new ArrayList<>(List.of(bend(0, nodes - 1, whole)));
        }
        int first = start;
        for (int i = start + 1; i <= start + nodes; i++) {
            if (sign(i, release) != sign(first, release)) {
                if (sign(first, release) != 0.0) {
                    bends.add(bend(first, i - 1, sign(first, release)));
                }
                first = i;
            }
        }
        return bends;
    }

    private double sign(int node, double release) {
        double here = demand[Math.floorMod(node, nodes)];
        return Math.abs(here) < release ? 0.0 : Math.signum(here);
    }

    private Bend bend(int first, int last, double sign) {
        int peak = first;
        for (int i = first; i <= last; i++) {
            if (sign * demand[i % nodes] > sign * demand[peak % nodes]) {
                peak = i;
            }
        }
        return new Bend(first, last, sign, sign * demand[peak % nodes], speed[peak % nodes]);
    }

    /** Joins neighbours of the same direction, whatever lies between: {@link #split} parts them again where it is long. */
    private List<Bend> joined(List<Bend> bends) {
        List<Bend> joined = new ArrayList<>();
        for (Bend bend : bends) {
            Bend before = joined.isEmpty() ? bend : joined.get(joined.size() - 1);
            if (before.sign() == bend.sign() && before.first() != bend.first()) {
                joined.set(joined.size() - 1, bend(before.first(), bend.last(), bend.sign()));
            } else {
                joined.add(bend);
            }
        }
        if (joined.size() > 1
                && joined.get(0).sign() == joined.get(joined.size() - 1).sign()) {
            Bend last = joined.remove(joined.size() - 1);
            Bend first = joined.get(0);
            joined.set(0, bend(last.first(), first.last() + nodes, first.sign()));
        }
        return joined;
    }

    /** Parts a run of one direction where the demand is well below both sides' peaks for long enough. */
    private void split(Bend run, double release, List<Bend> parts) {
        int count = run.last() - run.first() + 1;
        double[] sized = new double[count];
        double[] highestAhead = new double[count + 1];
        for (int i = count - 1; i >= 0; i--) {
            sized[i] = run.sign() * demand[(run.first() + i) % nodes];
            highestAhead[i] = Math.max(sized[i], highestAhead[i + 1]);
        }
        double highest = 0.0;
        int from = 0;
        int valley = -1;
        for (int i = 0; i < count; i++) {
            highest = Math.max(highest, sized[i]);
            boolean low = sized[i] < VALLEY * Math.min(highest, highestAhead[i]);
            if (low && valley < 0) {
                valley = i;
            }
            if (!low && valley >= 0) {
                if (parts(run, valley, i, release, sized)) {
                    int lowest = valley;
                    for (int k = valley; k < i; k++) {
                        lowest = sized[k] < sized[lowest] ? k : lowest;
                    }
                    trimmed(run, from, lowest, release, sized, parts);
                    from = lowest + 1;
                    highest = sized[i];
                }
                valley = -1;
            }
        }
        trimmed(run, from, count - 1, release, sized, parts);
    }

    /** Tells whether the car leaves one corner and approaches another: it speeds up in the valley, or runs straight. */
    private boolean parts(Bend run, int from, int to, double release, double[] sized) {
        if (seconds(run.first() + from, run.first() + to) < STRAIGHT_S) {
            return false;
        }
        double straight = 0.0;
        double fastest = 0.0;
        for (int i = from; i < to; i++) {
            straight += sized[i] < release ? line.stepM() / at(run.first() + i) : 0.0;
            fastest = Math.max(fastest, at(run.first() + i));
        }
        return straight >= STRAIGHT_S || fastest > (1.0 + SLOWED) * at(run.first() + from);
    }

    private void trimmed(Bend run, int from, int to, double release, double[] sized, List<Bend> parts) {
        int first = from;
        int last = to;
        while (first < last && sized[first] < release) {
            first++;
        }
        while (last > first && sized[last] < release) {
            last--;
        }
        int round = (run.first() + first) / nodes * nodes;
        parts.add(bend(run.first() + first - round, run.first() + last - round, run.sign()));
    }

    private double seconds(int from, int to) {
        double seconds = 0.0;
        for (int i = from; i < to; i++) {
            seconds += line.stepM() / speed[Math.floorMod(i, nodes)];
        }
        return seconds;
    }

    /** Tells whether the bend asks for a share of the grip shown at its speed or below: grip does not fall with speed. */
    private static boolean asksForGrip(Bend bend, List<Bend> all, double share) {
        double shown = 0.0;
        for (Bend other : all) {
            if (other.speed() <= 1.1 * bend.speed()) {
                shown = Math.max(shown, other.peak());
            }
        }
        return bend.peak() >= share * shown;
    }

    private double turned(Bend bend) {
        double angle = 0.0;
        for (int i = bend.first(); i <= bend.last(); i++) {
            angle += turn(bend, i) * line.stepM();
        }
        return angle;
    }

    /** Tells whether the speed falls into the bend and rises out of it. */
    private boolean slowsTheCar(Bend bend) {
        int slowest = bend.first();
        for (int i = bend.first(); i <= bend.last(); i++) {
            slowest = at(i) < at(slowest) ? i : slowest;
        }
        return rise(slowest, -1) > SLOWED && rise(slowest, 1) > SLOWED;
    }

    /** Share by which the speed rises from a node in one direction before it falls again. */
    private double rise(int node, int direction) {
        double highest = at(node);
        for (int k = 1; k < nodes; k++) {
            double here = at(node + direction * k);
            highest = Math.max(highest, here);
            if (here < 0.98 * highest) {
                break;
            }
        }
        return highest / at(node) - 1.0;
    }

    /**
     * Centre of the tight part: the mean place, weighted by the fourth power of curvature. The place of the highest curvature
     * itself would jump from lap to lap along a corner of even radius.
     */
    private int apex(Bend bend) {
        double weights = 0.0;
        double sum = 0.0;
        for (int i = bend.first(); i <= bend.last(); i++) {
            double weight = Math.pow(Math.max(0.0, turn(bend, i)), 4.0);
            weights += weight;
            sum += weight * (i - bend.first());
        }
        return bend.first() + (weights > 0.0 ? (int) Math.round(sum / weights) : 0);
    }

    private double turn(Bend bend, int node) {
        return bend.sign() * line.curvature(node % nodes);
    }

    private List<Corner> numbered(List<Bend> bends) {
        int count = bends.size();
        int[] shift = new int[count];
        int[] start = new int[count];
        for (int k = 0; k < count; k++) {
            shift[k] = apex(bends.get(k)) >= nodes ? -nodes : 0;
            Bend before = bends.get((k + count - 1) % count);
            int free = Math.floorMod(bends.get(k).first() - before.last(), nodes);
            start[k] = bends.get(k).first() - (count == 1 ? nodes / 2 : free);
            start[k] = Math.max(start[k], approach(bends.get(k), start[k]));
        }
        List<Corner> corners = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Bend bend = bends.get(k);
            int next = start[(k + 1) % count];
            int room = Math.floorMod(next - bend.last(), nodes);
            int end = Math.min(bend.last() + room, later(bend.last(), FREE_S));
            double step = line.stepM();
            corners.add(new Corner(
                    k + 1,
                    bend.sign() > 0.0 ? Corner.Direction.LEFT : Corner.Direction.RIGHT,
                    (start[k] + shift[k]) * step,
                    (bend.first() + shift[k]) * step,
                    (apex(bend) + shift[k]) * step,
                    (bend.last() + shift[k]) * step,
                    (end + shift[k]) * step));
        }
        return corners;
    }

    /** The node, not before {@code earliest}, where the approach begins: before the speed starts to fall for this corner. */
    private int approach(Bend bend, int earliest) {
        int slowest = bend.first();
        for (int i = bend.first(); i <= apex(bend); i++) {
            if (at(i) < at(slowest)) {
                slowest = i;
            }
        }
        int fastest = slowest;
        for (int i = slowest; i >= earliest; i--) {
            if (at(i) > at(fastest)) {
                fastest = i;
            }
        }
        int braking = earlier(fastest, MARGIN_S);
        int free = earlier(bend.first(), FREE_S);
        return Math.max(earliest, Math.min(braking, free));
    }

    private double at(int node) {
        return speed[Math.floorMod(node, nodes)];
    }

    private int earlier(int node, double secondsBefore) {
        int i = node;
        double left = secondsBefore;
        while (left > 0.0 && node - i < nodes) {
            i--;
            left -= line.stepM() / at(i);
        }
        return i;
    }

    private int later(int node, double secondsAfter) {
        int i = node;
        double left = secondsAfter;
        while (left > 0.0 && i - node < nodes) {
            left -= line.stepM() / at(i);
            i++;
        }
        return i;
    }
}
