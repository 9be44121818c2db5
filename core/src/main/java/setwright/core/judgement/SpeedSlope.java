package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.BalanceBelief.Estimate;
import setwright.core.numerics.Robust;
import setwright.core.replay.Effect;
import setwright.core.standing.ItemStanding;
import setwright.core.standing.SetupStanding;

/*
 * Design note. Corners are the groups: laps within one differ little, what the reference leaves unexplained differs from corner to
 * corner, and so does what the setup does there. Two witnesses again, each a straight line over v²: the measured excess (Huber's
 * regression, each corner's scatter no smaller than what the reference leaves) and what the unusual items do in each corner by
 * the replay, whose slope has the doubt of the items. Their slopes are averaged by precision, the level is the belief's.
 *
 * The two causes are two values of the slope: none for a mechanical one, level over mean v² for one that grows as lift does. Their
 * odds are those of the slope found, even before it is looked at.
 */

/** The deviation of the balance in one phase over the square of the speed. */
final class SpeedSlope {
    /** Fewer corners leave no line to speak of. */
    private static final int FEWEST_CORNERS = 3;
    /** What a sheet does not say, from corner to corner. */
    private static final double UNLISTED_RAD = Math.toRadians(0.1);

    private static final double SURE = 1.96;

    private final Estimate slope;
    private final Estimate level;
    private final double meanSquare;

    private SpeedSlope(Estimate slope, Estimate level, double meanSquare) {
        this.slope = slope;
        this.level = level;
        this.meanSquare = meanSquare;
    }

    /** One corner: v², what the laps show beyond a healthy car, and its weight in the level. */
    private record Group(int corner, double square, double excess, double weight) {}

    /**
     * Fits it.
     *
     * @param level  of the deviation in this phase over all corners, rad
     * @return empty with fewer than three corners of different speed
     */
    static Optional<SpeedSlope> of(List<CornerPass> passes, SetupStanding standing, Phase phase, Estimate level) {
        Reference reference = Reference.of(standing);
        List<Group> groups = groups(passes, phase, reference);
        double weights = groups.stream().mapToDouble(Group::weight).sum();
        double mean = groups.stream()
                        .mapToDouble(group -> group.weight() * group.square())
                        .sum()
                / weights;
        double middle = groups.stream().mapToDouble(Group::square).average().orElse(0.0);
        double spread = groups.stream()
                .mapToDouble(group -> (group.square() - middle) * (group.square() - middle))
                .sum();
        if (groups.size() < FEWEST_CORNERS || !(spread > 0.0)) {
            return Optional.empty();
        }
        Estimate measured = measured(groups, middle, spread, reference);
        Estimate slope = standing.isUnknown()
                ? measured
                : bySetup(groups, standing, phase, middle, spread).after(measured.meanRad(), measured.deviationRad());
        return Optional.of(new SpeedSlope(slope, level, mean));
    }

    private static List<Group> groups(List<CornerPass> passes, Phase phase, Reference reference) {
        Map<Integer, List<CornerPass>> byCorner =
                passes.stream().collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        List<Group> groups = new ArrayList<>();
        byCorner.forEach((corner, here) -> {
            List<PhaseBalance> known = here.stream()
                    .flatMap(pass -> pass.phase(phase).stream())
                    .filter(balance -> Double.isFinite(beyond(balance, reference)))
                    .toList();
            if (!known.isEmpty()) {
                double speed = Robust.median(
                        known.stream().mapToDouble(PhaseBalance::speedMps).toArray());
                groups.add(new Group(
                        corner,
                        speed * speed,
                        Robust.median(known.stream()
                                .mapToDouble(balance -> beyond(balance, reference))
                                .toArray()),
                        known.stream()
                                        .mapToDouble(balance -> Math.abs(balance.lateralMps2()) * balance.timeS())
                                        .sum()
                                / known.size()));
            }
        });
        return groups;
    }

    /** What the laps show beyond a car in good order, rad. */
    private static double beyond(PhaseBalance balance, Reference reference) {
        return balance.excessRad() - reference.healthyRad() * BalanceCell.shownShare(balance);
    }

    /** Slope of the measured excess, rad/(m/s)². */
    private static Estimate measured(List<Group> groups, double middle, double spread, Reference reference) {
        double[] ones = new double[groups.size()];
        double[] squares = new double[groups.size()];
        double[] excess = new double[groups.size()];
        for (int i = 0; i < ones.length; i++) {
            ones[i] = 1.0;
            squares[i] = groups.get(i).square() - middle;
            excess[i] = groups.get(i).excess();
        }
        Robust.Fit fit = Robust.regress(new double[][] {ones, squares}, excess);
        return new Estimate(
                fit.coefficient(1), Math.max(fit.standardError(1), reference.cellRad() / Math.sqrt(spread)));
    }

    /** Slope of what the unusual items do, rad/(m/s)², item by item, so that the doubt of each is known. */
    private static Estimate bySetup(
            List<Group> groups, SetupStanding standing, Phase phase, double middle, double spread) {
        double sum = 0.0;
        double square = UNLISTED_RAD * UNLISTED_RAD / spread;
        for (ItemStanding item : standing.items()) {
            double slope = groups.stream()
                    .mapToDouble(group -> (group.square() - middle) * item.balanceRad(group.corner(), phase) / spread)
                    .sum();
            double mixed = item.unusual() * (1.0 - item.unusual()) * slope * slope;
            double doubt = item.unusual() * slope * doubt(item, phase);
            sum += item.unusual() * slope;
            square += mixed + doubt * doubt;
        }
        return new Estimate(sum, Math.sqrt(square));
    }

    /** Spread of an item's effect as a share of it, at most 1. */
    private static double doubt(ItemStanding item, Phase phase) {
        return item.effect()
                .balance(phase, Optional.empty())
                .filter(effect -> effect.central() != 0.0)
                .map(SpeedSlope::share)
                .orElse(1.0);
    }

    private static double share(Effect effect) {
        return Math.min(1.0, effect.deviation() / Math.abs(effect.central()));
    }

    /** Returns what it says of the cause. */
    SpeedDependence dependence() {
        double direction = Math.signum(level.meanRad());
        double found = direction * slope.meanRad();
        double doubt = slope.deviationRad();
        double asLift = Math.abs(level.meanRad()) / meanSquare;
        double liftDoubt = Math.hypot(doubt, level.deviationRad() / meanSquare);
        // a slope beyond either value speaks for that one as if it lay on it: only what lies between can be either
        double within = Math.max(0.0, Math.min(found, asLift));
        double aero = density((within - asLift) / liftDoubt) / liftDoubt;
        double mechanical = density(within / doubt) / doubt;
        return new SpeedDependence(found, found - SURE * doubt, found + SURE * doubt, aero / (aero + mechanical));
    }

    private static double density(double standard) {
        return Math.exp(-0.5 * standard * standard);
    }
}
