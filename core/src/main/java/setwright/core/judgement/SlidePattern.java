package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.Slide;
import setwright.core.judgement.BalanceBelief.Estimate;
import setwright.core.judgement.Finding.Cause;
import setwright.core.numerics.Robust;

/**
 * Finds the problems that show as the rear axle letting go, lap after lap. The front at its limit in mid-corner is how a
 * good car is driven: for it only the level tells ({@link LevelPattern}).
 */
final class SlidePattern {
    /** A corner counts as showing it when that is more likely than not. */
    private static final double SHOWN = 0.5;
    /** Share of the corners that have the phase, from which on a problem counts as lap-wide. */
    private static final double LAP_WIDE_SHARE = 0.25;
    /** How well the size of slides tells the balance: about half of a typical setup change (our choice). */
    private static final double SLIDE_DOUBT_RAD = Math.toRadians(0.3);
    /**
     * A typical setup change: how far a rear swings once it goes is up to the driver who catches it, and says no more about the car. Of 60
     * balanced cars of the truth bench's tuning seed two show slides of 2.3 and 2.8 degrees, lap after lap.
     */
    private static final double MOST_TOLD_RAD = Yardstick.BALANCE_RAD;

    /** Slides against what is believed otherwise: to be suspected, below what is shown as a finding. */
    private static final double MOST_AGAINST = 0.6;

    private final List<CornerPass> passes;
    private final List<CornerPass> before;
    private final List<DrivingFault> habits;
    private final BalanceBelief belief;
    private final TriggerJudge judge;
    private final PriceEstimator prices;

    private SlidePattern(
            List<CornerPass> passes,
            List<CornerPass> before,
            List<DrivingFault> habits,
            BalanceBelief belief,
            TriggerJudge judge,
            PriceEstimator prices) {
        this.passes = passes;
        this.before = before;
        this.habits = habits;
        this.belief = belief;
        this.judge = judge;
        this.prices = prices;
    }

    /**
     * Finds them.
     *
     * @param before  passes of the baseline; empty without one
     * @param habits  of the driver
     * @param belief  what is believed of the balance otherwise: a rear that steps out of a car that pushes is no reason to change it
     */
    static List<Finding> find(
            List<CornerPass> passes,
            List<CornerPass> before,
            List<DrivingFault> habits,
            BalanceBelief belief,
            TriggerJudge judge,
            PriceEstimator prices) {
        SlidePattern pattern = new SlidePattern(passes, before, habits, belief, judge, prices);
        return Stream.of(Phase.values())
                .flatMap(phase -> pattern.at(phase).stream())
                .toList();
    }

    /** How often the rear let go in each corner that has a phase. */
    private static List<Shares.Count> counts(List<CornerPass> passes, Phase phase) {
        Map<Integer, List<CornerPass>> byCorner = passes.stream()
                .filter(pass -> pass.phase(phase).isPresent())
                .collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        List<Shares.Count> counts = new ArrayList<>();
        byCorner.forEach((corner, here) -> counts.add(new Shares.Count(
                corner, (int) here.stream().filter(pass -> shows(pass, phase)).count(), here.size())));
        return counts;
    }

    private Optional<Finding> at(Phase phase) {
        List<Shares.Count> counts = counts(passes, phase);
        double pooled = Shares.pooled(counts);
        double[] mostly = counts.stream()
                .mapToDouble(count -> Shares.mostly(count, pooled))
                .toArray();
        Set<Integer> corners = new TreeSet<>();
        double alone = 0.0;
        for (int i = 0; i < mostly.length; i++) {
            if (mostly[i] > SHOWN) {
                corners.add(counts.get(i).corner());
                alone = mostly[i];
            }
        }
        if (corners.isEmpty()) {
            return Optional.empty();
        }
        List<CornerPass> there = passes.stream()
                .filter(pass -> corners.contains(pass.corner()))
                .filter(pass -> pass.phase(phase).isPresent())
                .toList();
        List<CornerPass> showing =
                there.stream().filter(pass -> shows(pass, phase)).toList();
        Map<Integer, List<Slide>> slidesByCorner = new TreeMap<>();
        for (CornerPass pass : showing) {
            rearSlides(pass, phase)
                    .forEach(slide -> slidesByCorner
                            .computeIfAbsent(pass.corner(), c -> new ArrayList<>())
                            .add(slide));
        }
        boolean lapWide = corners.size() >= 2 && corners.size() >= LAP_WIDE_SHARE * counts.size();
        double probability = corners.size() >= 2 ? Shares.atLeastTwo(mostly) : alone;
        double[] sizes = slidesByCorner.values().stream()
                .flatMap(List::stream)
                .mapToDouble(Slide::sizeRad)
                .toArray();
        double share = showing.size() / (double) there.size();
        Cause cause = cause(phase, showing, passes);
        SpeedRange speed = SpeedRanges.of(passes, corners, phase);
        TriggerEvidence evidence = judge.ofSlides(phase, speed, slidesByCorner.values(), cause == Cause.CAR);
        Map<Trigger, Double> triggers = evidence.probabilities();
        double car = cause == Cause.DRIVER
                ? 1.0
                : corners.size() < 2
                        ? ofTheCar(phase, corners.iterator().next())
                        : worthAChange(phase, speed, Robust.median(sizes));
        Finding finding = new Finding(
                phase,
                speed,
                BalanceSign.OVERSTEER,
                TriggerWords.mostProbable(triggers),
                triggers,
                cause,
                List.copyOf(corners),
                share,
                lapWide,
                probability * car,
                Robust.median(sizes),
                Robust.quantile(sizes, 0.025),
                Robust.quantile(sizes, 0.975),
                prices.slide(phase, corners, share, Robust.median(sizes)),
                why(phase, showing, there, sizes, evidence, cause, counts.size(), corners.size()));
        return Optional.of(finding);
    }

