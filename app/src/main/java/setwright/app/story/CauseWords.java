package setwright.app.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import setwright.app.evidence.ToldHands;
import setwright.app.units.Figures;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandsEvent;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedDependence;
import setwright.core.judgement.Trigger;
import setwright.core.judgement.Verdict;

/** Which input sets it off? */
final class CauseWords {
    /** Below even odds a trigger is only the likeliest of several. */
    private static final double LIKELY = 0.5;

    private CauseWords() {}

    static Story.Link tell(Diagnosis diagnosis, Figures figures) {
        List<String> details = new ArrayList<>();
        diagnosis.findings().stream()
                .findFirst()
                .filter(finding -> diagnosis.verdict() == Verdict.CHANGE_THE_CAR)
                .flatMap(finding -> overSpeed(finding, diagnosis.passes(), figures))
                .ifPresent(details::add);
        details.addAll(hands(ToldHands.of(diagnosis)));
        String answer = diagnosis.findings().isEmpty()
                ? diagnosis.verdict() == Verdict.NOT_ENOUGH_EVIDENCE
                        ? "No problem is sure enough yet to look for its cause."
                        : "Nothing stands out, so there is no cause to look for."
                : cause(diagnosis.findings().get(0), figures);
        return new Story.Link("Which input sets it off?", answer, details);
    }

    private static String cause(Finding finding, Figures figures) {
        double probability = finding.triggers().getOrDefault(finding.trigger(), Double.NaN);
        String sure = Double.isFinite(probability) ? " (probability " + figures.probability(probability) + ")" : "";
        String first = finding.trigger() == Trigger.NONE
                ? "No single input sets it off" + sure + ": it is there while the car corners steadily."
                : probability < LIKELY
                        ? "What sets it off is not clear; most likely it begins "
                                + finding.trigger().begins() + sure + "."
                        : "It begins " + finding.trigger().begins() + sure + ".";
        String who = finding.cause() == Finding.Cause.DRIVER
                ? " It is put down to the driver, not the car."
                : " It is put down to the car, not the driver.";
        return first + who + second(finding, figures);
    }

    private static String second(Finding finding, Figures figures) {
        return finding.triggers().entrySet().stream()
                .filter(entry -> entry.getKey() != finding.trigger() && entry.getValue() >= 0.1)
                .max(Comparator.comparingDouble(Map.Entry::getValue))
                .map(entry -> " Next likely: "
                        + (entry.getKey() == Trigger.NONE
                                ? "no single input"
                                : entry.getKey().words()) + " ("
                        + figures.probability(entry.getValue()) + ").")
                .orElse("");
    }

    private static Optional<String> overSpeed(Finding finding, List<CornerPass> passes, Figures figures) {
        DoubleSummaryStatistics speeds = passes.stream()
                .mapToDouble(CornerPass::lowestSpeedMps)
                .filter(Double::isFinite)
                .summaryStatistics();
        return finding.dependence()
                .filter(found -> speeds.getCount() > 0)
                .map(found -> overSpeed(found, speeds.getMin(), speeds.getMax(), figures));
    }

    /** Where the loads come from that make a problem: which items to look at first. */
    static String overSpeed(SpeedDependence found, double slowestMps, double fastestMps, Figures figures) {
        double aero = found.probabilityAero();
        String kind = switch (found.kind()) {
            case AERODYNAMIC ->
                "It grows with speed as aerodynamic loads do (probability " + figures.probability(aero)
                        + "): wings and ride heights first.";
            case MECHANICAL ->
                "It is mechanical, much the same at all speeds or less in fast corners (probability "
                        + figures.probability(1.0 - aero) + "): springs, bars, tyres first.";
            case OPEN ->
                "Mechanical or aerodynamic, the corners do not tell (probability of aerodynamic "
                        + figures.probability(aero) + ").";
        };
        double squares = fastestMps * fastestMps - slowestMps * slowestMps;
        return kind + " From " + figures.speed(slowestMps) + " to " + figures.speed(fastestMps)
                + " its size changes by " + degrees(squares * found.slopeRadPerM2S2(), figures) + " deg ("
                + degrees(squares * found.low(), figures) + " to " + degrees(squares * found.high(), figures) + ").";
    }

    private static String degrees(double rad, Figures figures) {
        return figures.signed(Math.toDegrees(rad), 2);
    }

    private static List<String> hands(List<CornerPass> passes) {
        Map<HandsEvent.Kind, Integer> counts = new EnumMap<>(HandsEvent.Kind.class);
        Map<HandsEvent.Kind, TreeSet<Integer>> corners = new EnumMap<>(HandsEvent.Kind.class);
        for (CornerPass pass : passes) {
            for (HandsEvent event : pass.hands()) {
                counts.merge(event.kind(), 1, Integer::sum);
                corners.computeIfAbsent(event.kind(), kind -> new TreeSet<>()).add(pass.corner());
            }
        }
        List<String> sentences = new ArrayList<>();
        counts.forEach((kind, count) -> sentences.add("The hands: " + kind.words() + " (" + FindingWords.meaning(kind)
                + ") " + count + (count == 1 ? " time in " : " times in ")
                + where(corners.getOrDefault(kind, new TreeSet<>())) + "."));
        if (sentences.isEmpty() && !passes.isEmpty()) {
            sentences.add(
                    "The hands are calm: no corrections or sawing, and no hold or winding-on with its axle near its peak.");
        }
        return sentences;
    }

    private static String where(Set<Integer> corners) {
        return corners.size() > 4 ? corners.size() + " corners" : Figures.corners(List.copyOf(corners));
    }
}
