package setwright.core.judgement;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hipparchus.distribution.continuous.NormalDistribution;
import setwright.core.car.GripLimit;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Finding.Cause;
import setwright.core.numerics.Robust;

/*
 * Design note. Some problems never let an axle go: the car just pushes, or just turns more than it should. The excess of
 * the balance over the reference tells, corner by corner, but only where the tyres work: what bars and wings do grows with
 * about the fourth power of the grip used (a tenth of roll stiffness share: 0.045, 0.18, 0.56 degrees at 44, 67, 89 % of
 * the limit with the 1987 tyre set), so that each corner's excess is read as limit excess times that shape. A robust
 * regression of the excess on the shape, and on the shape times the air's share of the load, gives the limit excess in
 * slow and fast corners.
 *
 * A healthy car is not neutral: its front reaches the limit about one setup step before its rear, and a little sooner in
 * fast corners, since the centre of pressure is kept behind the centre of gravity (common practice; sizes are our own
 * estimate). The reference is uncertain too: by about 0.5 degrees for the level (tyres of unlike size and stiffness near
 * their limits, steering compliance) and 0.3 degrees for how it changes with speed (the growth of downforce is estimated
 * from the same laps). These enter as priors, so that a finding needs an effect clear of them. What grows with v² points at
 * the air; what does not, at the mechanical balance.
 */

/** Finds the problems that show as a level of balance, in all corners or at one end of the speed range. */
final class LevelPattern {
    private static final double LEVEL_DOUBT_RAD = Math.toRadians(0.5);
    private static final double CONTRAST_DOUBT_RAD = Math.toRadians(0.3);
    /** Limit excess of a healthy car, and how much of it fast corners have more than slow ones. */
    private static final double HEALTHY_LEVEL_RAD = Yardstick.BALANCE_RAD;

    private static final double HEALTHY_CONTRAST_RAD = 0.5 * Yardstick.BALANCE_RAD;
    /** What a healthy car may differ by: prior width of the true excess. */
    private static final double USUAL_EXCESS_RAD = Math.toRadians(0.5);
    /** An effect below half a typical setup change is not worth a change. */
    private static final double LEAST_EFFECT_RAD = 0.5 * Yardstick.BALANCE_RAD;

    private static final double FULL_USE = 0.9;
    private static final double SHAPE_POWER = 3.6;
    /** Below it a corner says nothing about the limit. */
    private static final double LEAST_SHAPE = 0.2;

    private static final int FEWEST_CORNERS = 5;
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private LevelPattern() {}

    /** One corner's excess in a phase, and how much of the limit excess its use of the grip lets show. */
    private record Point(int corner, SpeedClass speed, double airShare, double excess, double shape) {}

    /** A limit excess with the probability that it is worth a change. */
    private record Effect(double size, double width, double probability) {

        /** Shrinks an estimate toward a healthy car by its doubt. */
        static Effect of(double estimate, double doubt) {
            double prior = USUAL_EXCESS_RAD * USUAL_EXCESS_RAD;
            double shrink = prior / (prior + doubt * doubt);
            double belief = shrink * estimate;
            double width = Math.sqrt(shrink) * doubt;
            return new Effect(
                    belief, width, NORMAL.cumulativeProbability((Math.abs(belief) - LEAST_EFFECT_RAD) / width));
        }
    }

