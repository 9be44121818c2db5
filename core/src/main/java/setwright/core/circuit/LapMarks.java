package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Start line crossings that the logger itself marked, by lap number, lap trigger or lap distance. */
final class LapMarks {
    /** Two marks nearer than this belong to one crossing; no circuit is lapped in so short a time, s. */
    static final double SAME_CROSSING_S = 2.0;

    /** No drop-out lasts as long and no lap is as short, s. */
    static final double LEFT_OUT_S = 5.0;

    private final Motion motion;
    private final Recording recording;

    LapMarks(Motion motion) {
        this.motion = motion;
        this.recording = motion.recording();
    }

    /** Returns the crossings; empty when the logger marked fewer than two. */
    Optional<Cuts> find() {
        List<Crossing> numbers = recording.has(Quantity.LAP_NUMBER) ? numberChanges() : List.of();
        List<Crossing> triggers = recording.has(Quantity.LAP_TRIGGER) ? risingEdges() : List.of();
        List<Crossing> resets = recording.has(Quantity.LAP_DISTANCE) ? distanceResets() : List.of();
        if (numbers.size() >= 2) {
            return Optional.of(new Cuts(
                    triggers.isEmpty() ? "lap number" : "lap number and lap trigger", true, agreed(numbers, triggers)));
        }
        if (triggers.size() >= 2) {
            return Optional.of(new Cuts("lap trigger", true, atOnePlace(triggers)));
        }
        if (resets.size() >= 2) {
            return Optional.of(new Cuts("lap distance", true, resets));
        }
        return Optional.empty();
    }

    /**
     * Changes of the lap number that last; a counter that starts again goes on counting here. Where laps were left out of
     * the file, the lap before ends with its last sample and the next begins with its first.
     */
    private List<Crossing> numberChanges() {
        double[] raw = recording.channel(Quantity.LAP_NUMBER).toArray();
        int hold = Math.max(1, (int) Math.round(0.5 * SAME_CROSSING_S * motion.rateHz()));
        List<Crossing> changes = new ArrayList<>();
        int before = firstKnown(raw, 0);
        if (before == raw.length) {
            return changes;
        }
        long current = Math.round(raw[before]);
        int number = (int) current;
        for (int i = firstKnown(raw, before + 1); i < raw.length; i = firstKnown(raw, i + 1)) {
            long here = Math.round(raw[i]);
            if (here != current && lasts(raw, i, here, hold)) {
                boolean leftOut = here > current + 1 && i - before > LEFT_OUT_S * motion.rateHz();
                if (leftOut) {
                    changes.add(new Crossing(before + 0.5, number + 1));
                }
                number = here > current && here > number ? (int) here : number + 1;
                current = here;
                changes.add(new Crossing(leftOut ? i - 0.5 : 0.5 * (before + i), number));
            }
            before = i;
        }
        return changes;
    }

    private static int firstKnown(double[] raw, int from) {
        int i = from;
        while (i < raw.length && Double.isNaN(raw[i])) {
            i++;
        }
        return i;
    }

