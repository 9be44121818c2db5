package setwright.app.truthbench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import setwright.core.handling.Phase;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Verdict;
import setwright.core.simulation.truth.TriggerWitness;
import setwright.core.simulation.truth.TrueDriving;
import setwright.core.simulation.truth.TruePrice;
import setwright.core.simulation.truth.TrueProblem;
import setwright.core.simulation.truth.TrueTrigger;

/**
 * A case with its truth and its answer, without the long arrays.
 *
 * @param benchCase     as driven
 * @param lost          times that the car was lost before
 * @param driving       how steady it was
 * @param problem       true; empty without a fault
 * @param price         true; empty without a fault
 * @param triggerSeen   whether the histories bear the mechanism's trigger out
 * @param witnesses     what they say, in words
 * @param repeatable    the program's gate; empty when it did not get there
 * @param findings      the program's
 * @param verdict       the program's
 * @param triggerRight  whether its first finding names the trigger
 * @param levers        inputs that it would have the driver use less or later
 * @param misread       columns that were read wrongly
 * @param failure       where reading or judging ended; empty when it went through
 * @param pairs         measured beside true balance
 * @param alike         how the car differs most from the balanced one when both are driven alike; empty where nothing could be judged
 * @param days          how both days differ most, measured without error; empty without a baseline
 * @param proposed      the change the program proposes; empty for none
 */
