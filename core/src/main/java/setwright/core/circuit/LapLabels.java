package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.core.numerics.Robust;

/** Turns cuts into laps and names those that can be told from the cuts alone: out, in, partial, gaps, wrong length. */
final class LapLabels {
    /** A stretch at the ends shorter than this is no lap, s. */
    private static final double SHORTEST_S = 1.0;
    /** More missing than this and a lap cannot be compared with the others. */
    private static final double MOST_MISSING = 0.05;
    /** Lines round one circuit differ by well under 1 %; 3 % is a cut corner, a pit lane or a run-off. */
    private static final double LENGTH_TOLERANCE = 0.03;
    /** Below this for {@link #STOP_S} the car stands, m/s. */
    private static final double STANDING_MPS = 1.0;

    private static final double STOP_S = 2.0;

    private final Motion motion;
    private final Cuts cuts;
    private final double typicalLength;
    private final double typicalSpeed;

    LapLabels(Motion motion, Cuts cuts) {
        this.motion = motion;
        this.cuts = cuts;
        double[] lengths = new double[cuts.wholeLaps()];
        for (int i = 0; i < lengths.length; i++) {
            boolean held = missing(sample(cuts.start(i)), sample(cuts.end(i))) <= MOST_MISSING;
            lengths[i] = held ? length(i) : Double.NaN;
        }
        this.typicalLength = lengths.length == 0 ? Double.NaN : Robust.median(lengths);
        double[] speeds = new double[motion.size()];
        for (int i = 0; i < speeds.length; i++) {
            speeds[i] = motion.speed(i);
        }
        this.typicalSpeed = Robust.median(speeds);
    }

    private double length(int lap) {
        return motion.distanceAt(cuts.end(lap)) - motion.distanceAt(cuts.start(lap));
    }

    private double time(int lap) {
        return (cuts.end(lap) - cuts.start(lap)) * motion.stepS();
    }

    /** Typical lap length by integrated speed, m; NaN without a whole lap. */
    double typicalLengthM() {
        return typicalLength;
    }

    /** Returns the laps in time order; the whole ones are those between two crossings. */
    List<Lap> laps() {
        List<Lap> laps = new ArrayList<>();
        if (cuts.crossings().isEmpty()) {
            return laps;
        }
        Crossing first = cuts.crossings().get(0);
        int number = first.number() == Crossing.UNNUMBERED ? 0 : first.number();
        int begin = sample(first.sample());
        if (begin * motion.stepS() >= SHORTEST_S) {
            if (first.number() == Crossing.UNNUMBERED) {
                number = 1;
            }
            laps.add(opening(number - 1, begin));
        }
        for (int i = 0; i < cuts.wholeLaps(); i++) {
            int own = cuts.crossings().get(i).number();
            number = own == Crossing.UNNUMBERED ? number : own;
            laps.add(whole(i, number, laps.isEmpty()));
            number++;
        }
        Crossing last = cuts.crossings().get(cuts.crossings().size() - 1);
        int end = sample(last.sample());
        if ((motion.size() - end) * motion.stepS() >= SHORTEST_S) {
            laps.add(closing(last.number() == Crossing.UNNUMBERED ? number : last.number(), end));
        }
        return laps;
    }

    private int sample(double place) {
        return Math.max(0, Math.min(motion.size(), (int) Math.ceil(place)));
    }

    private Lap opening(int number, int to) {
        double time = to * motion.stepS();
        return motion.speed(0) < 0.5 * typicalSpeed || standsIn(0, to) >= 0
                ? new Lap(number, 0, to, time, LapKind.OUT, say("begins at %.0f km/h", 3.6 * motion.speed(0)))
                : new Lap(number, 0, to, time, LapKind.PARTIAL, "the recording begins inside it");
    }

    private Lap closing(int number, int from) {
        int size = motion.size();
        double time = (size - from) * motion.stepS();
        return motion.speed(size - 1) < 0.5 * typicalSpeed || standsIn(from, size) >= 0
                ? new Lap(number, from, size, time, LapKind.IN, say("ends at %.0f km/h", 3.6 * motion.speed(size - 1)))
                : new Lap(number, from, size, time, LapKind.PARTIAL, "the recording ends inside it");
    }

    private Lap whole(int index, int number, boolean opens) {
        int from = sample(cuts.start(index));
        int to = sample(cuts.end(index));
        Lap lap = new Lap(number, from, to, time(index), LapKind.GOOD, "");
        double missing = missing(from, to);
        if (missing > MOST_MISSING) {
            return lap.as(LapKind.GAPS, say("%.0f %% of its samples are missing", 100.0 * missing));
        }
        int stop = standsIn(from, to);
        if (stop >= 0) {
            return 2 * stop < from + to
                    ? lap.as(LapKind.OUT, say("stood still %.0f s after its start", (stop - from) * motion.stepS()))
                    : lap.as(LapKind.IN, say("stood still %.0f s before its end", (to - stop) * motion.stepS()));
        }
        double share = length(index) / typicalLength;
        if (Math.abs(share - 1.0) > LENGTH_TOLERANCE) {
            String figures = say("%.0f m long where the others have %.0f m", length(index), typicalLength);
            return Math.rint(share) >= 2.0
                    ? lap.as(LapKind.PARTIAL, "a crossing of the line is missing: " + figures)
                    : lap.as(LapKind.OFF_TRACK, figures);
        }
        return opens ? outOrGood(lap, index) : lap;
    }

    /** The first lap of a recording is an out lap when it begins slower than the others or takes clearly longer. */
    private Lap outOrGood(Lap lap, int index) {
        int others = cuts.wholeLaps() - 1;
        if (others < 1) {
            return lap;
        }
        double[] speeds = new double[others];
        double[] times = new double[others];
        for (int i = 0; i < others; i++) {
            speeds[i] = motion.speedAt(cuts.start(index + 1 + i));
            times[i] = time(index + 1 + i);
        }
        double begins = motion.speedAt(cuts.start(index));
        double usual = Robust.median(speeds);
        if (begins < 0.8 * usual) {
            return lap.as(
                    LapKind.OUT, say("began at %.0f km/h where the others had %.0f km/h", 3.6 * begins, 3.6 * usual));
        }
        double median = Robust.median(times);
        // 2 % is more than fuel and tyres change from one lap to the next; three deviations allow for the driver's
        // scatter.
        double longer = Math.max(0.02 * median, 3.0 * Robust.scaledMad(times));
        return lap.timeS() > median + longer
                ? lap.as(LapKind.OUT, say("the first lap, %.2f s slower than the others", lap.timeS() - median))
                : lap;
    }

    private double missing(int from, int to) {
        int missing = 0;
        for (int i = from; i < to; i++) {
            if (!motion.known(i)) {
                missing++;
            }
        }
        return (double) missing / (to - from);
    }

    /** First sample of a standstill, or -1. */
    private int standsIn(int from, int to) {
        int need = Math.max(1, (int) Math.round(STOP_S * motion.rateHz()));
        int run = 0;
        for (int i = from; i < to; i++) {
            run = motion.known(i) && motion.speed(i) < STANDING_MPS ? run + 1 : 0;
            if (run >= need) {
                return i - run + 1;
            }
        }
        return -1;
    }

    static String say(String format, Object... figures) {
        return String.format(Locale.ROOT, format, figures);
    }
}
