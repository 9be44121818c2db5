package setwright.core.explanation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import setwright.core.car.setup.SetupDifference;
import setwright.core.explanation.Reason.Figure;
import setwright.core.explanation.Reason.Kind;
import setwright.core.explanation.Reason.Proof;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.Certainty;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.LapsNeeded;
import setwright.core.judgement.PassEvidence;
import setwright.core.judgement.Verdict;
import setwright.core.numerics.Robust;
import setwright.core.replay.Pool;
import setwright.core.standing.ItemStanding;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.SetupStanding.Yard;

/** Tells why nothing is to be changed, or why that cannot be said: what was looked at, what was seen, what would settle it. */
public final class VerdictExplainer {
    private static final String BASELINE = " a stint of this very car in good order on this circuit, as a baseline.";

    private final Diagnosis diagnosis;
    private final int laps;

    private VerdictExplainer(Diagnosis diagnosis) {
        this.diagnosis = diagnosis;
        this.laps = diagnosis.stint().goodLaps().size();
    }

    /** Returns the chain; empty for a verdict that rests on a finding or on the driving, which explain themselves. */
    public static List<Reason> explain(Diagnosis diagnosis) {
        if (diagnosis.verdict() != Verdict.NOTHING_TO_CHANGE && diagnosis.verdict() != Verdict.NOT_ENOUGH_EVIDENCE) {
            return List.of();
        }
        VerdictExplainer explainer = new VerdictExplainer(diagnosis);
        List<Reason> reasons = new ArrayList<>();
        reasons.add(explainer.lookedAt());
        Optional<Finding> most =
                diagnosis.grounds().considered().stream().max(Comparator.comparingDouble(Finding::probability));
        most.ifPresent(finding -> {
            reasons.add(explainer.mostSeen(finding));
            reasons.add(explainer.whyNot(finding));
        });
        reasons.add(explainer.toSettle(most));
        return reasons;
    }

    private Reason lookedAt() {
        int corners = (int)
                diagnosis.passes().stream().map(CornerPass::corner).distinct().count();
        int left = (int) diagnosis.repeatability().corners().stream()
                .filter(corner -> !corner.repeatable())
                .count();
        SetupStanding standing = diagnosis.grounds().standing();
        int items = against() ? standing.changed().size() : standing.items().size();
        return Reason.of(
                Kind.LOOKED_AT,
                Words.format(
                        "Looked at: %s through %s%s: the balance on entry, mid-corner and on the exit, and every place where"
                                + " the rear could let go; %s.",
                        Words.count(laps, "lap", "laps"),
                        Words.count(corners, "corner", "corners"),
                        left == 0 ? "" : " (" + left + " too uneven for slides to count)",
                        setupLookedAt(standing, items)),
                Figure.of("laps", laps, "laps"),
                Figure.of("corners", corners, "corners"),
                Figure.of("setup items", items, "items"));
    }

    private String setupLookedAt(SetupStanding standing, int items) {
        return diagnosis
                .grounds()
                .baseline()
                .map(good -> "against the baseline, " + good.name() + ", since which " + changed(standing))
                .orElseGet(() -> items == 0
                        ? standing.yard() == Yard.SCATTERED
                                ? "no setup item, as they stand anywhere in their ranges"
                                : "no setup item, for want of ranges on the sheet"
                        : "and " + Words.count(items, "setup item", "setup items") + " in "
                                + (items == 1 ? "its range" : "their ranges"));
    }

    private static String changed(SetupStanding standing) {
        if (standing.changed().isEmpty()) {
            return "nothing was changed on the setup";
        }
        String all = Words.count(standing.changed().size(), "setup item was changed", "setup items were changed") + ": "
                + Words.changes(standing.changed());
        return standing.untold().isEmpty()
                ? all
                : all + " (no replay tells what "
                        + Words.list(standing.untold().stream()
                                .map(SetupDifference::words)
                                .toList()) + (standing.untold().size() == 1 ? " does)" : " do)");
    }

    private Reason mostSeen(Finding finding) {
        Optional<PassEvidence> best = PassEvidence.of(diagnosis, finding).stream()
                .filter(PassEvidence::shows)
                .max(Comparator.comparingDouble(PassEvidence::sizeRad));
        String what = diagnosis.grounds().isLevel(finding)
                ? Words.format(
                        "%s %s, %s (%.2f to %.2f)",
                        finding.balance().words(),
                        Words.place(finding.phase(), finding.speed()),
                        Words.degrees(finding.sizeRad()),
                        Math.toDegrees(finding.sizeLowRad()),
                        Math.toDegrees(finding.sizeHighRad()))
                : Words.format(
                        "the rear letting go %s in %s, on %s of the passes",
                        Words.place(finding.phase()),
                        Words.corners(finding.corners()),
                        Words.percent(finding.lapShare()));
        return Reason.of(
                        Kind.MOST_SEEN,
                        "The most that was seen: " + what + ".",
                        new Figure(
                                "size",
                                Math.toDegrees(finding.sizeRad()),
                                Math.toDegrees(finding.sizeLowRad()),
                                Math.toDegrees(finding.sizeHighRad()),
                                "deg"),
                        Figure.of("share of passes", finding.lapShare(), ""))
                .on(
                        List.of(),
                        finding.corners(),
                        best.map(found ->
                                new Proof(found.pass().lap(), found.pass().corner())));
    }

