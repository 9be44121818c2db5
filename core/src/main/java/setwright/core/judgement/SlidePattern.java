package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.Slide;
import setwright.core.judgement.Finding.Cause;
import setwright.core.numerics.Robust;

/** Finds the problems that show as one axle letting go, lap after lap. */
final class SlidePattern {
    /** A corner counts as showing it when that is more likely than not. */
    private static final double SHOWN = 0.5;
    /** Share of the corners that have the phase, from which on a problem counts as lap-wide. */
    private static final double LAP_WIDE_SHARE = 0.25;

    private SlidePattern() {}

    static List<Finding> find(List<CornerPass> passes, int laps) {
        List<Finding> findings = new ArrayList<>();
        // the front at its limit in mid-corner is how a good car is driven: only its level tells (LevelPattern)
        for (Phase phase : Phase.values()) {
            findings.addAll(at(passes, Slide.Axle.REAR, phase, laps));
        }
        return findings;
    }

    private static List<Finding> at(List<CornerPass> passes, Slide.Axle axle, Phase phase, int laps) {
        Map<Integer, List<CornerPass>> byCorner = passes.stream()
                .filter(pass -> pass.phase(phase).isPresent())
                .collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        List<Shares.Count> counts = new ArrayList<>();
        byCorner.forEach((corner, here) -> counts.add(new Shares.Count(
                corner,
                (int) here.stream().filter(pass -> shows(pass, axle, phase)).count(),
                here.size())));
        double pooled = Shares.pooled(counts);
        List<Shares.Count> shown = counts.stream()
                .filter(count -> Shares.mostly(count, pooled) > SHOWN)
                .toList();
        if (shown.isEmpty()) {
            return List.of();
        }
        Set<Integer> corners = shown.stream().map(Shares.Count::corner).collect(Collectors.toSet());
        List<CornerPass> there = passes.stream()
                .filter(pass -> corners.contains(pass.corner()))
                .filter(pass -> pass.phase(phase).isPresent())
                .toList();
        List<CornerPass> showing =
                there.stream().filter(pass -> shows(pass, axle, phase)).toList();
        Map<Integer, List<Slide>> slidesByCorner = new TreeMap<>();
        for (CornerPass pass : showing) {
            pass.slides().stream()
                    .filter(slide -> slide.axle() == axle && slide.phase() == phase)
                    .forEach(slide -> slidesByCorner
                            .computeIfAbsent(pass.corner(), c -> new ArrayList<>())
                            .add(slide));
        }
        List<Slide> slides =
                slidesByCorner.values().stream().flatMap(List::stream).toList();
        double[] each = counts.stream()
                .mapToDouble(count -> Shares.mostly(count, pooled))
                .toArray();
        boolean lapWide = shown.size() >= 2 && shown.size() >= LAP_WIDE_SHARE * counts.size();
        double probability = shown.size() >= 2 ? Shares.atLeastTwo(each) : Shares.mostly(shown.get(0), pooled);
        Map<Trigger, Double> triggers = TriggerJudge.probabilities(slidesByCorner.values());
        double[] sizes = slides.stream().mapToDouble(Slide::sizeRad).toArray();
        double share = showing.size() / (double) there.size();
        Cause cause = cause(axle, phase, showing, passes);
        BalanceSign sign = axle == Slide.Axle.REAR ? BalanceSign.OVERSTEER : BalanceSign.UNDERSTEER;
        Finding finding = new Finding(
                phase,
                SpeedRanges.of(passes, corners, phase),
                sign,
                mostProbable(triggers),
                triggers,
                cause,
                corners.stream().sorted().toList(),
                share,
                lapWide,
                probability,
                Robust.median(sizes),
                Robust.quantile(sizes, 0.025),
                Robust.quantile(sizes, 0.975),
                PriceEstimator.price(
                        showing.stream()
                                .mapToDouble(pass -> loss(pass, axle, phase))
                                .toArray(),
                        laps),
                why(axle, phase, showing, there, slides, triggers, cause, byCorner.size(), shown.size()));
        return List.of(finding);
    }

    /**
     * A rear that lets go under a brake that is still held in mid-corner is the driver's doing before it is the car's: in
     * most of these passes, or as a habit all round the lap.
     */
    private static Cause cause(Slide.Axle axle, Phase phase, List<CornerPass> showing, List<CornerPass> all) {
        boolean braked = axle == Slide.Axle.REAR && (phase == Phase.ENTRY || phase == Phase.MID);
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
     * Tells whether an axle let go in a phase in a way that counts. Out of a slow corner a driven rear axle always works at
     * its limit (common practice), so that on the exit only a slide counts that the driver had to answer with hands or foot.
     */
    private static boolean shows(CornerPass pass, Slide.Axle axle, Phase phase) {
        boolean answered = phase != Phase.EXIT
                || axle != Slide.Axle.REAR
                || DrivingFaultFinder.corrected(pass)
                || DrivingFaultFinder.lifted(pass.habits());
        return answered && pass.slides(axle, phase);
    }

    /** Time lost in a pass: the largest slide's imbalance over the phase it began in. */
    private static double loss(CornerPass pass, Slide.Axle axle, Phase phase) {
        double size = pass.slides().stream()
                .filter(slide -> slide.axle() == axle && slide.phase() == phase)
                .mapToDouble(Slide::sizeRad)
                .max()
                .orElse(0.0);
        double time = pass.phase(phase).map(PhaseBalance::timeS).orElse(0.0);
        return time * Yardstick.timeShare(size);
    }

    static Trigger mostProbable(Map<Trigger, Double> triggers) {
        return triggers.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(Trigger.NONE);
    }

    private static List<String> why(
            Slide.Axle axle,
            Phase phase,
            List<CornerPass> showing,
            List<CornerPass> there,
            List<Slide> slides,
            Map<Trigger, Double> triggers,
            Cause cause,
            int corners,
            int shown) {
        List<String> why = new ArrayList<>();
        why.add(String.format(
                Locale.ROOT,
                "In %d of %d passes through %d of the %d corners that have this phase, the %s axle lets go in the %s: front"
                        + " minus rear slip %s by %.1f deg and comes back while the car still corners hard.",
                showing.size(),
                there.size(),
                shown,
                corners,
                axle.words(),
                phase.words(),
                axle == Slide.Axle.REAR ? "dips" : "rises",
                Math.toDegrees(Robust.median(
                        slides.stream().mapToDouble(Slide::sizeRad).toArray()))));
        Trigger trigger = mostProbable(triggers);
        why.add(String.format(
                Locale.ROOT,
                "In the half second before, what moved most was: %s (probability %.2f).",
                trigger.words(),
                triggers.getOrDefault(trigger, 0.0)));
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
