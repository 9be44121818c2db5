package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import setwright.core.numerics.EvenSample;

/** Builds the reference line from the whole laps of a recording: from position, else from rate of turn and speed. */
final class ReferenceLineBuilder {
    /** Speed may be off by tyre size, position by smoothing: together by less than this share. */
    private static final double LENGTH_TOLERANCE = 0.2;
    /** The middle of so many, evenly spread, is known to a fifth of a lap's scatter; more of them only take time. */
    private static final int MOST_LAPS = 40;

    private ReferenceLineBuilder() {}

    /**
     * Builds the line.
     *
     * @param laps  as cut and labelled; of the good ones, or all whole ones when none is good, no more than {@value #MOST_LAPS} are used
     * @throws MissingQuantity when there is neither position nor rate of turn, or the position contradicts the speed
     */
    static BuiltLine build(Motion motion, Cuts cuts, List<Lap> laps) {
        List<Integer> use = usable(motion, cuts, laps);
        if (motion.track().isPresent()) {
            BuiltLine built = new PositionLine(motion, motion.track().get(), cuts, use).build();
            requireAgreement(motion, built.line().lengthM(), new LapLabels(motion, cuts).typicalLengthM());
            return built;
        }
        double[] turnRate = motion.turnRate()
                .orElseThrow(() -> new MissingQuantity("recording '"
                        + motion.recording().name()
                        + "' has neither position, yaw rate nor lateral acceleration; the circuit's shape cannot be"
                        + " found. Name one of these columns in the channel map."));
        return new HeadingLine(motion, turnRate, cuts, use).build();
    }

    private static void requireAgreement(Motion motion, double byPosition, double bySpeed) {
        if (!(Math.abs(byPosition / bySpeed - 1.0) < LENGTH_TOLERANCE)) {
            throw new MissingQuantity(LapLabels.say(
                    "recording '%s' has no position that fits its speed: a lap is %.0f m long by position and %.0f m by"
                            + " speed. Check both columns and their units in the channel map, or leave position out.",
                    motion.recording().name(), byPosition, bySpeed));
        }
    }

    /** Indices among the cuts of the laps to use. */
    static List<Integer> usable(Motion motion, Cuts cuts, List<Lap> laps) {
        List<Integer> good = new ArrayList<>();
        List<Integer> whole = new ArrayList<>();
        for (int i = 0; i < cuts.wholeLaps(); i++) {
            int from = Math.max(0, (int) Math.ceil(cuts.start(i)));
            for (Lap lap : laps) {
                if (lap.from() == from && lap.kind() != LapKind.PARTIAL && lap.kind() != LapKind.GAPS) {
                    whole.add(i);
                    if (lap.good()) {
                        good.add(i);
                    }
                }
            }
        }
        return EvenSample.of(good.isEmpty() ? whole : good, MOST_LAPS);
    }
}