record Outcome(
        BenchCase benchCase,
        int lost,
        TrueDriving driving,
        Optional<TrueProblem> problem,
        Optional<TruePrice> price,
        boolean triggerSeen,
        String witnesses,
        Optional<Boolean> repeatable,
        List<Finding> findings,
        Optional<Verdict> verdict,
        boolean triggerRight,
        Set<TrueTrigger> levers,
        List<String> misread,
        String failure,
        List<BalancePair> pairs,
        Optional<TrueProblem> alike,
        Optional<TrueProblem> days,
        Optional<ProposedChange> proposed) {

    static Outcome of(
            Driven driven,
            CaseTruth truth,
            CaseAnswer answer,
            Optional<ProposedChange> proposed,
            List<String> misread) {
        return new Outcome(
                driven.last(),
                driven.lost(),
                truth.driving(),
                truth.problem(),
                truth.price(),
                seen(driven.last().trigger(), truth),
                truth.witnesses().toString(),
                answer.diagnosis().map(found -> found.repeatability().repeatable()),
                answer.findings(),
                answer.diagnosis().map(Diagnosis::verdict),
                answer.triggerRight(),
                answer.diagnosis()
                        .flatMap(found -> answer.sheet().map(sheet -> LeverAnswer.against(found, sheet)))
                        .orElse(Set.of()),
                misread,
                answer.failure(),
                answer.diagnosis().map(found -> BalancePair.of(found, truth)).orElse(List.of()),
                answer.diagnosis().flatMap(found -> KnownCar.problem(driven, found)),
                truth.days(),
                proposed);
    }

    /** What is there in steady cornering begins as the car turns in, whatever the feet do: it is seen when it lasts into the middle. */
    private static boolean seen(TrueTrigger trigger, CaseTruth truth) {
        boolean steady = trigger == TrueTrigger.STEADY || trigger == TrueTrigger.SPEED;
        return steady
                ? truth.problem()
                        .filter(found -> found.acceptPhases().contains(Phase.MID))
                        .isPresent()
                : TriggerWitness.agrees(truth.witnesses(), trigger);
    }

    Optional<Finding> top() {
        return findings.stream().findFirst();
    }

    /** Returns the problem that the answer must name: of a steady driver, and not weak. */
    Optional<TrueProblem> wanted() {
        return problem.filter(found -> driving.consistent() && !found.weak());
    }

    /** Tells whether what is wrong moves the balance clearly, or makes the laps slower beyond chance: else it is a style. */
    boolean doesHarm() {
        return problem.filter(found -> !found.weak()).isPresent()
                || price.filter(found -> found.seconds() > BenchMeasure.SURE * found.errorS())
                        .isPresent();
    }

    /** Tells whether there is nothing to find: no fault in car or driver, and steady driving. */
    boolean nothingToFind() {
        return problem.isEmpty() && driving.consistent();
    }

    boolean signRight() {
        return wanted().isPresent()
                && top().filter(finding -> finding.balance() == wanted().get().sign())
                        .isPresent();
    }

    boolean phaseRight() {
        return wanted().isPresent()
                && top().filter(finding -> wanted().get().acceptPhases().contains(finding.phase()))
                        .isPresent();
    }

    boolean speedRight() {
        return wanted().isPresent()
                && top().filter(finding -> wanted().get().acceptSpeeds().contains(finding.speed()))
                        .isPresent();
    }

    boolean problemRight() {
        return signRight() && phaseRight() && speedRight();
    }

    /** Tells whether a steady driver with a fault of technique is told what to do about it, and no change of the car. */
    boolean leverRight() {
        return levers.contains(benchCase.trigger())
                && proposed.isEmpty()
                && !verdict.equals(Optional.of(Verdict.CHANGE_THE_CAR));
    }

    /** Tells whether a judge who knows the true car names the problem. */
    boolean knowable() {
        return names(alike);
    }

    /** Tells whether a judge who measures both days without error names the problem. */
    boolean measurable() {
        return names(days);
    }

    private boolean names(Optional<TrueProblem> named) {
        return wanted().filter(
                        problem -> named.filter(found -> problem.accepts(found.sign(), found.phase(), found.speed()))
                                .isPresent())
                .isPresent();
    }

    /** Returns the problem that the answer must name, both cars driven alike: of a steady driver, and not weak. */
    Optional<TrueProblem> wantedAlike() {
        return alike.filter(found -> benchCase.kind().ofTheCar() && driving.consistent() && !found.weak());
    }

    boolean alikeRight() {
        return wantedAlike()
                .filter(problem -> top().filter(
                                finding -> problem.accepts(finding.balance(), finding.phase(), finding.speed()))
                        .isPresent())
                .isPresent();
    }

    /** Returns what the verdict should be; empty where the case is not counted. */
    Optional<Verdict> rightVerdict() {
        if (!driving.consistent()) {
            return Optional.of(Verdict.COACH_THE_DRIVER);
        }
        if (problem.isEmpty()) {
            return Optional.of(Verdict.NOTHING_TO_CHANGE);
        }
        return wanted().map(found -> benchCase.kind().ofTheCar() ? Verdict.CHANGE_THE_CAR : Verdict.COACH_THE_DRIVER);
    }

    /** Returns what the miss is, in words. */
    String miss() {
        if (!failure.isEmpty()) {
            return "could not be read or judged";
        }
        if (repeatable.filter(steady -> !steady).isPresent()) {
            return "a steady driver taken for an unsteady one";
        }
        if (top().isEmpty()) {
            return "no finding: " + verdict.map(Verdict::words).orElse("none");
        }
        String wrong =
                (signRight() ? "" : " balance") + (phaseRight() ? "" : " phase") + (speedRight() ? "" : " speed");
        return "wrong" + wrong.replace(" ", ", ").substring(1);
    }

    /** Returns the true problem in words. */
    String truthWords() {
        return problem.map(Outcome::words).orElse("none");
    }

    static String words(TrueProblem problem) {
        return String.format(
                java.util.Locale.ROOT,
                "%s %s %s %.2f deg%s",
                problem.sign().words(),
                problem.phase().words(),
                problem.speed().words(),
                Math.toDegrees(problem.strengthRad()),
                problem.weak() ? " (weak)" : "");
    }

    /** Returns the first finding in words. */
    String answerWords() {
        return top().map(finding -> finding.balance().words() + " "
                        + finding.phase().words() + " " + finding.speed().words() + ", "
                        + finding.trigger().words())
                .orElse(failure.isEmpty() ? verdict.map(Verdict::words).orElse("none") : failure);
    }
}
