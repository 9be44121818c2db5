package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Alignment;
import setwright.core.recording.Recording;

/**
 * Lays a recording on a known circuit by the shape of its own reference line: the curvature of both is turned round the lap
 * until it agrees best, then stretched slowly onto each other.
 */
final class KnownShape {
    /** Curvatures that share less than half of their variance (r below 0.7) are not of one circuit. */
    private static final double LEAST_CORRELATION = 0.7;
    /** Lines round one circuit, and the speeds they are measured by, differ by less in length. */
    private static final double LENGTH_TOLERANCE = 0.05;
    /** Near the best agreement a symmetric circuit has others; of those within this of it, the own start line decides. */
    private static final double AS_GOOD = 0.05;
    /** As in {@link HeadingMapper}, m. */
    private static final double REACH_M = 25.0;

    private static final double ALIKE_M = 30.0;

    private final Survey survey;
    private final Circuit known;
    private final double[] own;
    private final double[] theirs;

    private KnownShape(Survey survey, Circuit known) {
        this.survey = survey;
        this.known = known;
        this.theirs = Survey.curvature(known.line());
        this.own = new double[theirs.length];
        ReferenceLine line = survey.built().line();
        double scale = line.lengthM() / known.line().lengthM();
        for (int i = 0; i < own.length; i++) {
            own[i] = scale * line.curvatureAt(i * known.line().stepM() * scale);
        }
    }

    /**
     * Returns the stint.
     *
     * @throws OtherCircuit when the shapes differ
     */
    static Stint stint(Motion motion, Circuit known) {
        return new KnownShape(Survey.of(motion, 1), known).laid();
    }

    private Stint laid() {
        int turn = turn();
        double[] place = places(turn);
        Placement placement = moved(place);
        Motion motion = survey.motion();
        List<Lap> laps = survey.cuts().marked() ? survey.laps() : recut(placement);
        Recording recording = StintBuilder.turned(motion);
        if (motion.track().isPresent() && !(known.anchor() instanceof Circuit.Unanchored)) {
            recording = StintBuilder.moved(recording, move(place));
        }
        return StintBuilder.stint(recording, known, laps, placement);
    }

    /** How many nodes the own line starts after the known one. */
    private int turn() {
        double ratio = survey.built().line().lengthM() / known.line().lengthM();
        int nodes = theirs.length;
        double[] agreement = new double[nodes];
        double best = -1.0;
        for (int shift = 0; shift < nodes; shift++) {
            agreement[shift] = correlation(shift);
            best = Math.max(best, agreement[shift]);
        }
        if (best < LEAST_CORRELATION || Math.abs(ratio - 1.0) > LENGTH_TOLERANCE) {
            throw new OtherCircuit(LapLabels.say(
                    "recording '%s' does not fit circuit '%s': its lap is %.0f m long against %.0f m, and their curvature"
                            + " correlates by %.2f (at least %.1f expected). Choose the right circuit, or none to have it"
                            + " found anew.",
                    survey.motion().recording().name(),
                    known.name(),
                    survey.built().line().lengthM(),
                    known.line().lengthM(),
                    best,
                    LEAST_CORRELATION));
        }
        int nearest = -1;
        int within = (int) Math.round(REACH_M / known.line().stepM());
        for (int shift = 0; shift < nodes; shift++) {
            boolean tried = agreement[shift] > best - AS_GOOD;
            int size = Math.min(shift, nodes - shift);
            if (tried && (nearest < 0 || size < Math.min(nearest, nodes - nearest) - within)) {
                nearest = shift;
            }
        }
        // The first as-good shift starts a hump; its top is what is meant.
        int top = nearest;
        for (int k = -2 * within; k <= 2 * within; k++) {
            int shift = Math.floorMod(nearest + k, nodes);
            top = agreement[shift] > agreement[top] ? shift : top;
        }
        return top;
    }

    private double correlation(int shift) {
        double product = 0.0;
        double left = 0.0;
        double right = 0.0;
        for (int i = 0; i < own.length; i += 2) {
            double a = own[i];
            double b = theirs[(i + shift) % theirs.length];
            product += a * b;
            left += a * a;
            right += b * b;
        }
        return product / Math.sqrt(Math.max(1e-30, left * right));
    }

    /** Station on the known line of each node of the resampled own line, m, growing from the first. */
    private double[] places(int turn) {
        int nodes = own.length;
        double step = known.line().stepM();
        int reach = (int) Math.round(REACH_M / step);
        double[] signal = new double[nodes + 2 * reach];
        for (int i = 0; i < signal.length; i++) {
            signal[i] = theirs[Math.floorMod(i - reach + turn, nodes)];
        }
        double squares = 0.0;
        for (int i = 0; i < nodes; i++) {
            double difference = own[i] - signal[i + reach];
            squares += difference * difference;
        }
        double noise = Math.max(1e-5, 0.5 * Math.sqrt(squares / nodes));
        int[] shift = Alignment.shifts(signal, own, reach, noise, 8.0 * ALIKE_M / step, false);
        double[] place = new double[nodes];
        int smooth = (int) Math.round(ALIKE_M / step);
        for (int i = 0; i < nodes; i++) {
            double sum = 0.0;
            for (int k = -smooth; k <= smooth; k++) {
                sum += shift[Math.floorMod(i + k, nodes)];
            }
            place[i] = (i + turn + sum / (2 * smooth + 1)) * step;
        }
        return place;
    }

    private Placement moved(double[] place) {
        double[] station = survey.placement().station().clone();
        double scale = known.line().lengthM() / survey.built().line().lengthM();
        double step = known.line().stepM();
        double length = known.line().lengthM();
        for (int i = 0; i < station.length; i++) {
            if (!Double.isNaN(station[i])) {
                double at = station[i] * scale / step;
                int node = Math.min((int) at, place.length - 1);
                double next = node + 1 < place.length ? place[node + 1] : place[0] + length;
                station[i] = known.line().wrap(place[node] + (at - node) * (next - place[node]));
            }
        }
        return new Placement(station, survey.placement().offset());
    }

    /** Laps between the known start line's crossings, where the recording had no marks of its own. */
    private List<Lap> recut(Placement placement) {
        double length = known.line().lengthM();
        double[] station = placement.station();
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 1; i < station.length; i++) {
            if (station[i] < 0.25 * length && station[i - 1] > 0.75 * length) {
                double left = length - station[i - 1];
                crossings.add(new Crossing(i - 1 + left / (left + station[i]), Crossing.UNNUMBERED));
            }
        }
        Motion motion = survey.motion();
        Cuts cuts = LapCutter.withEnds(
                new Cuts("crossing the known start line", true, crossings), Optional.empty(), motion);
        List<Lap> laps = new LapLabels(motion, cuts).laps();
        Survey.require(motion, cuts, laps, 1);
        return new LapJudge(laps, placement, motion, known.line()).judged();
    }

    private RigidMove move(double[] place) {
        ReferenceLine line = survey.built().line();
        double scale = line.lengthM() / known.line().lengthM();
        int count = place.length / 8;
        double[][] points = new double[4][count];
        for (int k = 0; k < count; k++) {
            int from = (int) Math.round(8 * k * known.line().stepM() * scale / line.stepM()) % line.nodeCount();
            int to = (int) Math.round(
                            known.line().wrap(place[8 * k]) / known.line().stepM())
                    % place.length;
            points[0][k] = line.x(from);
            points[1][k] = line.y(from);
            points[2][k] = known.line().x(to);
            points[3][k] = known.line().y(to);
        }
        return RigidMove.fit(points[0], points[1], points[2], points[3]);
    }
}
