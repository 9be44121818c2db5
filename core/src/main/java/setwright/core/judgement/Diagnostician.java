package setwright.core.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.car.model.CarBelief;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.identification.Identifier;
import setwright.core.identification.TracedStint;
import setwright.core.judgement.Finding.Cause;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.judgement.TimeSince.Difference;
import setwright.core.replay.DrivenLap;
import setwright.core.replay.GripWorth;
import setwright.core.replay.Predictor;
import setwright.core.slip.AxleEvidence;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.SetupStanding.Yard;

/** Leads from a stint to its diagnosis. */
public final class Diagnostician {
    private Diagnostician() {}

    /**
     * Diagnoses a stint.
     *
     * @throws setwright.core.handling.NoSteering when no steering angle was recorded
     */
    public static Diagnosis diagnose(Stint stint, CarSheet sheet) {
        return diagnose(stint, sheet, Optional.empty());
    }

    /**
     * Diagnoses a stint against one of the same car in good order.
     *
     * @param baseline  on the same circuit; without it the balance is held against a reckoned car
     * @throws setwright.core.handling.NoSteering when no steering angle was recorded
     */
    public static Diagnosis diagnose(Stint stint, CarSheet sheet, Optional<Baseline> baseline) {
        HandlingTrace own = HandlingTracer.trace(stint, sheet);
        HandlingTrace reckoned = baseline.map(good -> good.reckoned(own)).orElse(own);
        HandlingTrace trace = baseline.map(good -> good.held(stint, reckoned)).orElse(reckoned);
        // The slip of the axles is for showing only: nothing below waits for it.
        ForkJoinTask<AxleEvidence> axles = ForkJoinPool.commonPool().submit(() -> AxleEvidence.of(stint, trace, sheet));
        List<CornerPass> found = CornerPasses.of(stint, reckoned, sheet);
        // slides and the driver's events are told from the laps themselves; only the level needs to know what is usual
        FeetSince since = baseline.map(
                        good -> FeetSince.of(found, stint.circuit().corners(), good))
                .orElse(FeetSince.NONE);
        List<CornerPass> passes =
                baseline.map(good -> good.held(found, since.reached())).orElse(found);
        Repeatability repeatability = RepeatabilityJudge.judge(stint, passes);
        List<DrivingFault> habits = DrivingFaultFinder.find(stint, passes, sheet);
        int laps = stint.goodLaps().size();
        Set<Integer> steady = repeatability.corners().stream()
                .filter(AtCorner::repeatable)
                .map(AtCorner::corner)
                .collect(Collectors.toSet());
        List<CornerPass> trusted =
                passes.stream().filter(pass -> steady.contains(pass.corner())).toList();
        List<DrivenLap> driven = DrivenLap.of(stint, trace, passes);
        Optional<CarBelief> car = car(new TracedStint(stint, trace, passes), driven, sheet, baseline);
        Optional<Predictor> replay = car.map(belief -> Predictor.of(stint, trace, passes, driven, sheet, belief));
        SetupStanding standing = baseline.map(good -> SetupStanding.against(good.sheet(), sheet, replay))
                .orElseGet(() -> replay.map(predictor -> SetupStanding.of(sheet, predictor))
                        .orElseGet(() -> SetupStanding.unknown(sheet)));
        BalanceBelief belief = BalanceBelief.of(passes, standing);
        Optional<TimeSince> time = baseline.flatMap(good -> TimeSince.of(stint, sheet, good));
        PriceEstimator prices = new PriceEstimator(passes, belief, standing, GripWorth.of(stint, driven, sheet));
        TriggerJudge triggers = new TriggerJudge(passes, belief, standing, since, sheet.drivenAxle());
        List<Finding> findings = new ArrayList<>(SlidePattern.find(
                trusted, baseline.map(Baseline::passes).orElse(List.of()), habits, belief, triggers, prices));
        Optional<Finding> level = LevelPattern.find(passes, belief, standing, triggers, prices);
        level.ifPresent(findings::add);
        Optional<Finding> suspicion = findings.stream()
                .filter(finding -> finding.lapWide() && finding.probability() >= Certainty.SUSPECTED)
                .max(Comparator.comparingDouble(Finding::probability));
        Optional<Difference> lost = time.flatMap(TimeSince::lost);
        Grounds grounds = new Grounds(
                car,
                standing,
                belief.levels(),
                level,
                baseline,
                time,
                findings.stream()
                        .sorted(Comparator.comparingDouble(Finding::probability).reversed())
                        .toList());
        List<DrivingFault> feet =
                Stream.concat(since.faults().stream(), habits.stream()).toList();
        findings.removeIf(finding -> finding.probability() < Certainty.least(finding, standing, feet));
        if (laps < LapsNeeded.FEWEST || !repeatability.repeatable()) {
            // laps that cannot judge the car name no problem of it; what they hint at is in the reason
            findings.removeIf(Finding::lapWide);
        }
        oneForTheCar(findings, level, !standing.isUnknown());
        findings.sort(Comparator.comparing(Finding::lapWide)
                .thenComparingDouble(
                        finding -> finding.probability() * finding.price().seconds())
                .reversed());
        findings.replaceAll(finding -> DriverCause.judge(finding, habits, since, lost, standing));
        time.ifPresent(longer -> findings.replaceAll(finding -> longer.priced(finding, since)));
        List<DrivingFault> faults = DriverCause.withHarmful(habits, since, findings, grounds);
        return conclude(stint, trace, passes, repeatability, faults, findings, suspicion, grounds, laps)
                .on(grounds)
                .with(axles.join().with(stint, passes));
    }