    private Reason whyNot(Finding finding) {
        double least = least(finding);
        String sentence = whyNot(finding, least);
        return Reason.of(
                Kind.WHY_NOT,
                sentence,
                Figure.of("probability", finding.probability(), ""),
                Figure.of("least probability", least, ""));
    }

    private String whyNot(Finding finding, double least) {
        if (laps < LapsNeeded.FEWEST) {
            return "Too few laps: what shows in every one of " + Words.count(laps, "lap", "laps")
                    + " may still be chance.";
        }
        if (finding.probability() >= least) {
            return "It is sure enough (probability " + Words.probability(finding.probability()) + "), but "
                    + (finding.lapWide()
                            ? "something else stands in the way of a verdict."
                            : "it belongs to " + Words.corners(finding.corners())
                                    + " alone: a change for it would be felt all round the lap.");
        }
        if (diagnosis.inOneCorner().contains(finding)) {
            return "It happens, but it says nothing of the car: one in good order does that in one corner or another as"
                    + " often as one with a fault.";
        }
        return Words.format(
                "Not enough: that it is real and worth a change has a probability of %s; from %s on it would count.",
                Words.probability(finding.probability()), Words.probability(least));
    }

    private Reason toSettle(Optional<Finding> most) {
        if (diagnosis.trace().steering().contradicts()) {
            return Reason.of(
                    Kind.TO_SETTLE,
                    "No lap will settle it while the steering ratio or wheelbase on the sheet is wrong.");
        }
        if (laps < LapsNeeded.FEWEST) {
            return Reason.of(
                    Kind.TO_SETTLE,
                    Words.format(
                            "%s more at the least; %d more would be good.",
                            Words.count(LapsNeeded.FEWEST - laps, "lap", "laps"), LapsNeeded.GOOD - laps),
                    Figure.of("more laps", LapsNeeded.FEWEST - laps, "laps"));
        }
        if (diagnosis.passes().isEmpty()) {
            return Reason.of(
                    Kind.TO_SETTLE, "No corner could be judged; laps with cornering and a steering angle would.");
        }
        if (most.isEmpty()) {
            return Reason.of(Kind.TO_SETTLE, "Nothing to settle: no axle gave up first in any place.");
        }
        Finding finding = most.get();
        OptionalInt more = LapsNeeded.toSettle(diagnosis, finding);
        if (more.isPresent() && finding.probability() < least(finding)) {
            return Reason.of(
                    Kind.TO_SETTLE,
                    Words.format(
                            "If it goes on as it did, %s more would make it count.",
                            Words.count(more.getAsInt(), "lap", "laps")),
                    Figure.of("more laps", more.getAsInt(), "laps"));
        }
        if (!diagnosis.grounds().isLevel(finding)) {
            return Reason.of(
                    Kind.TO_SETTLE,
                    finding.lapWide()
                            ? "More laps like these would not make it count; only if it came in more of them."
                                    + witnesses(finding)
                            : "More laps would not make it a reason to change the car; it would have to show in other"
                                    + " corners too."
                                    + (against() ? "" : " Whether it came with a change would be told by" + BASELINE));
        }
        return level(finding);
    }

    private Reason level(Finding finding) {
        double[] sizes = PassEvidence.of(diagnosis, finding).stream()
                .mapToDouble(PassEvidence::sizeRad)
                .toArray();
        double noise = sizes.length < 2 ? Double.NaN : Robust.scaledMad(sizes) / Math.sqrt(sizes.length);
        double doubt = (finding.sizeHighRad() - finding.sizeRad()) / 1.96;
        Pool pool = finding.pool();
        String run = diagnosis.grounds().standing().unusual(pool).stream()
                .findFirst()
                .map(item -> back(item))
                .orElse(
                        diagnosis.grounds().standing().yard() == Yard.NONE
                                ? "Ranges on the car sheet would, or a run with one bar a step softer."
                                : "A run with one bar a step softer would, back to back, if it is worth the time.");
        return Reason.of(
                Kind.TO_SETTLE,
                Words.format(
                        "More laps alone will not settle it: they scatter by %s in the mean, but %s leaves a doubt of %s. %s",
                        Words.degrees(noise),
                        against() ? "what two stints of one car differ by" : "what a healthy car of this kind shows",
                        Words.degrees(doubt),
                        against() ? run : run + " So would" + BASELINE),
                Figure.of("scatter of the mean", Math.toDegrees(noise), "deg"),
                Figure.of("doubt", Math.toDegrees(doubt), "deg"));
    }

    /** Who else could be asked whether slides are the car's. */
    private String witnesses(Finding finding) {
        if (against() || finding.cause() == Finding.Cause.DRIVER) {
            return "";
        }
        return diagnosis.grounds().standing().yard() == Yard.NONE
                ? " Whether it is the car's, ranges on the car sheet would help to tell, and so would" + BASELINE
                : " Whether it is the car's would be told by" + BASELINE;
    }

    private double least(Finding finding) {
        return Certainty.least(finding, diagnosis);
    }

    private boolean against() {
        return diagnosis.grounds().baseline().isPresent();
    }

    private String back(ItemStanding item) {
        return Words.format(
                "A run with the %s %s (%s %s, now %s) would, back to back.",
                Words.item(item.item().name()),
                against() ? "where it was in the baseline" : "nearer to the middle of its range",
                Words.plain(item.usual()),
                item.item().unit(),
                Words.plain(item.item().value()));
    }
}
