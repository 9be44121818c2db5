package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Recording;

/**
 * Cuts a recording into laps: by the logger's own marks, else by crossing a line in position, else by the repeat of
 * curvature over distance.
 *
 * <p>Crossings are refined between samples by position where it was recorded. Laps that can be told from the cuts alone
 * are already put aside here (out, in, partial, gaps); {@link LapJudge} sorts the rest.
 */
public final class LapCutter {
    private LapCutter() {}

    /**
     * Cuts a recording.
     *
     * @return laps in time order; may be empty when no crossing was found
     * @throws MissingQuantity when there is neither a speed nor a position
     */
    public static List<Lap> cut(Recording recording) {
        Motion motion = Motion.of(recording);
        return new LapLabels(motion, cuts(motion)).laps();
    }

    /** Finds the crossings; the list is empty when there are none. */
    static Cuts cuts(Motion motion) {
        Optional<Cuts> marked = new LapMarks(motion).find();
        Optional<Track> track = motion.track();
        Optional<StartLine> line = Optional.empty();
        Cuts cuts;
        if (marked.isPresent()) {
            line = track.flatMap(t -> StartLine.through(t, marked.get().crossings()));
            cuts = line.isPresent() ? refined(marked.get(), line.get(), track.get(), motion) : marked.get();
        } else if (track.isPresent()) {
            line = StartLine.choose(motion, track.get());
            cuts = new Cuts(
                    "crossing a line in position",
                    false,
                    line.map(l -> l.crossings(track.get())).orElse(List.of()));
        } else {
            cuts = CurvatureRepeat.find(motion).orElse(new Cuts("nothing that repeats", false, List.of()));
        }
        return withEnds(cuts, line, motion);
    }

    /** Cuts at every crossing of a given line. */
    static Cuts cuts(Motion motion, StartLine line) {
        Track track = motion.track().orElseThrow();
        return withEnds(
                new Cuts("crossing the known start line", true, line.crossings(track)), Optional.of(line), motion);
    }

    private static Cuts refined(Cuts marked, StartLine line, Track track, Motion motion) {
        // A mark is at most one sample late, two when lap number and trigger differ; 0.05 s covers slower marks.
        double reach = Math.max(1.0, 0.05 * motion.rateHz());
        List<Crossing> better = new ArrayList<>();
        for (Crossing crossing : marked.crossings()) {
            int gap = gapAround(motion, crossing.sample());
            // beside a stretch that was left out the mark is the edge of what was kept
            double unsure = gap > LapMarks.LEFT_OUT_S * motion.rateHz() ? reach : reach + gap;
            better.add(new Crossing(line.refine(track, crossing.sample(), unsure), crossing.number()));
        }
        return new Cuts(marked.how(), marked.marked(), better);
    }

    /** Samples missing on either side of a mark: inside a gap its place is unknown by as much. */
    private static int gapAround(Motion motion, double sample) {
        int missing = 0;
        int before = Math.max(0, Math.min(motion.size() - 1, (int) Math.floor(sample)));
        for (int i = before; i >= 0 && !motion.known(i); i--) {
            missing++;
        }
        for (int i = before + 1; i < motion.size() && !motion.known(i); i++) {
            missing++;
        }
        return missing;
    }

    /** Adds the crossings with which a recording begins and ends, when it was switched on and off at the line. */
    static Cuts withEnds(Cuts found, Optional<StartLine> line, Motion motion) {
        Cuts cuts = inOrder(found, motion);
        if (cuts.wholeLaps() < 1) {
            return cuts;
        }
        double[] lengths = new double[cuts.wholeLaps()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = motion.distanceAt(cuts.end(i)) - motion.distanceAt(cuts.start(i));
        }
        double lap = Robust.median(lengths);
        int last = motion.size() - 1;
        List<Crossing> all = new ArrayList<>(cuts.crossings());
        Crossing first = all.get(0);
        endpoint(motion.distanceAt(first.sample()), lap, 0, line, motion)
                .ifPresent(at -> all.add(
                        0,
                        new Crossing(
                                at, first.number() == Crossing.UNNUMBERED ? Crossing.UNNUMBERED : first.number() - 1)));
        Crossing end = all.get(all.size() - 1);
        endpoint(motion.distance(last) - motion.distanceAt(end.sample()), lap, last, line, motion)
                .ifPresent(at -> all.add(new Crossing(
                        at, end.number() == Crossing.UNNUMBERED ? Crossing.UNNUMBERED : end.number() + 1)));
        return inOrder(new Cuts(cuts.how(), cuts.marked(), all), motion);
    }

    /** Keeps only crossings that follow the one before by at least {@link LapMarks#SAME_CROSSING_S}. */
    private static Cuts inOrder(Cuts cuts, Motion motion) {
        List<Crossing> kept = new ArrayList<>();
        for (Crossing crossing : cuts.crossings()) {
            double last = kept.isEmpty()
                    ? Double.NEGATIVE_INFINITY
                    : kept.get(kept.size() - 1).sample();
            if (crossing.sample() - last >= Math.max(2.0, LapMarks.SAME_CROSSING_S * motion.rateHz())) {
                kept.add(crossing);
            }
        }
        return new Cuts(cuts.how(), cuts.marked(), kept);
    }

    /** The crossing at the first or last sample, when the distance left there is a whole lap. */
    private static Optional<Double> endpoint(
            double stretch, double lap, int sample, Optional<StartLine> line, Motion motion) {
        // Drivers' lines differ by some 0.2 % in length from lap to lap, and speed by as much.
        if (Math.abs(stretch / lap - 1.0) > 0.005) {
            return Optional.empty();
        }
        Optional<Track> track = motion.track();
        double outward = sample == 0 ? -0.5 : 0.5;
        if (line.isEmpty() || track.isEmpty()) {
            return Optional.of(sample + outward);
        }
        // Receivers repeat themselves at the ends; half a second inside they do not, and speed bridges the rest.
        int inside = (int) Math.round(0.5 * motion.rateHz()) * (sample == 0 ? 1 : -1) + sample;
        Optional<Track.Fix> fix = track.get().fixAt(inside);
        if (fix.isEmpty()) {
            return Optional.of(sample + outward);
        }
        double ahead =
                line.get().ahead(fix.get().x(), fix.get().y()) + motion.distance(sample) - motion.distance(inside);
        double perSample = Math.max(1e-6, motion.speed(sample) * motion.stepS());
        double missing = -ahead / perSample;
        // Up to a tenth of a second may be lacking: the car goes on at its speed, so the time is still right.
        double slack = Math.max(2.0, 0.1 * motion.rateHz()) + 2.0 * track.get().noiseM() / perSample;
        return Math.abs(missing) <= slack ? Optional.of(sample + missing) : Optional.empty();
    }
}
