package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.units.Figures;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.DrivingFault.Proof;
import setwright.core.judgement.LostTime;
import setwright.core.judgement.Repeatability.Measure;
import setwright.core.judgement.driving.DrivingReview;
import setwright.core.judgement.driving.DrivingReview.AtCorner;
import setwright.core.judgement.driving.DrivingReview.Place;
import setwright.core.judgement.driving.MovingEvent;
import setwright.core.judgement.driving.MovingEvent.Source;

/** What a coach says: where to begin, what it is worth, which laps show it. */
public final class CoachWords {
    /** More corners than this are counted, not told one by one. */
    private static final int MOST_PROOFS = 3;

    private CoachWords() {}

    static List<String> places(DrivingReview review, Figures figures) {
        List<String> words = new ArrayList<>();
        for (Place place : review.first()) {
            words.add((words.isEmpty() ? "Work first on corner " : "Then on corner ") + place.corner() + ": "
                    + cost(place.cost(), figures) + " lie between your usual pass and your better quarter"
                    + place.event().map(event -> "; " + moves(event, figures)).orElse("")
                    + "." + faults(place));
        }
        review.lap()
                .ifPresent(gain -> words.add("Every corner driven as in the better quarter of your own laps would gain "
                        + cost(gain, figures) + " a lap."));
        return words;
    }

    private static String faults(Place place) {
        return place.faults().isEmpty()
                ? ""
                : " Also there: "
                        + Figures.words(place.faults().stream()
                                .map(fault -> fault.kind() + lapsAt(fault, place.corner()))
                                .toList())
                        + ".";
    }

    private static String lapsAt(DrivingFault fault, int corner) {
        return fault.proofs().stream()
                .filter(proof -> proof.corner() == corner)
                .findFirst()
                .map(proof -> " (worst in lap " + proof.worstLap() + ")")
                .orElse("");
    }

    /** Returns how an event moves at a corner and what that costs. */
    public static String moves(MovingEvent event, Figures figures) {
        if (!event.clear()) {
            return "no event moves more there than in your other corners";
        }
        return "what moves most against your other corners is the "
                + event.measure().words() + ", by " + sized(event.measure(), event.scatter(), figures)
                + " (elsewhere " + sized(event.measure(), event.elsewhere(), figures) + "), from lap "
                + event.lapLow() + " to lap " + event.lapHigh() + "; " + price(event, figures);
    }

    /** Returns an event with how far it moves here and elsewhere. */
    public static String event(MovingEvent event, Figures figures) {
        return Figures.capital(event.measure().words()) + " " + sized(event.measure(), event.scatter(), figures)
                + ", elsewhere " + sized(event.measure(), event.elsewhere(), figures);
    }

    private static String price(MovingEvent event, Figures figures) {
        return event.cost()
                .map(cost -> event.better() + " pays, "
                        + (event.source() == Source.PHYSICS
                                ? "by up to " + figures.seconds(cost.high(), 2)
                                        + " (from physics, not yet from your laps)"
                                : "by " + cost(cost, figures) + " in your own laps"))
                .orElse("not enough evidence for what that costs");
    }

    /** Returns a cost with its interval. */
    public static String cost(LostTime cost, Figures figures) {
        return figures.seconds(cost.seconds(), 2) + " (" + figures.number(cost.low(), 2) + " to "
                + figures.number(cost.high(), 2) + ")";
    }

    private static String sized(Measure measure, double value, Figures figures) {
        return measure.unit().equals("m") ? figures.distance(value) : speed(value, figures);
    }

    private static String speed(double kmh, Figures figures) {
        return figures.number(figures.units().speed(kmh / 3.6), 1)
                + Figures.KEPT_TOGETHER
                + figures.units().speedUnit();
    }

    /** Returns what could be told at a corner. */
    public static String power(AtCorner corner, Figures figures) {
        if (!Double.isFinite(corner.smallestBalanceRad()) || !Double.isFinite(corner.smallestTimeS())) {
            return "too few laps";
        }
        return figures.degreesSize(corner.smallestBalanceRad()) + ", " + figures.seconds(corner.smallestTimeS(), 2)
                + "; " + (corner.lapsNeeded().isPresent() ? corner.lapsNeeded().getAsInt() + " laps" : "over 100 laps");
    }

    /** Returns the size of a fault, with the word that goes before it. */
    public static String size(String unit, double size, Figures figures) {
        String share = "share of ";
        if (unit.startsWith(share)) {
            String whole = unit.substring(share.length()).replace("full ", "");
            return "by " + figures.percent(size) + " of " + whole + (whole.startsWith("hardest") ? "" : " travel");
        }
        return switch (unit) {
            case "s" -> "for " + figures.number(size, 2) + Figures.KEPT_TOGETHER + "s";
            case "m" -> "by " + figures.distance(size);
            case "km/h" -> "by " + speed(size, figures);
            case "m/s\u00b2" -> "by " + figures.number(size, 1) + Figures.KEPT_TOGETHER + unit;
            default -> figures.number(size, 1) + Figures.KEPT_TOGETHER + unit;
        };
    }

    /** Returns the laps that prove a fault, corner by corner; empty without. */
    public static Optional<String> proof(DrivingFault fault) {
        List<Proof> proofs = fault.proofs();
        if (proofs.isEmpty()) {
            return Optional.empty();
        }
        List<String> told = proofs.stream()
                .limit(MOST_PROOFS)
                .map(proof -> "corner " + proof.corner() + " in " + Figures.laps(proof.laps())
                        + (proof.laps().size() > 1 ? ", most in lap " + proof.worstLap() : ""))
                .toList();
        int more = proofs.size() - told.size();
        return Optional.of(String.join("; ", told) + (more > 0 ? "; and " + more + " more" : ""));
    }

    static String fault(DrivingFault fault, Figures figures) {
        String size = Double.isFinite(fault.size()) && !fault.unit().isEmpty()
                ? ", " + size(fault.unit(), fault.size(), figures)
                : "";
        return Figures.sentence((fault.habit() ? "A habit: " : "") + fault.kind() + " in "
                        + Figures.corners(fault.corners()) + ", in " + figures.percent(fault.lapShare())
                        + " of the passes" + size)
                + proof(fault).map(text -> " Seen at " + text + ".").orElse("")
                + fault.cost()
                        .map(cost -> " Less of it would gain " + cost(cost, figures) + " a lap.")
                        .orElse("");
    }
}
