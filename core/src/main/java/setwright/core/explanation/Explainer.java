package setwright.core.explanation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import setwright.core.explanation.Reason.Figure;
import setwright.core.explanation.Reason.Kind;
import setwright.core.explanation.Reason.Proof;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.Slide;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Finding;
import setwright.core.judgement.PassEvidence;
import setwright.core.judgement.Trigger;
import setwright.core.numerics.Robust;

/** Tells why a finding is one. */
public final class Explainer {
    /** As many corners as a sentence names with their counts. */
    private static final int MOST_NAMED = 4;

    private final Diagnosis diagnosis;
    private final Finding finding;
    private final boolean level;
    private final List<PassEvidence> evidence;
    private final int laps;

    private Explainer(Diagnosis diagnosis, Finding finding) {
        this.diagnosis = diagnosis;
        this.finding = finding;
        this.level = diagnosis.grounds().isLevel(finding);
        this.evidence = PassEvidence.of(diagnosis, finding);
        this.laps = (int) evidence.stream().map(e -> e.pass().lap()).distinct().count();
    }

    /**
     * Explains one.
     *
     * @param finding  of this diagnosis
     */
    public static Explanation explain(Diagnosis diagnosis, Finding finding) {
        Explainer explainer = new Explainer(diagnosis, finding);
        List<Reason> reasons = new ArrayList<>();
        if (!explainer.evidence.isEmpty()) {
            reasons.add(explainer.laps());
            reasons.add(explainer.corners());
        }
        reasons.add(explainer.trigger());
        explainer.axle().ifPresent(reasons::add);
        if (explainer.level) {
            reasons.add(SetupReasons.of(diagnosis.grounds().standing(), finding));
        }
        since(diagnosis, finding).map(Explainer::driving).ifPresent(reasons::add);
        reasons.add(explainer.price());
        reasons.add(explainer.certainty());
        return new Explanation(reasons, Alternatives.of(diagnosis, finding, explainer.evidence));
    }

    /** Returns what the driver asks for that he did not in the baseline, where that makes a finding. */
    static Optional<DrivingFault> since(Diagnosis diagnosis, Finding finding) {
        return finding.cause() != Finding.Cause.DRIVER
                ? Optional.empty()
                : diagnosis.faults().stream()
                        .filter(DrivingFault::sinceTheBaseline)
                        .filter(fault -> fault.reaches(finding.phase()))
                        .findFirst();
    }

    private static Reason driving(DrivingFault fault) {
        return Reason.of(
                        Kind.DRIVING,
                        Words.format(
                                "It came with the driving: %s, in %d corners.",
                                fault.kind(), fault.corners().size()),
                        Figure.of("more than in the baseline", fault.size(), fault.unit()))
                .on(List.of(), fault.corners(), Optional.empty());
    }

    private Reason price() {
        Finding.Price price = finding.price();
        String sentence = diagnosis
                .grounds()
                .time()
                .filter(time -> time.prices(finding))
                .map(time -> time.sentence(finding))
                .orElseGet(this::reckoned);
        return Reason.of(Kind.PRICE, sentence, new Figure("price", price.seconds(), price.low(), price.high(), "s"));
    }

    private String reckoned() {
        boolean setup = level && !diagnosis.grounds().standing().isUnknown();
        return "The price is reckoned from the grip that one axle leaves unused"
                + (setup ? " and from what the items of the setup cost" : "")
                + "; its interval holds what a driver makes of another car"
                + (diagnosis.grounds().time().isEmpty()
                        ? ", which only laps of the car in good order would tell."
                        : finding.lapWide()
                                ? ". He does it in the baseline as well, so the laps cannot tell."
                                : ". What one corner does is not read off whole laps.");
    }

