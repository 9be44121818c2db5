package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import setwright.core.numerics.Robust;

/**
 * Finds the corners of a circuit from the lateral acceleration that the line demands at the speed driven, {@code κ v²}.
 *
 * <p>A corner begins where the demand rises above the release level and ends where it falls below it, provided that it
 * reaches the corner level in between and either slows the car or asks for much of its grip. Two peaks in the same direction
 * are one corner (a double apex) unless the demand between them falls low for longer than {@link BendFinder#STRAIGHT_S}; a change of
 * direction always parts corners.
 *
 * <p>What counts as a corner is a convention: no standard gives these levels. They are our choice, argued from the friction
 * circle where a reason is given, and the corner lists of three invented circuits were in view when they were set. On those,
 * the list stays the same for {@link #KINK_RAD} of 28 to 36 degrees, {@link #HALF} of 0.4 to 0.5, {@link #FULL} of 0.7 to 0.8
 * and {@link #SHARE} of 0.1 to 0.25; {@link #SLOWED} of 0.08, {@link #HALF} of 0.6 or a kink of 25 degrees change it by one
 * corner. Once found, a circuit is kept, so that the convention does not change numbers from one recording to the next.
 */
public final class CornerFinder {
    /** Below this no tyre is worked enough to judge a car, m/s2: about a tenth of g (our choice). */
    static final double FLOOR = 1.0;
    /** The corner level as a share of the demand that this car reaches in its corners: bends below it ask for no grip. */
    static final double SHARE = 0.15;
    /** Release level as a share of the corner level, so that noise at the level cannot part a corner. */
    static final double RELEASE = 0.5;
    /** A bend taken without slowing always counts when it asks for this share of the grip shown: half of it is used (0.7²). */
    static final double FULL = 0.7;
    /** Where more of the grip lies idle, it counts down to this share when it turns by more than {@link #KINK_RAD}. */
    static final double HALF = 0.5;
    /** Flat-out bends that turn less are kinks in a straight and get no number (our choice): 30 degrees. */
    static final double KINK_RAD = Math.PI / 6.0;
    /** A fall of speed by more than this is the driver's doing, not drag or noise. */
    static final double SLOWED = 0.05;
    /** The approach begins this long before the speed starts to fall, for the laps that brake earlier, s. */
    private static final double MARGIN_S = 0.5;
    /** Without braking the approach is this long, s; and so is the way out of a corner where nothing ends it sooner. */
    private static final double FREE_S = 1.0;

    private final DrivenLine line;
    private final int nodes;

    private CornerFinder(DrivenLine line) {
        this.line = line;
        this.nodes = line.nodes();
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
        return new CornerFinder(new DrivenLine(line, speedMps)).corners(demandNoise);
    }

    private List<Corner> corners(double demandNoise) {
        double[] size = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            size[i] = Math.abs(line.demand(i));
        }
        // Four deviations of noise are crossed less than once in a lap by chance.
        double level = Math.max(Math.max(FLOOR, 4.0 * demandNoise), SHARE * Robust.quantile(size, 0.9));
        List<Bend> bends = new BendFinder(line, RELEASE * level).bends();
        bends.removeIf(bend -> bend.peak() < level);
        List<Bend> candidates = List.copyOf(bends);
        bends.removeIf(bend -> !slowsTheCar(bend)
                && !asksForGrip(bend, candidates, FULL)
                && !(bend.angle(line) > KINK_RAD && asksForGrip(bend, candidates, HALF)));
        bends.sort((a, b) -> Integer.compare(a.apex(line) % nodes, b.apex(line) % nodes));
        return numbered(bends);
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

    /** Tells whether the speed falls into the bend and rises out of it. */
    private boolean slowsTheCar(Bend bend) {
        int slowest = bend.first();
        for (int i = bend.first(); i <= bend.last(); i++) {
            slowest = line.speed(i) < line.speed(slowest) ? i : slowest;
        }
        return rise(slowest, -1) > SLOWED && rise(slowest, 1) > SLOWED;
    }

    /** Share by which the speed rises from a node in one direction before it falls again. */
    private double rise(int node, int direction) {
        double highest = line.speed(node);
        for (int k = 1; k < nodes; k++) {
            double here = line.speed(node + direction * k);
            highest = Math.max(highest, here);
            if (here < 0.98 * highest) {
                break;
            }
        }
        return highest / line.speed(node) - 1.0;
    }

    private List<Corner> numbered(List<Bend> bends) {
        int count = bends.size();
        int[] shift = new int[count];
        int[] start = new int[count];
        for (int k = 0; k < count; k++) {
            shift[k] = bends.get(k).apex(line) >= nodes ? -nodes : 0;
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
            int end = Math.min(bend.last() + room, line.later(bend.last(), FREE_S));
            double step = line.stepM();
            corners.add(new Corner(
                    k + 1,
                    bend.sign() > 0.0 ? Corner.Direction.LEFT : Corner.Direction.RIGHT,
                    (start[k] + shift[k]) * step,
                    (bend.first() + shift[k]) * step,
                    (bend.apex(line) + shift[k]) * step,
                    (bend.last() + shift[k]) * step,
                    (end + shift[k]) * step));
        }
        return corners;
    }

    /** The node, not before {@code earliest}, where the approach begins: before the speed starts to fall for this corner. */
    private int approach(Bend bend, int earliest) {
        int slowest = bend.first();
        for (int i = bend.first(); i <= bend.apex(line); i++) {
            if (line.speed(i) < line.speed(slowest)) {
                slowest = i;
            }
        }
        int fastest = slowest;
        for (int i = slowest; i >= earliest; i--) {
            if (line.speed(i) > line.speed(fastest)) {
                fastest = i;
            }
        }
        int braking = line.earlier(fastest, MARGIN_S);
        int free = line.earlier(bend.first(), FREE_S);
        return Math.max(earliest, Math.min(braking, free));
    }
}