    private static boolean lasts(double[] raw, int from, long value, int hold) {
        int to = Math.min(raw.length, from + hold);
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(raw[i]) && Math.round(raw[i]) != value) {
                return false;
            }
        }
        return true;
    }

    private List<Crossing> risingEdges() {
        double[] raw = Gaps.bridged(recording.channel(Quantity.LAP_TRIGGER).toArray());
        double low = raw[0];
        double high = raw[0];
        for (double value : raw) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        double level = 0.5 * (low + high);
        List<Crossing> edges = new ArrayList<>();
        if (!(high > low)) {
            return edges;
        }
        double last = -SAME_CROSSING_S * motion.rateHz();
        for (int i = 0; i < raw.length; i++) {
            boolean rises = raw[i] > level && (i == 0 || raw[i - 1] <= level);
            if (rises && i - last >= SAME_CROSSING_S * motion.rateHz()) {
                last = i;
                edges.add(new Crossing(i == 0 ? 0.0 : i - 0.5, Crossing.UNNUMBERED));
            }
        }
        return edges;
    }

    /** Drops of the lap distance, each set back to where the distance was zero. */
    private List<Crossing> distanceResets() {
        double[] raw = recording.channel(Quantity.LAP_DISTANCE).toArray();
        double highest = Robust.quantile(raw, 0.999);
        List<Crossing> resets = new ArrayList<>();
        int before = -1;
        for (int i = 0; i < raw.length; i++) {
            if (Double.isNaN(raw[i])) {
                continue;
            }
            boolean falls = before >= 0 && raw[i] < raw[before] - 0.5 * highest;
            if (falls
                    && (resets.isEmpty()
                            || i - resets.get(resets.size() - 1).sample() > SAME_CROSSING_S * motion.rateHz())) {
                double back = raw[i] / Math.max(Motion.CRAWL_MPS, motion.speed(i)) * motion.rateHz();
                resets.add(new Crossing(Math.max(before, i - Math.max(0.0, back)), Crossing.UNNUMBERED));
            }
            before = i;
        }
        return resets;
    }

    /**
     * Joins lap numbers and triggers: a trigger within {@link #SAME_CROSSING_S} sets the time of a change; one alone counts
     * when a change must be missing there, that is when it cuts a stretch of two laps or more into whole ones.
     */
    private List<Crossing> agreed(List<Crossing> numbers, List<Crossing> triggers) {
        double near = SAME_CROSSING_S * motion.rateHz();
        double lap = typicalLength(numbers);
        List<Crossing> joined = new ArrayList<>(numbers);
        for (Crossing trigger : triggers) {
            int nearest = nearest(joined, trigger.sample());
            Crossing other = joined.get(nearest);
            if (Math.abs(other.sample() - trigger.sample()) <= near) {
                joined.set(nearest, new Crossing(trigger.sample(), other.number()));
            } else if (fits(joined, trigger.sample(), lap)) {
                joined.add(new Crossing(trigger.sample(), Crossing.UNNUMBERED));
                joined.sort((a, b) -> Double.compare(a.sample(), b.sample()));
            }
        }
        return joined;
    }

    private boolean fits(List<Crossing> crossings, double sample, double lap) {
        for (Crossing crossing : crossings) {
            double laps = Math.abs(motion.distanceAt(crossing.sample()) - motion.distanceAt(sample)) / lap;
            if (laps < 0.9) {
                return false;
            }
        }
        return true;
    }

    private static int nearest(List<Crossing> crossings, double sample) {
        int best = 0;
        for (int i = 1; i < crossings.size(); i++) {
            if (Math.abs(crossings.get(i).sample() - sample)
                    < Math.abs(crossings.get(best).sample() - sample)) {
                best = i;
            }
        }
        return best;
    }

    private double typicalLength(List<Crossing> crossings) {
        double[] lengths = new double[crossings.size() - 1];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = motion.distanceAt(crossings.get(i + 1).sample())
                    - motion.distanceAt(crossings.get(i).sample());
        }
        return Robust.median(lengths);
    }

    /** Where several beacons stand round the circuit, only the marks at the place of most marks are kept. */
    private List<Crossing> atOnePlace(List<Crossing> triggers) {
        Optional<Track> track = motion.track();
        if (track.isEmpty()) {
            return triggers;
        }
        List<Crossing> best = List.of();
        for (Crossing centre : triggers) {
            Optional<Track.Fix> home = track.get().fixAt(centre.sample());
            if (home.isEmpty()) {
                continue;
            }
            List<Crossing> here = triggers.stream()
                    .filter(other -> track.get()
                            .fixAt(other.sample())
                            .map(fix -> Math.hypot(
                                            fix.x() - home.get().x(),
                                            fix.y() - home.get().y())
                                    < 50.0)
                            .orElse(true))
                    .toList();
            if (here.size() > best.size()) {
                best = here;
            }
        }
        return best.size() >= 2 ? best : triggers;
    }
}
