package setwright.core.explanation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.hipparchus.distribution.continuous.BetaDistribution;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.BelievedLevel;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.PassEvidence;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;

/*
 * Design note. Four other answers are weighed: that it is nothing (a healthy car, or chance), that another input sets it off,
 * that it sits in another place, and that the other of car and driver makes it. Their probabilities are those that the
 * judgement itself uses; for the driver it is the probability that he does in most passes what would explain it, from a
 * uniform prior (a beta distribution). They may be so at once and do not add up to one.
 */

/** What else a finding could be. */
final class Alternatives {
    private static final double LEAST_SHOWN = 0.05;
    /** The foot's habits count from the same sizes on as in the judgement of the driving. */
    private static final double BRAKE_HELD_S = 0.5;

    private static final double LIFTED = 0.15;

    private Alternatives() {}

    static List<Alternative> of(Diagnosis diagnosis, Finding finding, List<PassEvidence> evidence) {
        List<Alternative> all = new ArrayList<>();
        all.add(nothing(diagnosis, finding, evidence));
        input(diagnosis, finding, evidence).ifPresent(all::add);
        elsewhere(diagnosis, finding).ifPresent(all::add);
        maker(diagnosis, finding, evidence).ifPresent(all::add);
        return all.stream()
                .sorted(Comparator.comparingDouble(
                                (Alternative other) -> other.probability().orElse(0.0))
                        .reversed())
                .toList();
    }

    private static Alternative nothing(Diagnosis diagnosis, Finding finding, List<PassEvidence> evidence) {
        OptionalDouble rest = OptionalDouble.of(1.0 - finding.probability());
        if (!diagnosis.grounds().isLevel(finding)) {
            int shows = (int) evidence.stream().filter(PassEvidence::shows).count();
            return new Alternative(
                    "chance",
                    rest,
                    Words.format(
                            "It would have had to happen in %s by accident.",
                            Words.of(shows, evidence.size(), "pass", "passes")));
        }
        return new Alternative(
                diagnosis.grounds().baseline().isPresent()
                        ? "the same car on another day, or too little to act on"
                        : "a healthy car, or too little to act on",
                rest,
                Words.format(
                        "Setup and laps together would have to be off by %s; the doubt in them is %s.",
                        Words.degrees(finding.sizeRad()),
                        Words.degrees((finding.sizeHighRad() - finding.sizeRad()) / 1.96)));
    }

    private static Optional<Alternative> input(Diagnosis diagnosis, Finding finding, List<PassEvidence> evidence) {
        return finding.triggers().entrySet().stream()
                .filter(entry -> entry.getKey() != finding.trigger() && entry.getValue() >= LEAST_SHOWN)
                .max(Map.Entry.<Trigger, Double>comparingByValue()
                        .thenComparing(
                                Map.Entry.<Trigger, Double>comparingByKey().reversed()))
                .map(entry -> new Alternative(
                        entry.getKey() == Trigger.NONE
                                ? "no single input"
                                : "it begins " + entry.getKey().begins(),
                        OptionalDouble.of(entry.getValue()),
                        whyNot(diagnosis, finding, entry.getKey(), evidence)));
    }

    private static String whyNot(Diagnosis diagnosis, Finding finding, Trigger other, List<PassEvidence> evidence) {
        Optional<String> there = Explainer.moved(other, evidence);
        Optional<String> here = Explainer.moved(finding.trigger(), evidence);
        if (there.isPresent() && here.isPresent()) {
            return "There, " + there.get() + "; against: " + here.get() + ".";
        }
        if (diagnosis.grounds().isLevel(finding)) {
            Phase phase = phase(other);
            Optional<BelievedLevel> level = diagnosis.grounds().levels().stream()
                    .filter(found -> found.phase() == phase && found.speed() == finding.speed())
                    .findFirst();
            if (phase != finding.phase() && level.isPresent()) {
                return Words.format(
                        "The balance is wrong by %s %s, where that input acts; by %s %s.",
                        Words.degrees(Math.abs(level.get().meanRad())),
                        Words.place(phase),
                        Words.degrees(finding.sizeRad()),
                        Words.place(finding.phase()));
            }
        }
        return "Less of it falls into the time when that input acts.";
    }

    private static Phase phase(Trigger trigger) {
        return switch (trigger) {
            case BRAKE_APPLICATION -> Phase.BRAKING;
            case BRAKE_RELEASE, TURN_IN -> Phase.ENTRY;
            case THROTTLE_PICK_UP -> Phase.EXIT;
            case THROTTLE_LIFT, BUMP, NONE -> Phase.MID;
        };
    }

    /** The surest other place, whether it is worth a change there too. */
    private static Optional<Alternative> elsewhere(Diagnosis diagnosis, Finding finding) {
        return diagnosis.grounds().levels().stream()
                .filter(level -> level.phase() != finding.phase())
                .filter(level -> level.speed() == finding.speed() || level.speed() == SpeedRange.ALL)
                .filter(level -> level.probability() >= LEAST_SHOWN)
                .max(Comparator.comparingDouble(BelievedLevel::probability))
                .map(level -> new Alternative(
                        level.sign().words() + " " + Words.place(level.phase(), level.speed()),
                        OptionalDouble.of(level.probability()),
                        Words.format(
                                "It is %s there, give or take %s; %s here.",
                                Words.degrees(Math.abs(level.meanRad())),
                                Words.degrees(1.96 * level.deviationRad()),
                                Words.degrees(finding.sizeRad()))));
    }

    private static Optional<Alternative> maker(Diagnosis diagnosis, Finding finding, List<PassEvidence> evidence) {
        if (Explainer.since(diagnosis, finding).isPresent()) {
            return Optional.of(new Alternative(
                    "the car, not the driver",
                    OptionalDouble.empty(),
                    "If it still does this when it is driven as in the baseline, it is the car."));
        }
        boolean rear = finding.balance() == BalanceSign.OVERSTEER;
        boolean early = finding.phase() == Phase.ENTRY || finding.phase() == Phase.MID;
        if (rear && early) {
            return Optional.of(
                    maker(finding, evidence, "held the brake into the middle of the corner", Alternatives::held));
        }
        if (finding.phase() == Phase.EXIT) {
            return Optional.of(
                    maker(finding, evidence, "picked the throttle up too soon and had to lift", Alternatives::lifted));
        }
        return Optional.empty();
    }

    private static Alternative maker(
            Finding finding, List<PassEvidence> evidence, String did, Predicate<CornerPass> does) {
        int all = evidence.size();
        int done = (int) evidence.stream().map(PassEvidence::pass).filter(does).count();
        double mostly = 1.0 - new BetaDistribution(done + 1.0, all - done + 1.0).cumulativeProbability(0.5);
        boolean car = finding.cause() == Finding.Cause.CAR;
        return new Alternative(
                car ? "the driver, not the car" : "the car, not the driver",
                OptionalDouble.of(car ? mostly : 1.0 - mostly),
                Words.format("In %s the driver %s.", Words.of(done, all, "pass", "passes"), did));
    }

    private static boolean held(CornerPass pass) {
        Habits habits = pass.habits();
        return habits.brakeHeldS() > BRAKE_HELD_S;
    }

    private static boolean lifted(CornerPass pass) {
        return pass.habits().liftAfter() > LIFTED;
    }
}