    /**
     * A car has one balance. What its setup and all corners say goes before slides; where nothing is known of the setup, what is surer
     * does.
     */
    private static void oneForTheCar(List<Finding> findings, Optional<Finding> level, boolean setupKnown) {
        Predicate<Finding> ofTheCar = finding -> finding.lapWide() && finding.cause() == Cause.CAR;
        Optional<Finding> first = level.filter(findings::contains)
                .filter(found -> setupKnown
                        || findings.stream()
                                .filter(ofTheCar)
                                .allMatch(other -> other.probability() <= found.probability()));
        if (first.isPresent()) {
            findings.removeIf(ofTheCar.and(finding -> !finding.equals(first.get())));
        } else {
            level.ifPresent(findings::remove);
        }
    }

    /** Without anything to hold the setup against, or a lap that can be replayed, nothing is known of what it does. */
    static Optional<CarBelief> car(
            TracedStint stint, List<DrivenLap> driven, CarSheet sheet, Optional<Baseline> baseline) {
        return (baseline.isPresent() || SetupStanding.canBeKnown(sheet)) && !driven.isEmpty()
                ? Optional.of(Identifier.believe(stint, driven, sheet))
                : Optional.empty();
    }

    private static Diagnosis conclude(
            Stint stint,
            HandlingTrace trace,
            List<CornerPass> passes,
            Repeatability repeatability,
            List<DrivingFault> faults,
            List<Finding> findings,
            Optional<Finding> suspicion,
            Grounds grounds,
            int laps) {
        Verdict verdict;
        String reason;
        if (laps < LapsNeeded.FEWEST || passes.isEmpty()) {
            verdict = Verdict.NOT_ENOUGH_EVIDENCE;
            reason = (laps == 1 ? "1 lap" : laps + " laps") + " can be judged; at least " + LapsNeeded.FEWEST
                    + " are needed, better " + LapsNeeded.GOOD + "." + soFar(suspicion);
        } else if (trace.steering().contradicts()) {
            verdict = Verdict.NOT_ENOUGH_EVIDENCE;
            reason = String.format(
                    Locale.ROOT,
                    "In gentle corners the wheels are turned %.2f times as far as they need to be: the steering ratio or the"
                            + " wheelbase of the car sheet is wrong by about that factor, and every balance figure with it."
                            + " Correct the sheet and ask again.",
                    trace.steering().factor());
        } else if (!repeatability.repeatable()) {
            verdict = Verdict.COACH_THE_DRIVER;
            reason = repeatability.why() + soFar(suspicion);
        } else if (findings.stream().noneMatch(Finding::lapWide)
                && DriverCause.habit(faults).isPresent()) {
            verdict = Verdict.COACH_THE_DRIVER;
            reason = DriverCause.habit(faults)
                    .map(habit -> DriverCause.words(habit, grounds.lost()))
                    .orElse("");
        } else if (findings.stream().noneMatch(Finding::lapWide) && suspicion.isPresent()) {
            verdict = Verdict.NOT_ENOUGH_EVIDENCE;
            reason = String.format(
                    Locale.ROOT,
                    "There are signs of %s (probability %.2f), too weak to act on.",
                    place(suspicion.get()),
                    suspicion.get().probability());
        } else if (findings.stream().noneMatch(Finding::lapWide) && grounds.losesTimeSinceAChange()) {
            verdict = Verdict.NOT_ENOUGH_EVIDENCE;
            reason = InGoodOrder.butSlower(grounds);
        } else if (findings.stream().noneMatch(Finding::lapWide)) {
            verdict = Verdict.NOTHING_TO_CHANGE;
            reason = findings.isEmpty()
                    ? InGoodOrder.words(grounds).orElseGet(() -> noProblem(grounds.standing()))
                    : "What was found belongs to one corner: no reason to change the car.";
        } else {
            Finding first = findings.get(0);
            verdict = first.cause() == Cause.DRIVER ? Verdict.COACH_THE_DRIVER : Verdict.CHANGE_THE_CAR;
            reason = String.format(
                    Locale.ROOT,
                    "%s, set off by %s: %s.",
                    capital(place(first)),
                    first.trigger() == Trigger.NONE
                            ? "no single input"
                            : first.trigger().words(),
                    first.price().words());
        }
        return new Diagnosis(stint, trace, passes, repeatability, faults, findings, verdict, reason);
    }

    private static String soFar(Optional<Finding> suspicion) {
        return suspicion
                .map(signs -> " So far there are signs of " + place(signs) + ".")
                .orElse("");
    }

    private static String noProblem(SetupStanding standing) {
        return "No problem with the car repeats round the lap"
                + (standing.isUnknown()
                        ? "; faults below half a degree do not show without "
                                + (standing.yard() == Yard.NONE ? "ranges on the car sheet or " : "")
                                + "a baseline."
                        : ".");
    }

    private static String place(Finding finding) {
        String where = switch (finding.phase()) {
            case BRAKING -> "under braking for ";
            case ENTRY -> "on entry to ";
            case MID -> "in the middle of ";
            case EXIT -> "on the exit of ";
        };
        return finding.balance().words() + " " + where + finding.speed().corners();
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