    private Reason laps() {
        Map<Integer, List<PassEvidence>> byLap = by(e -> e.pass().lap());
        List<Integer> showing = byLap.entrySet().stream()
                .filter(entry -> entry.getValue().stream().anyMatch(PassEvidence::shows))
                .map(Map.Entry::getKey)
                .toList();
        List<Integer> mostly = byLap.entrySet().stream()
                .filter(entry -> median(entry.getValue()) > 0.0)
                .map(Map.Entry::getKey)
                .toList();
        Optional<PassEvidence> best =
                evidence.stream().filter(PassEvidence::shows).max(Comparator.comparingDouble(PassEvidence::sizeRad));
        Optional<Proof> proof =
                best.map(found -> new Proof(found.pass().lap(), found.pass().corner()));
        String clearest = best.map(found -> Words.format(
                        " Clearest: lap %d, corner %d (%s).",
                        found.pass().lap(), found.pass().corner(), Words.degrees(found.sizeRad())))
                .orElse("");
        if (!level) {
            return Reason.of(
                            Kind.LAPS,
                            Words.format(
                                            "The rear lets go %s on %s.",
                                            Words.place(finding.phase()), Words.of(showing.size(), laps, "lap", "laps"))
                                    + clearest,
                            Figure.of("laps that show it", showing.size(), "laps"),
                            Figure.of("laps", laps, "laps"))
                    .on(showing, List.of(), proof);
        }
        String side = finding.balance() == BalanceSign.UNDERSTEER ? "more" : "less";
        double typical = median(evidence);
        String sentence = Words.format(
                "On %s the front slips %s than %s %s, by %s in the median.",
                Words.of(mostly.size(), laps, "lap", "laps"),
                side,
                Words.reference(diagnosis),
                Words.place(finding.phase(), finding.speed()),
                Words.degrees(typical));
        if (mostly.size() * 2 <= laps) {
            sentence = Words.format(
                    "The laps alone do not show it: on %s only the front slips %s than %s %s.",
                    Words.of(mostly.size(), laps, "lap", "laps"),
                    side,
                    Words.reference(diagnosis),
                    Words.place(finding.phase(), finding.speed()));
        }
        return Reason.of(
                        Kind.LAPS,
                        sentence + clearest,
                        Figure.of("laps that show it", mostly.size(), "laps"),
                        Figure.of("laps", laps, "laps"),
                        Figure.of("median excess", Math.toDegrees(typical), "deg"))
                .on(mostly, List.of(), proof);
    }

    private Reason corners() {
        Map<Integer, List<PassEvidence>> byCorner = by(e -> e.pass().corner());
        record At(int corner, String words, double size) {}
        List<At> places = byCorner.entrySet().stream()
                .map(entry -> {
                    List<PassEvidence> here = entry.getValue();
                    long shows = here.stream().filter(PassEvidence::shows).count();
                    double size = level ? median(here) : shows;
                    return new At(
                            entry.getKey(),
                            entry.getKey() + " ("
                                    + (level ? Words.degrees(size) : shows + " of " + here.size() + " laps") + ")",
                            size);
                })
                .sorted(Comparator.comparingDouble(At::size).reversed())
                .toList();
        List<String> named = places.stream().limit(MOST_NAMED).map(At::words).toList();
        int judged = (int) diagnosis.passes().stream()
                .filter(pass -> pass.phase(finding.phase()).isPresent())
                .map(pass -> pass.corner())
                .distinct()
                .count();
        String sentence = Words.format(
                "It counts in %s%s: %s.",
                Words.of(finding.corners().size(), judged, "corner", "corners"),
                places.size() > MOST_NAMED ? ", most in" : "",
                Words.list(named));
        return Reason.of(
                        Kind.CORNERS,
                        sentence,
                        places.stream()
                                .map(at -> Figure.of(
                                        "corner " + at.corner(),
                                        level ? Math.toDegrees(at.size()) : at.size(),
                                        level ? "deg" : "laps"))
                                .toArray(Figure[]::new))
                .on(List.of(), finding.corners(), Optional.empty());
    }

    private Reason trigger() {
        double p = finding.triggers().getOrDefault(finding.trigger(), 0.0);
        String start = finding.trigger() == Trigger.NONE
                ? "No single input sets it off: it is there while the car corners steadily"
                : (p < 0.5 ? "Most likely it begins " : "It begins ")
                        + finding.trigger().begins();
        String moved =
                moved(finding.trigger(), evidence).map(text -> ": " + text).orElse("");
        return Reason.of(
                Kind.TRIGGER,
                start + " (probability " + Words.probability(p) + ")" + moved + ".",
                Figure.of("probability", p, ""));
    }