    /**
     * Probability that a rear that lets go in one corner only says something of the car: that it did not in most passes of the baseline
     * already. A car in good order does, in one corner or other. What a habit makes it do is to be told as his.
     */
    private double ofTheCar(Phase phase, int corner) {
        if (DriverCause.mayStandBehind(phase, habits)) {
            return 1.0;
        }
        if (before.isEmpty()) {
            return Certainty.OF_THE_CAR_IN_ONE_CORNER;
        }
        List<Shares.Count> then = counts(before, phase);
        return then.stream()
                .filter(count -> count.corner() == corner)
                .mapToDouble(count -> 1.0 - Shares.mostly(count, Shares.pooled(then)))
                .findFirst()
                .orElse(1.0);
    }

    /** Probability that the car oversteers by more than is worth a change, given that its rear steps out by so much. */
    private double worthAChange(Phase phase, SpeedRange speed, double sizeRad) {
        Estimate level = belief.at(phase, speed).orElse(BalanceBelief.UNKNOWN);
        if (belief.measured()) {
            // a car in good order slides as well: what it does more of is in the level already
            return level.meanRad() < 0.0 ? level.beyond(Yardstick.LEAST_RAD) : 0.0;
        }
        // the least that counts as a slide says nothing about the car: good drivers go that far
        double beyond = sizeRad - Slide.LEAST_RAD;
        if (level.meanRad() > 0.0) {
            // two witnesses against each other: nobody knows, and a change is no way to find out
            double sure = level.after(-beyond, SLIDE_DOUBT_RAD).beyond(Yardstick.LEAST_RAD);
            return Math.min(sure, MOST_AGAINST);
        }
        return level.after(-Math.min(beyond, MOST_TOLD_RAD), SLIDE_DOUBT_RAD).beyond(Yardstick.LEAST_RAD);
    }

    /**
     * A rear that lets go under a brake that is still held in mid-corner is the driver's doing before it is the car's: in
     * most of these passes, or as a habit all round the lap.
     */
    private static Cause cause(Phase phase, List<CornerPass> showing, List<CornerPass> all) {
        boolean braked = phase == Phase.ENTRY || phase == Phase.MID;
        return braked && (mostlyHeld(showing) || mostlyHeld(all)) ? Cause.DRIVER : Cause.CAR;
    }

    private static boolean mostlyHeld(List<CornerPass> passes) {
        List<CornerPass> braked = passes.stream()
                .filter(pass -> pass.events().brakeOff().isPresent())
                .toList();
        long held = braked.stream()
                .filter(pass -> DrivingFaultFinder.brakeHeld(pass.habits()))
                .count();
        return held > 0.5 * braked.size();
    }

    /**
     * Tells whether the rear let go in a phase in a way that counts. Out of a slow corner a driven rear axle always works at
     * its limit (common practice), so that on the exit only a slide counts that the driver had to answer with hands or foot.
     */
    static boolean shows(CornerPass pass, Phase phase) {
        boolean answered =
                phase != Phase.EXIT || DrivingFaultFinder.corrected(pass) || DrivingFaultFinder.lifted(pass.habits());
        return answered && pass.slides(Slide.Axle.REAR, phase);
    }

    static Stream<Slide> rearSlides(CornerPass pass, Phase phase) {
        return pass.slides().stream().filter(slide -> slide.axle() == Slide.Axle.REAR && slide.phase() == phase);
    }

    private static List<String> why(
            Phase phase,
            List<CornerPass> showing,
            List<CornerPass> there,
            double[] sizes,
            TriggerEvidence evidence,
            Cause cause,
            int corners,
            int shown) {
        List<String> why = new ArrayList<>();
        why.add(String.format(
                Locale.ROOT,
                "In %d of %d passes through %d of the %d corners that have this phase, the rear axle lets go in the %s:"
                        + " front minus rear slip dips by %.1f deg and comes back while the car still corners hard.",
                showing.size(),
                there.size(),
                shown,
                corners,
                phase.words(),
                Math.toDegrees(Robust.median(sizes))));
        why.add(TriggerWords.sentence(evidence));
        long corrected = showing.stream().filter(DrivingFaultFinder::corrected).count();
        if (corrected > 0) {
            why.add(String.format(
                    Locale.ROOT, "The hands answered with a correction in %d of these passes.", corrected));
        }
        if (cause == Cause.DRIVER) {
            why.add("The brake was still held near the most lateral acceleration in most of these passes: the foot"
                    + " unloads the rear there, whatever the car. Technique comes first.");
        }
        return why;
    }
}
