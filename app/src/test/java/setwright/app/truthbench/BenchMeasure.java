package setwright.app.truthbench;

import java.util.Optional;
import java.util.function.Predicate;
import setwright.app.scoreboard.Count;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Verdict;

/** What is counted over the cases, and in which of them it could be. */
enum BenchMeasure {
    READ(
            "read and judged to the end",
            true,
            outcome -> true,
            outcome -> outcome.failure().isEmpty()),
    COLUMNS(
            "columns that matter read rightly",
            true,
            outcome -> outcome.failure().isEmpty(),
            outcome -> outcome.misread().isEmpty()),
    TOP_PROBLEM("top problem right", true, BenchMeasure::wanted, Outcome::problemRight),
    ALIKE(
            "top problem right, both cars driven alike",
            true,
            outcome -> outcome.wantedAlike().isPresent(),
            Outcome::alikeRight),
    ALIKE_BALANCE(
            "its balance right, both cars driven alike",
            true,
            outcome -> outcome.wantedAlike().isPresent(),
            outcome -> outcome.top()
                    .filter(finding ->
                            finding.balance() == outcome.wantedAlike().get().sign())
                    .isPresent()),
    KNOWABLE("top problem right for a judge who knows the car", true, BenchMeasure::wanted, Outcome::knowable),
    MEASURABLE(
            "top problem right for a judge who measures both days without error",
            true,
            outcome -> wanted(outcome) && outcome.days().isPresent(),
            Outcome::measurable),
    BALANCE("its balance right", true, BenchMeasure::wanted, Outcome::signRight),
    PHASE("its phase right", true, BenchMeasure::wanted, Outcome::phaseRight),
    SPEED("its speed class right", true, BenchMeasure::wanted, Outcome::speedRight),
    SOME_PROBLEM("among all findings", true, BenchMeasure::wanted, BenchMeasure::amongFindings),
    TRIGGER(
            "trigger right, where the laps show it",
            true,
            outcome -> wanted(outcome) && outcome.triggerSeen(),
            Outcome::triggerRight),
    TRIGGER_GIVEN(
            "trigger right, top problem right",
            true,
            outcome -> outcome.problemRight() && outcome.triggerSeen(),
            Outcome::triggerRight),
    VERDICT(
            "verdict right",
            true,
            outcome -> outcome.rightVerdict().isPresent(),
            outcome -> outcome.verdict().equals(outcome.rightVerdict())),
    GATE(
            "driving gate right",
            true,
            outcome -> true,
            outcome -> outcome.repeatable().equals(Optional.of(outcome.driving().consistent()))),
    GATE_STEADY(
            "steady driver let through",
            true,
            outcome -> outcome.driving().consistent(),
            outcome -> outcome.repeatable().equals(Optional.of(true))),
    GATE_UNSTEADY(
            "unsteady driver refused",
            true,
            outcome -> !outcome.driving().consistent(),
            outcome -> outcome.repeatable().equals(Optional.of(false))),
    /** A steady driver's eight laps may scatter, an unsteady one's may be alike: what he was drawn as is known for sure. */
    GATE_DRAWN(
            "driving gate right by how the driver was drawn",
            true,
            outcome -> true,
            outcome ->
                    outcome.repeatable().equals(Optional.of(outcome.benchCase().kind() != Kind.INCONSISTENT))),
    FALSE_PROBLEMS(
            "problem reported on a balanced car",
            false,
            Outcome::nothingToFind,
            outcome -> !outcome.findings().isEmpty()),
    FALSE_CHANGES(
            "setup change called for in vain",
            false,
            BenchMeasure::carIsRight,
            outcome -> outcome.verdict().equals(Optional.of(Verdict.CHANGE_THE_CAR))),
    LEVER("lever against the driver's fault, and no setup change", true, BenchMeasure::technique, Outcome::leverRight),
    LEVER_AGAINST_HARM(
            "the same, where the fault upsets the car or costs time",
            true,
            outcome -> technique(outcome) && outcome.doesHarm(),
            Outcome::leverRight),
    FALSE_LEVERS(
            "lever against brake or throttle of a good driver, balanced car",
            false,
            Outcome::nothingToFind,
            outcome -> !outcome.levers().isEmpty()),
    PRICE(
            "price interval covers the truth",
            true,
            outcome -> wanted(outcome) && outcome.problemRight(),
            BenchMeasure::priceCovers),
    PRICE_ALONE(
            "the same, without the error of the truth, balance right",
            true,
            outcome -> wanted(outcome) && outcome.signRight(),
            outcome -> priceCovers(outcome, 0.0)),
    NO_EVIDENCE(
            "not enough evidence",
            false,
            BenchMeasure::wanted,
            outcome -> outcome.verdict().equals(Optional.of(Verdict.NOT_ENOUGH_EVIDENCE))),
    PROPOSED(
            "a change proposed where the car is at fault",
            true,
            outcome -> wanted(outcome) && !carIsRight(outcome),
            outcome -> outcome.proposed().isPresent()),
    PROPOSED_IN_VAIN(
            "a change proposed in vain",
            false,
            BenchMeasure::carIsRight,
            outcome -> outcome.proposed().isPresent()),
    NOT_SLOWER(
            "proposed change not slower at the limit",
            true,
            BenchMeasure::tried,
            of(ProposedChange::notSlowerAtTheLimit)),
    HARMFUL(
            "proposed change slower by a thousandth at the limit",
            false,
            BenchMeasure::tried,
            of(ProposedChange::harmfulAtTheLimit)),
    NOT_SLOWER_DRIVEN(
            "proposed change not slower, driven", true, BenchMeasure::tried, of(ProposedChange::notSlowerDriven)),
    HARMFUL_DRIVEN(
            "proposed change slower by a thousandth, driven",
            false,
            BenchMeasure::tried,
            of(ProposedChange::harmfulDriven)),
    CURES(
            "proposed change moves the balance rightly, where clear",
            true,
            outcome -> outcome.proposed().filter(ProposedChange::balanceClear).isPresent(),
            of(ProposedChange::cures)),
    LIMIT_INTERVAL(
            "lap time at the limit within the predicted 80 %",
            true, BenchMeasure::tried, of(ProposedChange::intervalHoldsLimit)),
    DRIVEN_INTERVAL(
            "driven lap time within the predicted 80 %",
            true, BenchMeasure::tried, of(ProposedChange::intervalHoldsDriven)),
    BALANCE_INTERVAL(
            "balance within the predicted 80 %",
            true,
            outcome -> outcome.proposed().flatMap(ProposedChange::balanceRad).isPresent(),
            of(ProposedChange::intervalHoldsBalance));

