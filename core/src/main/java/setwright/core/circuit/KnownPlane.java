package setwright.core.circuit;

import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Recording;

/** Lays a recording on a known circuit by position, where both use the same plane or places on the earth. */
final class KnownPlane {
    /** Laps of one circuit keep this near its line, half of the time, even with a receiver that is off by some metres, m. */
    private static final double NEAR_M = 10.0;

    private KnownPlane() {}

    /** Returns the stint; empty when there is no common plane or the recording lies elsewhere in it. */
    static Optional<Stint> stint(Motion motion, Circuit known) {
        if (motion.track().isEmpty()) {
            return Optional.empty();
        }
        Optional<RigidMove> move = move(motion.recording(), known.anchor());
        if (move.isEmpty()) {
            return Optional.empty();
        }
        Motion there = motion.with(motion.track().get().moved(move.get()));
        Track track = there.track().orElseThrow();
        Placement placement = new PositionMapper(known.line(), there, track).place(0, there.size());
        if (!(middleSize(placement.offset()) <= NEAR_M + 2.0 * track.noiseM())) {
            return Optional.empty();
        }
        Cuts cuts = new LapMarks(there).find().isPresent()
                ? LapCutter.cuts(there)
                : LapCutter.cuts(there, line(known.line()));
        List<Lap> laps = new LapLabels(there, cuts).laps();
        Survey.require(there, cuts, laps, 1);
        List<Lap> judged = new LapJudge(laps, placement, there, known.line()).judged();
        Recording recording = StintBuilder.moved(StintBuilder.turned(motion), move.get());
        return Optional.of(StintBuilder.stint(recording, known, judged, placement));
    }

    private static Optional<RigidMove> move(Recording recording, Circuit.Anchor anchor) {
        if (anchor instanceof Circuit.Geographic origin) {
            return PlaneOrigin.of(recording).map(own -> PlaneOrigin.between(own, origin));
        }
        return anchor instanceof Circuit.LocalPlane ? Optional.of(RigidMove.none()) : Optional.empty();
    }

    private static StartLine line(ReferenceLine line) {
        return new StartLine(line.x(0), line.y(0), line.heading(0));
    }

    static double middleSize(double[] offset) {
        double[] size = offset.clone();
        for (int i = 0; i < size.length; i++) {
            size[i] = Math.abs(size[i]);
        }
        return Robust.median(size);
    }
}
