package setwright.core.simulation.truth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.ProblemWords;
import setwright.core.judgement.SpeedRange;
import setwright.core.numerics.WeightedMedian;

/*
 * Design note. A problem is what repeats: one corner proves nothing, and a phase that lasts a tenth of a second in most corners has
 * one corner or other in which the two stints differ by a degree. So a place differs by the median over its corners, not by the mean.
 */

/** Names the difference between two tables of balance. */
public final class ProblemLabeller {
    private static final double SHOWS = 0.5;
    /** A cell of the lap with less time in it says little, s. */
    private static final double LEAST_S = 0.25;
    /** Below this no tyre is worked enough to judge a car, m/s², as for corners. */
    private static final double LEAST_LATERAL_MPS2 = 1.0;
    /**
     * Smallest difference that counts, rad: a third of what a tenth of roll stiffness share does (0.56 deg, four wheels in steady
     * state on the published tyre set of 1987). No published just noticeable difference of axle slip was found; a third of
     * the effect of interest is our choice.
     */
    private static final double LEAST_RAD = Math.toRadians(0.56 / 3.0);

    private final BalanceTable faulty;
    private final BalanceTable balanced;

    private ProblemLabeller(BalanceTable faulty, BalanceTable balanced) {
        this.faulty = faulty;
        this.balanced = balanced;
    }

    /**
     * How much a phase differs.
     *
     * @param phase     of each corner
     * @param speed     class of corners
     * @param rad       balance of the faulty car less that of the balanced one, rad
     * @param errorRad  its standard error over the laps, rad; 0 when it has none
     */
    public record Difference(Phase phase, SpeedRange speed, double rad, double errorRad) {
        private double size() {
            return Math.abs(rad);
        }

        /** Share of another difference that this one has, negative when it goes the other way. */
        private double share(double otherRad) {
            return rad / otherRad;
        }
    }

    /**
     * Labels the difference.
     *
     * @param faulty    as recorded
     * @param balanced  the same phases of the same circuit, without the fault
     * @return empty when no phase can be compared
     */
    public static Optional<TrueProblem> label(BalanceTable faulty, BalanceTable balanced) {
        return new ProblemLabeller(faulty, balanced).label();
    }

    /** Returns faulty less balanced in a phase of a class of corners, rad; empty with too little time there. */
    public static Optional<Double> differenceRad(
            BalanceTable faulty, BalanceTable balanced, Phase phase, SpeedRange speed) {
        return new ProblemLabeller(faulty, balanced).difference(phase, speed).map(Difference::rad);
    }

    /**
     * Labels differences that were found in another way, by the same rules.
     *
     * @param all  at most one for each phase and class of corners
     * @return empty without any; names no corners
     */
    public static Optional<TrueProblem> label(List<Difference> all) {
        return largest(all).map(largest -> named(largest, all, List.of()));
    }

    private Optional<TrueProblem> label() {
        List<Difference> all = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            for (SpeedRange speed : SpeedRange.values()) {
                difference(phase, speed).ifPresent(all::add);
            }
        }
        return largest(all).map(largest -> named(largest, all, corners(largest.phase(), largest.rad())));
    }

    private static Optional<Difference> largest(List<Difference> all) {
        return all.stream().max(Comparator.comparingDouble(Difference::size));
    }

    private static TrueProblem named(Difference largest, List<Difference> all, List<Integer> corners) {
        double top = largest.rad();
        Set<SpeedRange> speeds = ProblemWords.speeds(largest.speed(), speed -> share(largest, all, speed));
        Set<Phase> phases = EnumSet.of(largest.phase());
        all.stream()
                .filter(difference ->
                        speeds.contains(difference.speed()) && ProblemWords.sharesPhase(difference.share(top)))
                .forEach(difference -> phases.add(difference.phase()));
        boolean weak = largest.size() < Math.max(LEAST_RAD, 2.0 * largest.errorRad());
        return new TrueProblem(
                largest.phase(),
                speeds.contains(SpeedRange.ALL) ? SpeedRange.ALL : largest.speed(),
                top > 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER,
                phases,
                speeds,
                largest.size(),
                largest.errorRad(),
                weak,
                corners);
    }

    /** Zero when there is no such corner. */
    private static double share(Difference largest, List<Difference> all, SpeedRange speed) {
        return all.stream()
                .filter(other -> other.phase() == largest.phase() && other.speed() == speed)
                .mapToDouble(other -> other.share(largest.rad()))
                .findFirst()
                .orElse(0.0);
    }

    private List<Integer> corners(Phase phase, double top) {
        List<Integer> corners = new ArrayList<>();
        for (CornerPhases corner : faulty.map().corners()) {
            int number = corner.corner().number();
            boolean shows = faulty.cell(phase, number)
                    .flatMap(cell -> balanced.cell(phase, number).map(other -> cell.balanceRad() - other.balanceRad()))
                    .filter(rad -> rad / top >= SHOWS)
                    .isPresent();
            if (shows) {
                corners.add(number);
            }
        }
        return corners;
    }

    private Optional<Difference> difference(Phase phase, SpeedRange speed) {
        Optional<BalanceTable.Cell> with = faulty.cell(phase, corner -> speed.takes(corner.speed()));
        Optional<BalanceTable.Cell> without = balanced.cell(phase, corner -> speed.takes(corner.speed()));
        return with.filter(cell -> cell.timeS() >= LEAST_S && cell.lateralMps2() >= LEAST_LATERAL_MPS2)
                .filter(cell -> without.isPresent())
                .map(cell -> new Difference(phase, speed, repeated(phase, speed), cell.errorRad()))
                .filter(difference -> Double.isFinite(difference.rad()));
    }

    /** What repeats round the lap: the median over the corners, each with its lateral acceleration and time, rad. */
    private double repeated(Phase phase, SpeedRange speed) {
        WeightedMedian median = new WeightedMedian();
        for (CornerPhases corner : faulty.map().corners()) {
            int number = corner.corner().number();
            if (speed.takes(corner.speed())) {
                faulty.cell(phase, number)
                        .ifPresent(cell -> balanced.cell(phase, number)
                                .ifPresent(other -> median.add(
                                        cell.balanceRad() - other.balanceRad(), cell.lateralMps2() * cell.timeS())));
            }
        }
        return median.value();
    }
}