    /** Of a 95 % interval of a normal quantity. */
    static final double SURE = 1.96;

    private final String words;
    private final boolean many;
    private final Predicate<Outcome> counts;
    private final Predicate<Outcome> happened;

    BenchMeasure(String words, boolean many, Predicate<Outcome> counts, Predicate<Outcome> happened) {
        this.words = words;
        this.many = many;
        this.counts = counts;
        this.happened = happened;
    }

    String words() {
        return words;
    }

    /** Tells whether the answers decide how many chances there were. */
    boolean ofAnswers() {
        return this == PRICE || this == PRICE_ALONE || this == TRIGGER_GIVEN || compareTo(NOT_SLOWER) >= 0;
    }

    /** Tells whether more is better. */
    boolean many() {
        return many;
    }

    /** Returns what a case adds. */
    Count of(Outcome outcome) {
        return counts.test(outcome) ? Count.of(happened.test(outcome)) : new Count(0, 0);
    }

    /** Returns the sum over cases. */
    Count over(Iterable<Outcome> outcomes) {
        Count sum = new Count(0, 0);
        for (Outcome outcome : outcomes) {
            sum = sum.plus(of(outcome));
        }
        return sum;
    }

    private static boolean wanted(Outcome outcome) {
        return outcome.wanted().isPresent();
    }

    private static boolean tried(Outcome outcome) {
        return outcome.proposed().isPresent();
    }

    private static Predicate<Outcome> of(Predicate<ProposedChange> what) {
        return outcome -> outcome.proposed().filter(what).isPresent();
    }

    private static boolean carIsRight(Outcome outcome) {
        return !outcome.benchCase().kind().ofTheCar();
    }

    private static boolean amongFindings(Outcome outcome) {
        return outcome.findings().stream()
                .anyMatch(finding -> outcome.wanted()
                        .filter(problem -> problem.accepts(finding.balance(), finding.phase(), finding.speed()))
                        .isPresent());
    }

    private static boolean technique(Outcome outcome) {
        return outcome.benchCase().kind() == Kind.TECHNIQUE && outcome.driving().consistent();
    }

    /** The truth has an error of its own, from the scatter of the laps. */
    private static boolean priceCovers(Outcome outcome) {
        return priceCovers(outcome, SURE);
    }

    /** Tells whether the interval and the truth overlap, whose error counts so many times. */
    private static boolean priceCovers(Outcome outcome, double errors) {
        return outcome.top()
                .map(Finding::price)
                .flatMap(told -> outcome.price()
                        .filter(price -> price.seconds() + errors * price.errorS() >= told.low()
                                && price.seconds() - errors * price.errorS() <= told.high()))
                .isPresent();
    }
}
