package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the stretches of a line that ask for lateral acceleration in one direction, each peak with its own way in and out.
 *
 * <p>Two peaks in the same direction are one bend (a double apex) unless the demand between them falls low for longer than
 * {@link #STRAIGHT_S} and the car speeds up there or runs straight.
 */
final class BendFinder {
    /**
     * Two peaks may be two corners when the demand between them falls below this share of the lower: then half of the grip
     * (0.7², friction circle) and more is free for driving or braking. Our choice; see {@link CornerFinder} on how it was
     * made: 0.65 joins two fast left-handers that the list of one invented circuit parts.
     */
    static final double VALLEY = 0.7;
    /** A driver needs about this long to unwind the wheel and turn in anew (our choice; 0.8 to 1.5 give the same), s. */
    static final double STRAIGHT_S = 1.2;

    private final DrivenLine line;
    private final int nodes;
    private final double release;

    /**
     * Prepares.
     *
     * @param release  demand below which the line counts as straight, m/s2
     */
    BendFinder(DrivenLine line, double release) {
        this.line = line;
        this.nodes = line.nodes();
        this.release = release;
    }

    /** Returns the bends. */
    List<Bend> bends() {
        List<Bend> bends = new ArrayList<>();
        for (Bend run : joined(stretches())) {
            split(run, bends);
        }
        return bends;
    }

    private List<Bend> stretches() {
        List<Bend> bends = new ArrayList<>();
        int start = 0;
        while (start < nodes && sign(start) == sign(start - 1)) {
            start++;
        }
        if (start == nodes) {
            double whole = sign(0);
            return whole == 0.0 ? bends : new ArrayList<>(List.of(Bend.of(line, 0, nodes - 1, whole)));
        }
        int first = start;
        for (int i = start + 1; i <= start + nodes; i++) {
            if (sign(i) != sign(first)) {
                if (sign(first) != 0.0) {
                    bends.add(Bend.of(line, first, i - 1, sign(first)));
                }
                first = i;
            }
        }
        return bends;
    }

    private double sign(int node) {
        double here = line.demand(node);
        return Math.abs(here) < release ? 0.0 : Math.signum(here);
    }

    /** Joins neighbours of the same direction, whatever lies between: {@link #split} parts them again where it is long. */
    private List<Bend> joined(List<Bend> bends) {
        List<Bend> joined = new ArrayList<>();
        for (Bend bend : bends) {
            Bend before = joined.isEmpty() ? bend : joined.get(joined.size() - 1);
            if (before.sign() == bend.sign() && before.first() != bend.first()) {
                joined.set(joined.size() - 1, Bend.of(line, before.first(), bend.last(), bend.sign()));
            } else {
                joined.add(bend);
            }
        }
        if (joined.size() > 1
                && joined.get(0).sign() == joined.get(joined.size() - 1).sign()) {
            Bend last = joined.remove(joined.size() - 1);
            Bend first = joined.get(0);
            joined.set(0, Bend.of(line, last.first(), first.last() + nodes, first.sign()));
        }
        return joined;
    }

    /** Parts a run of one direction where the demand is well below both sides' peaks for long enough. */
    private void split(Bend run, List<Bend> parts) {
        int count = run.last() - run.first() + 1;
        double[] sized = new double[count];
        double[] highestAhead = new double[count + 1];
        for (int i = count - 1; i >= 0; i--) {
            sized[i] = run.sign() * line.demand(run.first() + i);
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
                if (parts(run, valley, i, sized)) {
                    int lowest = valley;
                    for (int k = valley; k < i; k++) {
                        lowest = sized[k] < sized[lowest] ? k : lowest;
                    }
                    trimmed(run, from, lowest, sized, parts);
                    from = lowest + 1;
                    highest = sized[i];
                }
                valley = -1;
            }
        }
        trimmed(run, from, count - 1, sized, parts);
    }

    /** Tells whether the car leaves one corner and approaches another: it speeds up in the valley, or runs straight. */
    private boolean parts(Bend run, int from, int to, double[] sized) {
        if (line.seconds(run.first() + from, run.first() + to) < STRAIGHT_S) {
            return false;
        }
        double straight = 0.0;
        double fastest = 0.0;
        for (int i = from; i < to; i++) {
            straight += sized[i] < release ? line.stepM() / line.speed(run.first() + i) : 0.0;
            fastest = Math.max(fastest, line.speed(run.first() + i));
        }
        return straight >= STRAIGHT_S || fastest > (1.0 + CornerFinder.SLOWED) * line.speed(run.first() + from);
    }

    private void trimmed(Bend run, int from, int to, double[] sized, List<Bend> parts) {
        int first = from;
        int last = to;
        while (first < last && sized[first] < release) {
            first++;
        }
        while (last > first && sized[last] < release) {
            last--;
        }
        parts.add(Bend.of(line, run.first() + first, run.first() + last, run.sign()));
    }
}