    /** What an input did in the half second before the slides, in words; empty where there are none or it is no pedal. */
    static Optional<String> moved(Trigger trigger, List<PassEvidence> evidence) {
        List<Slide> slides = evidence.stream().flatMap(e -> e.slides().stream()).toList();
        if (slides.isEmpty()) {
            return Optional.empty();
        }
        return switch (trigger) {
            case BRAKE_APPLICATION ->
                Optional.of("in the half second before, the brake rises by "
                        + share(slides, slide -> slide.inputs().brakeRise()));
            case BRAKE_RELEASE ->
                Optional.of("in the half second before, the brake falls by "
                        + share(slides, slide -> slide.inputs().brakeFall()));
            case THROTTLE_PICK_UP ->
                Optional.of("in the half second before, the throttle rises by "
                        + share(slides, slide -> slide.inputs().throttleRise()));
            case THROTTLE_LIFT ->
                Optional.of("in the half second before, the throttle falls by "
                        + share(slides, slide -> slide.inputs().throttleFall()));
            case TURN_IN ->
                Optional.of(Words.format(
                        "the wheel was turned in %.1f s before",
                        Robust.median(slides.stream()
                                .mapToDouble(slide -> slide.inputs().sinceTurnInS())
                                .toArray())));
            case BUMP, NONE -> Optional.empty();
        };
    }

    private static String share(List<Slide> slides, ToDoubleFunction<Slide> moved) {
        return Words.percent(Robust.median(slides.stream().mapToDouble(moved).toArray()));
    }

    private Optional<Reason> axle() {
        double front = use(PhaseBalance::frontUse);
        double rear = use(PhaseBalance::rearUse);
        if (!Double.isFinite(front) || !Double.isFinite(rear)) {
            return Optional.empty();
        }
        String axle = Words.axle(finding.balance());
        boolean agrees = front > rear == (finding.balance() == BalanceSign.UNDERSTEER);
        return Optional.of(Reason.of(
                Kind.AXLE,
                Words.format(
                        "Of the slip at its peak the front uses %s there, the rear %s: %s.",
                        Words.percent(front),
                        Words.percent(rear),
                        agrees
                                ? "the " + axle + " is nearer to its limit"
                                : "in the mean of the phase that alone would point to the other axle"),
                Figure.of("front slip as a share of its peak", front, ""),
                Figure.of("rear slip as a share of its peak", rear, "")));
    }

    private double use(ToDoubleFunction<PhaseBalance> use) {
        return Robust.median(Robust.finite(evidence.stream()
                .flatMap(e -> e.pass().phase(finding.phase()).stream())
                .mapToDouble(use)
                .toArray()));
    }

    private Reason certainty() {
        String size = Words.format(
                "%s of %s, between %s and %s",
                Words.degrees(finding.sizeRad()),
                finding.balance().words(),
                Words.format("%.2f", Math.toDegrees(finding.sizeLowRad())),
                Words.degrees(finding.sizeHighRad()));
        String sentence = level
                ? (diagnosis.grounds().standing().isUnknown() ? "The laps say " : "Setup and laps together say ") + size
                        + "; the probability that it is real and worth a change is "
                        + Words.probability(finding.probability()) + "." + surer()
                : "The probability that it is more than chance is " + Words.probability(finding.probability())
                        + "; its "
                        + (finding.cause() == Finding.Cause.CAR ? "slides reach " : "slides, under the brake, reach ")
                        + size + ".";
        return Reason.of(
                Kind.CERTAINTY,
                sentence,
                new Figure(
                        "size",
                        Math.toDegrees(finding.sizeRad()),
                        Math.toDegrees(finding.sizeLowRad()),
                        Math.toDegrees(finding.sizeHighRad()),
                        "deg"),
                Figure.of("probability", finding.probability(), ""));
    }

    /** A level that shows in all phases of all corners is surer than the place where it is largest. */
    private String surer() {
        return diagnosis.grounds().levels().stream()
                .filter(found -> found.phase() == finding.phase() && found.speed() == finding.speed())
                .filter(found -> finding.probability() - found.probability() >= 0.02)
                .findFirst()
                .map(found -> " All phases and corners together make it so; this place alone gives "
                        + Words.probability(found.probability()) + ".")
                .orElse("");
    }

    private Map<Integer, List<PassEvidence>> by(java.util.function.Function<PassEvidence, Integer> key) {
        return evidence.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
    }

    private static double median(List<PassEvidence> evidence) {
        return Robust.median(
                evidence.stream().mapToDouble(PassEvidence::sizeRad).toArray());
    }
}
