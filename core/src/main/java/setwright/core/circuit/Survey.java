package setwright.core.circuit;

import java.util.Arrays;
import java.util.List;
import setwright.core.numerics.Robust;

/**
 * What a recording shows by itself: its laps, its own reference line and where each sample lies on it.
 *
 * @param motion     how the car moved
 * @param cuts       the crossings of the line
 * @param laps       sorted into good ones and those put aside
 * @param built      the reference line and its quality
 * @param placement  of each sample on that line
 */
record Survey(Motion motion, Cuts cuts, List<Lap> laps, BuiltLine built, Placement placement) {
    /** A kart track for children is longer, the longest closed circuit shorter, m. */
    private static final double SHORTEST_LAP_M = 100.0;

    private static final double LONGEST_LAP_M = 100_000.0;

    /**
     * Surveys a recording.
     *
     * @param fewest  whole laps needed
     * @throws NotEnoughLaps when there are fewer
     */
    static Survey of(Motion motion, int fewest) {
        Cuts cuts = LapCutter.cuts(motion);
        List<Lap> laps = new LapLabels(motion, cuts).laps();
        require(motion, cuts, laps, fewest);
        BuiltLine built = ReferenceLineBuilder.build(motion, cuts, laps);
        Placement placement = place(motion, cuts, built.line());
        List<Lap> judged = new LapJudge(laps, placement, motion, built.line()).judged();
        if (good(judged) < good(laps)) {
            // A spin or a slow lap must not bend the line that the others are measured on.
            built = ReferenceLineBuilder.build(motion, cuts, judged);
            placement = place(motion, cuts, built.line());
        }
        return new Survey(motion, cuts, judged, SensedCurvature.better(built, motion, judged, placement), placement);
    }

    private static long good(List<Lap> laps) {
        return laps.stream().filter(Lap::good).count();
    }

    /** Refuses a recording with fewer whole laps than {@code fewest}, or with laps that no circuit has. */
    static void require(Motion motion, Cuts cuts, List<Lap> laps, int fewest) {
        double length = new LapLabels(motion, cuts).typicalLengthM();
        if (length < SHORTEST_LAP_M || length > LONGEST_LAP_M) {
            throw new NotEnoughLaps(LapLabels.say(
                    "recording '%s' cut by %s gives laps of %.0f m; between %.0f and %.0f m expected. Check in the channel"
                            + " map the unit of speed, and which column is the lap number or trigger.",
                    motion.recording().name(), cuts.how(), length, SHORTEST_LAP_M, LONGEST_LAP_M));
        }
        long whole = laps.stream()
                .filter(lap -> lap.kind() != LapKind.PARTIAL && lap.kind() != LapKind.GAPS)
                .count();
        whole = Math.min(whole, cuts.wholeLaps());
        if (whole < fewest) {
            throw new NotEnoughLaps(LapLabels.say(
                    "recording '%s', %.0f s long, holds %d whole laps (cut by %s); at least %d needed. Record more laps, or"
                            + " name the lap number, lap trigger or position columns in the channel map.",
                    motion.recording().name(), motion.size() * motion.stepS(), whole, cuts.how(), fewest));
        }
    }

    private static Placement place(Motion motion, Cuts cuts, ReferenceLine line) {
        if (motion.track().isPresent()) {
            return new PositionMapper(line, motion, motion.track().get()).place(0, motion.size());
        }
        HeadingMapper mapper =
                new HeadingMapper(motion, motion.turnRate().orElseThrow(), cuts, line.nodeCount(), line.stepM());
        double[] reference = curvature(line);
        double[][] shifts = new double[cuts.wholeLaps()][];
        for (int lap = 0; lap < shifts.length; lap++) {
            shifts[lap] = mapper.shifts(lap, reference, cuts.marked());
        }
        return mapper.place(shifts);
    }

    static double[] curvature(ReferenceLine line) {
        double[] curvature = new double[line.nodeCount()];
        for (int i = 0; i < curvature.length; i++) {
            curvature[i] = line.curvature(i);
        }
        return curvature;
    }

    /** Middle speed of the good laps (of all, when none is good) at each node of a line, m/s. */
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
}
