package setwright.core.judgement;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.NormalDistribution;
import setwright.core.car.GripLimit;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Finding.Cause;
import setwright.core.numerics.Robust;

/*
 * Design note. Some problems never let an axle go; the car just pushes, or just turns more than it should. The level of
 * the excess balance over the reference tells, but the reference itself is uncertain: by about 0.5 degrees for the level
 * (tyres of unlike size and stiffness near their limits, steering compliance), and by about 0.3 degrees for how it changes
 * with speed (the growth of downforce is estimated from the same laps). Both are our own estimates, entered as priors, so
 * that a finding needs an effect clear of them. What grows with v² points at the air; what does not, at the mechanical
 * balance.
 */

/** Finds the problems that show as a level of balance, in all corners or at one end of the speed range. */
final class LevelPattern {
    private static final double LEVEL_DOUBT_RAD = Math.toRadians(0.5);
    private static final double CONTRAST_DOUBT_RAD = Math.toRadians(0.3);
    /** What a healthy car may differ by: prior width of the true excess. */
    private static final double USUAL_EXCESS_RAD = Math.toRadians(0.5);
    /** An effect below half a typical setup change is not worth a change. */
    private static final double LEAST_EFFECT_RAD = 0.5 * Yardstick.BALANCE_RAD;
    /** An axle that works below this share of its grip shows no limit balance. */
    private static final double WORKING = 0.6;

    private static final int FEWEST_CORNERS = 4;
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private LevelPattern() {}

    /** One corner's excess in a phase. */
    private record Point(int corner, double airShare, double excess, double error) {}