    static List<Finding> find(List<CornerPass> passes, GripLimit grip, int laps) {
        List<Finding> findings = new ArrayList<>();
        for (Phase phase : List.of(Phase.MID)) {
            List<Point> points = points(passes, phase, grip);
            if (points.size() >= FEWEST_CORNERS) {
                Optional<Finding> contrast = contrast(passes, points, phase, laps);
                contrast.or(() -> level(passes, points, phase, laps)).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static List<Point> points(List<CornerPass> passes, Phase phase, GripLimit grip) {
        Map<Integer, List<CornerPass>> byCorner = passes.stream()
                .filter(pass -> pass.phase(phase).isPresent())
                .collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        List<Point> points = new ArrayList<>();
        byCorner.forEach((corner, here) -> {
            List<PhaseBalance> balances =
                    here.stream().flatMap(pass -> pass.phase(phase).stream()).toList();
            double shape = Robust.median(
                    balances.stream().mapToDouble(LevelPattern::shape).toArray());
            if (balances.size() >= 3 && shape >= LEAST_SHAPE) {
                points.add(new Point(
                        corner,
                        here.get(0).speedClass(),
                        grip.airShare(Robust.median(balances.stream()
                                .mapToDouble(PhaseBalance::speedMps)
                                .toArray())),
                        Robust.median(balances.stream()
                                .mapToDouble(PhaseBalance::excessRad)
                                .toArray()),
                        shape));
            }
        });
        return points;
    }

    private static double shape(PhaseBalance balance) {
        return Math.pow(Math.max(balance.frontUse(), balance.rearUse()) / FULL_USE, SHAPE_POWER);
    }

    /** The change of the limit excess from the slowest to the fastest corners. */
    private static Optional<Finding> contrast(List<CornerPass> passes, List<Point> points, Phase phase, int laps) {
        double[] air = points.stream().mapToDouble(Point::airShare).toArray();
        double low = Robust.quantile(air, 0.1);
        double high = Robust.quantile(air, 0.9);
        boolean bothEnds = points.stream().anyMatch(point -> point.speed() == SpeedClass.HIGH)
                && points.stream().anyMatch(point -> point.speed() != SpeedClass.HIGH);
        if (!bothEnds || !(high - low > 0.05)) {
            return Optional.empty();
        }
        double[] level = points.stream().mapToDouble(Point::shape).toArray();
        double[] slope = points.stream()
                .mapToDouble(point -> point.shape() * (point.airShare() - low) / (high - low))
                .toArray();
        Robust.Fit fit = Robust.regress(
                new double[][] {level, slope},
                points.stream().mapToDouble(Point::excess).toArray());
        double slow = fit.coefficient(0);
        double change = fit.coefficient(1);
        double unusual = change - HEALTHY_CONTRAST_RAD;
        double doubt = Math.hypot(fit.standardError(1), CONTRAST_DOUBT_RAD);
        Effect effect = Effect.of(unusual, doubt);
        boolean fast = Math.abs(slow + change - HEALTHY_LEVEL_RAD - HEALTHY_CONTRAST_RAD)
                >= Math.abs(slow - HEALTHY_LEVEL_RAD);
        BalanceSign sign = (unusual > 0.0) == fast ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER;
        double direction = sign == BalanceSign.UNDERSTEER ? 1.0 : -1.0;
        List<Point> shown = points.stream()
                .filter(point -> fast ? point.speed() != SpeedClass.LOW : point.speed() != SpeedClass.HIGH)
                .filter(point -> direction * (point.excess() - HEALTHY_LEVEL_RAD * point.shape()) > 0.0)
                .toList();
        SpeedClass end = fast ? SpeedClass.HIGH : SpeedClass.LOW;
        boolean there = shown.size() >= 2 && shown.stream().anyMatch(point -> point.speed() == end);
        if (!there) {
            return Optional.empty();
        }
        String reason = String.format(
                Locale.ROOT,
                "In the %s the front slips %.2f deg more than a balanced car's at the limit of the slowest corners, and %.2f"
                        + " deg more in the fastest: it changes by %.2f deg (doubt %.2f deg) with the air's share of the"
                        + " load, which a mechanical cause does not.",
                phase.words(),
                Math.toDegrees(slow),
                Math.toDegrees(slow + change),
                Math.toDegrees(change),
                Math.toDegrees(doubt));
        return Optional.of(finding(
                passes, shown, phase, fast ? SpeedRange.HIGH : SpeedRange.LOW, direction, effect, laps, reason));
    }

    private static Optional<Finding> level(List<CornerPass> passes, List<Point> points, Phase phase, int laps) {
        Robust.Fit fit = Robust.regress(
                new double[][] {points.stream().mapToDouble(Point::shape).toArray()},
                points.stream().mapToDouble(Point::excess).toArray());
        double level = fit.coefficient(0);
        double doubt = Math.hypot(fit.standardError(0), LEVEL_DOUBT_RAD);
        double unusual = level - HEALTHY_LEVEL_RAD;
        double direction = Math.signum(unusual);
        List<Point> shown = points.stream()
                .filter(point -> direction * (point.excess() - HEALTHY_LEVEL_RAD * point.shape()) > 0.0)
                .toList();
        if (shown.size() < 2) {
            return Optional.empty();
        }
        String reason = String.format(
                Locale.ROOT,
                "In the %s the front slips %.2f deg %s than a balanced car's of these dimensions would at the limit (doubt"
                        + " %.2f deg), in %d of %d corners.",
                phase.words(),
                Math.toDegrees(Math.abs(level)),
                level > 0.0 ? "more" : "less",
                Math.toDegrees(doubt),
                shown.size(),
                points.size());
        return Optional.of(
                finding(passes, shown, phase, SpeedRange.ALL, direction, Effect.of(unusual, doubt), laps, reason));
    }

    private static Finding finding(
            List<CornerPass> passes,
            List<Point> shown,
            Phase phase,
            SpeedRange speed,
            double direction,
            Effect effect,
            int laps,
            String reason) {
        Set<Integer> corners = shown.stream().map(Point::corner).collect(Collectors.toSet());
        List<CornerPass> there = passes.stream()
                .filter(pass ->
                        corners.contains(pass.corner()) && pass.phase(phase).isPresent())
                .toList();
        List<PhaseBalance> showing = there.stream()
                .flatMap(pass -> pass.phase(phase).stream())
                .filter(balance -> direction * (balance.excessRad() - HEALTHY_LEVEL_RAD * shape(balance)) > 0.0)
                .toList();
        Trigger likely = phase == Phase.ENTRY ? Trigger.TURN_IN : Trigger.NONE;
        Map<Trigger, Double> triggers = new EnumMap<>(Trigger.class);
        for (Trigger trigger : Trigger.values()) {
            triggers.put(trigger, trigger == likely ? 0.7 : 0.05);
        }
        double size = Math.abs(effect.size());
        return new Finding(
                phase,
                speed,
                direction > 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER,
                likely,
                triggers,
                Cause.CAR,
                corners.stream().sorted().toList(),
                showing.size() / (double) there.size(),
                true,
                effect.probability(),
                size,
                Math.max(0.0, size - 1.96 * effect.width()),
                size + 1.96 * effect.width(),
                PriceEstimator.price(
                        showing.stream()
                                .mapToDouble(balance -> balance.timeS() * Yardstick.timeShare(size))
                                .toArray(),
                        laps),
                List.of(
                        reason,
                        String.format(
                                Locale.ROOT,
                                "It shows in %d of %d passes through these corners.",
                                showing.size(),
                                there.size())));
    }
}
