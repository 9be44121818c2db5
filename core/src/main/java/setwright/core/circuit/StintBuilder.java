package setwright.core.circuit;

import java.util.Arrays;
import java.util.List;
import setwright.core.numerics.Robust;
import setwright.core.recording.Calibration;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Cuts a recording into laps and places every sample on the circuit. */
public final class StintBuilder {
    private StintBuilder() {}

    /**
     * Finds laps, reference line and corners in a recording.
     *
     * @throws NotEnoughLaps when there are fewer than two whole laps
     * @throws MissingQuantity when there is no speed, or neither position nor rate of turn
     */
    public static Stint build(Recording recording) {
        Motion motion = Motion.of(recording);
        Cuts cuts = LapCutter.cuts(motion);
        List<Lap> laps = new LapLabels(motion, cuts).laps();
        requireTwo(recording, cuts, laps);
        BuiltLine built = ReferenceLineBuilder.build(motion, cuts, laps);
        ReferenceLine line = built.line();
        Placement placement = place(motion, cuts, line);
        List<Lap> judged = new LapJudge(laps, placement, motion, line).judged();
        if (judged.stream().filter(Lap::good).count()
                < laps.stream().filter(Lap::good).count()) {
            // A spin or a slow lap must not bend the line that the others are measured on.
            built = ReferenceLineBuilder.build(motion, cuts, judged);
            line = built.line();
            placement = place(motion, cuts, line);
        }
        double[] speed = typicalSpeed(motion, judged, placement, line);
        List<Corner> corners = CornerFinder.find(line, speed, built.quality().demandNoise());
        Circuit.Anchor anchor = motion.track().isPresent() ? new Circuit.LocalPlane() : new Circuit.Unanchored();
        return new Stint(
                noted(motion, built.quality()),
                new Circuit("circuit of " + recording.name(), line, corners, anchor),
                judged,
                Channel.of(placement.station()),
                Channel.of(placement.offset()));
    }

    private static void requireTwo(Recording recording, Cuts cuts, List<Lap> laps) {
        long whole = laps.stream()
                .filter(lap -> lap.kind() != LapKind.PARTIAL && lap.kind() != LapKind.GAPS)
                .count();
        if (cuts.wholeLaps() < 2 || whole < 2) {
            throw new NotEnoughLaps("recording '" + recording.name() + "' holds " + Math.min(whole, cuts.wholeLaps())
                    + " whole laps (cut by " + cuts.how()
                    + "); at least 2 are needed. Record more laps, or name the lap number, lap trigger or position column"
                    + " in the channel map.");
        }
    }

    private static Placement place(Motion motion, Cuts cuts, ReferenceLine line) {
        if (motion.track().isPresent()) {
            return new PositionMapper(line, motion, motion.track().get()).place(0, motion.size());
        }
        HeadingMapper mapper =
                new HeadingMapper(motion, motion.turnRate().orElseThrow(), cuts, line.nodeCount(), line.stepM());
        double[] reference = new double[line.nodeCount()];
        for (int i = 0; i < reference.length; i++) {
            reference[i] = line.curvature(i);
        }
        double[][] shifts = new double[cuts.wholeLaps()][];
        for (int lap = 0; lap < shifts.length; lap++) {
            shifts[lap] = mapper.shifts(lap, reference, cuts.marked());
        }
        return mapper.place(shifts);
    }

    /** Middle speed of the good laps (of all, when none is good) at each node, m/s. */
    static double[] typicalSpeed(Motion motion, List<Lap> laps, Placement placement, ReferenceLine line) {
        List<Lap> good = laps.stream().filter(Lap::good).toList();
        List<Lap> used = good.isEmpty() ? laps : good;
        double[][] speeds = new double[used.size()][];
        for (int k = 0; k < speeds.length; k++) {
            speeds[k] =
                    placement.speedAt(motion, used.get(k).from(), used.get(k).to(), line.nodeCount(), line.stepM());
        }
        double[] typical = new double[line.nodeCount()];
        double[] here = new double[speeds.length];
        for (int i = 0; i < typical.length; i++) {
            for (int k = 0; k < here.length; k++) {
                here[k] = speeds[k][i];
            }
            typical[i] = Arrays.stream(here).allMatch(Double::isNaN) ? Double.NaN : Robust.median(here);
        }
        typical = Gaps.bridged(typical);
        for (int i = 0; i < typical.length; i++) {
            typical[i] = Math.max(1.0, typical[i]);
        }
        return typical;
    }

    private static Recording noted(Motion motion, LineQuality quality) {
        Recording noted = motion.recording();
        if (motion.track().isPresent() && motion.track().get().turnedOver()) {
            noted = noted.with(Quantity.POSITION_Y, negated(noted.channel(Quantity.POSITION_Y)))
                    .with(new Calibration(
                            "position y",
                            -1.0,
                            "1",
                            "the course turns the other way than the car, so y was turned over"));
        }
        return noted.with(new Calibration("reference line", quality.closingGapM(), "m", quality.sentence()));
    }

    private static Channel negated(Channel channel) {
        double[] values = channel.toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] = -values[i];
        }
        return Channel.of(values);
    }
}