    static List<Finding> find(List<CornerPass> passes, GripLimit grip, int laps) {
        List<Finding> findings = new ArrayList<>();
        for (Phase phase : List.of(Phase.ENTRY, Phase.MID, Phase.EXIT)) {
            List<Point> points = points(passes, phase, grip);
            Optional<Finding> contrast = contrast(passes, points, phase, laps);
            contrast.ifPresent(findings::add);
            if (contrast.isEmpty()) {
                level(passes, points, phase, laps).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static List<Point> points(List<CornerPass> passes, Phase phase, GripLimit grip) {
        Map<Integer, List<PhaseBalance>> byCorner = new TreeMap<>();
        for (CornerPass pass : passes) {
            pass.phase(phase)
                    .filter(balance -> Math.max(balance.frontUse(), balance.rearUse()) > WORKING)
                    .ifPresent(balance -> byCorner.computeIfAbsent(pass.corner(), c -> new ArrayList<>())
                            .add(balance));
        }
        List<Point> points = new ArrayList<>();
        byCorner.forEach((corner, balances) -> {
            if (balances.size() >= 3) {
                double[] excess =
                        balances.stream().mapToDouble(PhaseBalance::excessRad).toArray();
                double speed = Robust.median(
                        balances.stream().mapToDouble(PhaseBalance::speedMps).toArray());
                points.add(new Point(
                        corner,
                        grip.airShare(speed),
                        Robust.median(excess),
                        1.25 * Robust.scaledMad(excess) / Math.sqrt(excess.length)));
            }
        });
        return points;
    }

    /** Slope of the excess over the air's share of the load, with corners scattering about the line. */
    private static Optional<Finding> contrast(List<CornerPass> passes, List<Point> points, Phase phase, int laps) {
        double[] x = points.stream().mapToDouble(Point::airShare).toArray();
        double[] y = points.stream().mapToDouble(Point::excess).toArray();
        double low = Robust.quantile(x, 0.1);
        double high = Robust.quantile(x, 0.9);
        if (points.size() < FEWEST_CORNERS || !(high - low > 0.05)) {
            return Optional.empty();
        }
        Robust.Line line = Robust.theilSen(x, y);
        double[] residual = new double[x.length];
        double mean = 0.0;
        double spread = 0.0;
        for (int i = 0; i < x.length; i++) {
            residual[i] = y[i] - line.intercept() - line.slope() * x[i];
            mean += x[i] / x.length;
        }
        for (double value : x) {
            spread += (value - mean) * (value - mean);
        }
        // efficiency of the median of slopes against least squares on normal data: 0.91 or better (common practice)
        double slopeError = Robust.scaledMad(residual) / Math.sqrt(spread) / 0.91;
        double change = line.slope() * (high - low);
        double doubt = Math.hypot(slopeError * (high - low), CONTRAST_DOUBT_RAD);
        double atHigh = line.intercept() + line.slope() * high;
        double atLow = line.intercept() + line.slope() * low;
        double shrink = USUAL_EXCESS_RAD * USUAL_EXCESS_RAD / (USUAL_EXCESS_RAD * USUAL_EXCESS_RAD + doubt * doubt);
        double belief = shrink * change;
        double width = Math.sqrt(shrink) * doubt;
        double probability = 1.0 - NORMAL.cumulativeProbability((LEAST_EFFECT_RAD - Math.abs(belief)) / width);
        if (probability < 0.5) {
            return Optional.empty();
        }
        boolean fast = Math.abs(atHigh) >= Math.abs(atLow);
        double there = fast ? atHigh : atLow;
        BalanceSign sign = (fast ? change : -change) > 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER;
        double cut = low + 0.5 * (high - low);
        double direction = sign == BalanceSign.UNDERSTEER ? 1.0 : -1.0;
        List<Integer> corners = points.stream()
                .filter(point -> fast ? point.airShare() >= cut : point.airShare() < cut)
                .filter(point -> direction * point.excess() > LEAST_EFFECT_RAD)
                .map(Point::corner)
                .toList();
        if (corners.size() < 2 || direction * there < LEAST_EFFECT_RAD) {
            return Optional.empty();
        }
        String reason = String.format(
                Locale.ROOT,
                "In the %s the excess of front over rear slip goes from %.2f deg in the slowest corners to %.2f deg in the"
                        + " fastest: %.2f deg of change with the air's share of the load (doubt %.2f deg), which a"
                        + " mechanical cause does not make.",
                phase.words(),
                Math.toDegrees(atLow),
                Math.toDegrees(atHigh),
                Math.toDegrees(change),
                Math.toDegrees(doubt));
        return Optional.of(finding(
                passes,
                corners,
                phase,
                fast ? SpeedRange.HIGH : SpeedRange.LOW,
                sign,
                probability,
                Math.abs(belief),
                width,
                laps,
                reason));
    }

    private static Optional<Finding> level(List<CornerPass> passes, List<Point> points, Phase phase, int laps) {
        if (points.size() < FEWEST_CORNERS) {
            return Optional.empty();
        }
        double[] y = points.stream().mapToDouble(Point::excess).toArray();
        double level = Robust.median(y);
        double doubt = Math.hypot(1.25 * Robust.scaledMad(y) / Math.sqrt(y.length), LEVEL_DOUBT_RAD);
        double shrink = USUAL_EXCESS_RAD * USUAL_EXCESS_RAD / (USUAL_EXCESS_RAD * USUAL_EXCESS_RAD + doubt * doubt);
        double belief = shrink * level;
        double width = Math.sqrt(shrink) * doubt;
        double probability = 1.0 - NORMAL.cumulativeProbability((LEAST_EFFECT_RAD - Math.abs(belief)) / width);
        double direction = Math.signum(level);
        List<Integer> corners = points.stream()
                .filter(point -> direction * point.excess() > LEAST_EFFECT_RAD)
                .map(Point::corner)
                .toList();
        if (probability < 0.5 || corners.size() < 2) {
            return Optional.empty();
        }
        String reason = String.format(
                Locale.ROOT,
                "In the %s the front slips %.2f deg %s than a balanced car of these dimensions would (doubt %.2f deg), in %d"
                        + " of %d corners.",
                phase.words(),
                Math.toDegrees(Math.abs(level)),
                level > 0.0 ? "more" : "less",
                Math.toDegrees(doubt),
                corners.size(),
                points.size());
        return Optional.of(finding(
                passes,
                corners,
                phase,
                SpeedRange.ALL,
                level > 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER,
                probability,
                Math.abs(belief),
                width,
                laps,
                reason));
    }

    private static Finding finding(
            List<CornerPass> passes,
            List<Integer> corners,
            Phase phase,
            SpeedRange speed,
            BalanceSign sign,
            double probability,
            double size,
            double width,
            int laps,
            String reason) {
        double direction = sign == BalanceSign.UNDERSTEER ? 1.0 : -1.0;
        Set<Integer> set = Set.copyOf(corners);
        List<CornerPass> there = passes.stream()
                .filter(pass -> set.contains(pass.corner()) && pass.phase(phase).isPresent())
                .toList();
        List<CornerPass> showing = there.stream()
                .filter(pass -> pass.phase(phase)
                        .filter(balance -> direction * balance.excessRad() > LEAST_EFFECT_RAD)
                        .isPresent())
                .toList();
        Map<Trigger, Double> triggers = new EnumMap<>(Trigger.class);
        for (Trigger trigger : Trigger.values()) {
            triggers.put(trigger, 0.05);
        }
        Trigger likely = switch (phase) {
            case BRAKING -> Trigger.BRAKE_APPLICATION;
            case ENTRY -> Trigger.TURN_IN;
            case MID -> Trigger.NONE;
            case EXIT -> speed == SpeedRange.HIGH ? Trigger.NONE : Trigger.THROTTLE_PICK_UP;
        };
        triggers.put(likely, 0.7);
        return new Finding(
                phase,
                speed,
                sign,
                likely,
                triggers,
                Cause.CAR,
                corners,
                showing.size() / (double) there.size(),
                true,
                probability,
                size,
                Math.max(0.0, size - 1.96 * width),
                size + 1.96 * width,
                PriceEstimator.price(passes, showing, phase, laps),
                List.of(
                        reason,
                        String.format(
                                Locale.ROOT,
                                "It shows in %d of %d passes through these corners.",
                                showing.size(),
                                there.size())));
    }
}
