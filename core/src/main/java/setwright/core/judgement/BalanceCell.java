package setwright.core.judgement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.SpeedClass;
import setwright.core.numerics.Robust;
import setwright.core.replay.Pool;

/*
 * Design note. What bars and wings do grows with about the fourth power of the grip used (a tenth of roll stiffness share: 0.045, 0.18,
 * 0.56 degrees at 44, 67, 89 % of the limit with the 1987 tyre set), and so does what a healthy car shows.
 */

/**
 * What the laps show of one phase in one class of corners.
 *
 * @param phase              of each corner
 * @param speed              class of the corners
 * @param weight             lateral acceleration times time, m/s
 * @param excess             median beyond the reference, rad
 * @param errorRad           its standard error over the laps, rad
 * @param referenceDoubtRad  how far the reference may be off for being driven otherwise, rad
 * @param shape              how much of the limit shows there, 0..1
 */
record BalanceCell(
        Phase phase,
        SpeedClass speed,
        double weight,
        double excess,
        double errorRad,
        double referenceDoubtRad,
        double shape) {
    private static final int FEWEST_PASSES = 3;
    private static final double FULL_USE = 0.9;
    private static final double SHAPE_POWER = 3.6;

    Pool pool() {
        return Pool.of(phase, speed);
    }

    /** Returns them, where there are three passes or more. */
    static List<BalanceCell> of(List<CornerPass> passes) {
        List<BalanceCell> cells = new ArrayList<>();
        for (Phase phase : BalanceBelief.PHASES) {
            for (SpeedClass speed : SpeedClass.values()) {
                List<CornerPass> there = passes.stream()
                        .filter(pass -> pass.speedClass() == speed)
                        .filter(pass -> pass.phase(phase)
                                .filter(balance -> Double.isFinite(balance.excessRad()))
                                .isPresent())
                        .toList();
                List<PhaseBalance> here = there.stream()
                        .flatMap(pass -> pass.phase(phase).stream())
                        .toList();
                double weight = here.stream()
                        .mapToDouble(balance -> Math.abs(balance.lateralMps2()) * balance.timeS())
                        .sum();
                if (here.size() >= FEWEST_PASSES && weight > 0.0) {
                    cells.add(new BalanceCell(
                            phase,
                            speed,
                            weight,
                            Robust.median(here.stream()
                                    .mapToDouble(PhaseBalance::excessRad)
                                    .toArray()),
                            errorRad(there, phase),
                            Robust.median(here.stream()
                                    .mapToDouble(PhaseBalance::referenceDoubtRad)
                                    .toArray()),
                            Math.min(
                                    1.0,
                                    Robust.median(here.stream()
                                            .mapToDouble(BalanceCell::shape)
                                            .toArray()))));
                }
            }
        }
        return cells;
    }

    /** Standard error of the excess from the scatter of the laps within each corner, rad. */
    private static double errorRad(List<CornerPass> passes, Phase phase) {
        Map<Integer, List<Double>> corners = passes.stream()
                .collect(Collectors.groupingBy(
                        CornerPass::corner,
                        Collectors.flatMapping(
                                pass -> pass.phase(phase).map(PhaseBalance::excessRad).stream(), Collectors.toList())));
        double[] apart = corners.values().stream()
                .flatMapToDouble(BalanceCell::fromTheirMedian)
                .toArray();
        return Robust.scaledMad(apart) / Math.sqrt(apart.length);
    }

    private static DoubleStream fromTheirMedian(List<Double> values) {
        double[] all = values.stream().mapToDouble(Double::doubleValue).toArray();
        double middle = Robust.median(all);
        return Arrays.stream(all).map(value -> value - middle);
    }

    /** Returns how much of what shows at the limit shows in such a phase, 0..1. */
    static double shownShare(PhaseBalance balance) {
        return Math.min(1.0, shape(balance));
    }

    private static double shape(PhaseBalance balance) {
        return Math.pow(Math.max(balance.frontUse(), balance.rearUse()) / FULL_USE, SHAPE_POWER);
    }
}
