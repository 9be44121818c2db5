package setwright.core.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.core.advice.Adviser;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.circuit.Lap;
import setwright.core.identification.Identifier;
import setwright.core.identification.TracedStint;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Verdict;
import setwright.core.numerics.Robust;
import setwright.core.proposal.Candidate.PoolGain;
import setwright.core.recording.Channel;
import setwright.core.replay.DrivenLap;
import setwright.core.replay.Prediction;
import setwright.core.replay.Predictor;

/*
 * Design note. All items are turned clearly each way with few draws; balance effects go with the size of a turn, so that the size is
 * chosen by scaling, and only the best are replayed as they are, with all draws.
 */

/** Chooses the one change. */
public final class Proposer {
    /** Enough to rank by. */
    private static final int DRAWS = 40;

    private static final int REPLAYED = 12;
    /** The smallest turn with this share of the best one's gain is taken: it is the more reversible. */
    private static final double NEARLY_AS_GOOD = 0.9;
    /** Below it nobody knows whether the change helps. */
    private static final double LEAST_SURE = 0.8;
    /** From here on the laps speak clearly against it. */
    private static final double SURELY_SLOWER = 0.8;

    private final Diagnosis diagnosis;
    private final Finding target;
    private final CarSheet sheet;
    private final CarBelief car;
    private final Predictor predictor;
    private final LearntEffects learnt;
    private final DriversAnswer answer;
    private final GuardRails rails;
    private final double lapS;

    private Proposer(
            Diagnosis diagnosis,
            Finding target,
            CarSheet sheet,
            CarBelief car,
            Predictor predictor,
            LearntEffects learnt) {
        this.diagnosis = diagnosis;
        this.target = target;
        this.sheet = sheet;
        this.car = car;
        this.predictor = predictor;
        this.learnt = learnt;
        this.answer = DriversAnswer.of(diagnosis);
        this.rails = new GuardRails(
                sheet,
                new CarAssembler(sheet).build(car.middle()),
                fastest(diagnosis),
                Adviser.review(diagnosis, sheet).advice());
        this.lapS = Robust.median(
                diagnosis.stint().goodLaps().stream().mapToDouble(Lap::timeS).toArray());
    }

    /**
     * Proposes what to change on a car on which nothing was tried before.
     *
     * @param diagnosis  of the laps
     * @param sheet      of the car as driven
     */
    public static Proposal propose(Diagnosis diagnosis, CarSheet sheet) {
        return propose(diagnosis, sheet, LearntEffects.none());
    }

    /**
     * Proposes what to change.
     *
     * @param diagnosis  of the laps
     * @param sheet      of the car as driven
     * @param learnt     what changes did on this car when they were tried
     */
    public static Proposal propose(Diagnosis diagnosis, CarSheet sheet, LearntEffects learnt) {
        Optional<Finding> target = diagnosis.findings().stream()
                .filter(finding -> finding.lapWide() && finding.cause() == Finding.Cause.CAR)
                .findFirst();
        if (diagnosis.verdict() != Verdict.CHANGE_THE_CAR || target.isEmpty()) {
            return none(Optional.empty(), List.of(), diagnosis.reason());
        }
        List<Turn> turns = Turns.clear(sheet);
        if (turns.isEmpty()) {
            return none(
                    target,
                    List.of(),
                    "The car sheet lists no item that can be turned and predicted; add a setup with ranges and steps.");
        }
        List<DrivenLap> laps = DrivenLap.of(diagnosis.stint(), diagnosis.trace(), diagnosis.passes());
        if (laps.isEmpty()) {
            return none(target, List.of(), "No good lap is free of gaps, so that no change can be replayed.");
        }
        TracedStint traced = new TracedStint(diagnosis.stint(), diagnosis.trace(), diagnosis.passes());
        CarBelief car = diagnosis.grounds().car().orElseGet(() -> Identifier.believe(traced, laps, sheet));
        Predictor predictor = Predictor.of(diagnosis.stint(), diagnosis.trace(), diagnosis.passes(), laps, sheet, car);
        return new Proposer(diagnosis, target.get(), sheet, car, predictor, learnt).choose(turns);
    }

    private static Proposal none(Optional<Finding> target, List<Candidate> refused, String reason) {
        return new Proposal(target, Optional.empty(), List.of(), refused, List.of(), 0, Optional.empty(), reason);
    }

    private Proposal choose(List<Turn> turns) {
        List<Prediction> rough = predictor.predict(changes(turns), DRAWS);
        List<Turn> sized = new ArrayList<>();
        List<Double> promised = new ArrayList<>();
        for (int i = 0; i < turns.size(); i++) {
            Turn best = bestSize(turns.get(i), rough.get(i));
            sized.add(best);
            double share = best.share() / turns.get(i).share();
            promised.add(share * learnt.quickerS(rough.get(i), answer::to)
                    - DriversAnswer.seconds(
                            share * rough.get(i).lapTimeS().central(),
                            total(answer.cost().gains(rough.get(i), share))));
        }
        List<Turn> replayed = byPromise(sized, promised);
        List<Prediction> exact = predictor.predict(changes(replayed));
        List<Candidate> foreseen = new ArrayList<>();
        for (int i = 0; i < replayed.size(); i++) {
            candidate(replayed.get(i), exact.get(i)).ifPresent(foreseen::add);
        }
        foreseen.sort(Comparator.comparingDouble(Candidate::score).reversed());
        List<Candidate> candidates =
                LimitLap.judge(foreseen, sheet, car, diagnosis.stint().circuit().line());
        List<Candidate> allowed =
                candidates.stream().filter(Candidate::worthMaking).toList();
        List<Candidate> refused =
                candidates.stream().filter(candidate -> !candidate.allowed()).toList();
        if (allowed.isEmpty()) {
            return none(
                    Optional.of(target),
                    refused,
                    "No single change within the ranges of the sheet does enough against this without doing harm elsewhere.");
        }
        List<Candidate> best = Ties.best(allowed);
        Candidate chosen = best.get(0);
        List<Candidate> others = Ties.without(chosen, allowed);
        Expectation expectation = Expectation.of(chosen, target, diagnosis);
        String choice = ChoiceWords.of(chosen, target, turns.size(), replayed.size(), best.size(), lapS);
        return new Proposal(
                Optional.of(target),
                Optional.of(chosen),
                others,
                refused,
                expectation.sentences(),
                expectation.laps(),
                expectation.refutation(),
                StandingOut.words(chosen, others, target, diagnosis.grounds().standing())
                        .map(besides -> choice + " " + besides)
                        .orElse(choice));
    }

    private static List<List<SetupChange>> changes(List<Turn> turns) {
        return turns.stream().map(turn -> List.of(turn.change())).toList();
    }

    private static List<Turn> byPromise(List<Turn> turns, List<Double> promised) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < turns.size(); i++) {
            if (promised.get(i) > 0.0) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparingDouble((Integer i) -> promised.get(i)).reversed());
        return order.stream().limit(REPLAYED).map(turns::get).toList();
    }

    private Turn bestSize(Turn clear, Prediction prediction) {
        List<Turn> sizes = Turns.sizes(clear);
        double best = Double.NEGATIVE_INFINITY;
        for (Turn size : sizes) {
            best = Math.max(best, total(gains(prediction, clear, size)));
        }
        for (Turn size : sizes) {
            if (total(gains(prediction, clear, size)) >= (best > 0.0 ? NEARLY_AS_GOOD * best : best)) {
                return size;
            }
        }
        return clear;
    }

    private List<PoolGain> gains(Prediction prediction, Turn predicted, Turn wanted) {
        return answer.cost().gains(prediction, wanted.share() / predicted.share());
    }

    private static double total(List<PoolGain> gains) {
        return gains.stream().mapToDouble(PoolGain::gainS).sum();
    }

    private Optional<Candidate> candidate(Turn turn, Prediction replayed) {
        Prediction prediction = learnt.update(answer.to(replayed));
        return target.moved(prediction).map(effect -> {
            List<PoolGain> gains = answer.cost().gains(BalanceAnswer.behind(replayed, prediction), 1.0);
            boolean moreUndersteer = target.balance() == BalanceSign.OVERSTEER;
            double cure = moreUndersteer ? effect.probabilityPositive() : 1.0 - effect.probabilityPositive();
            CarSheet changed = sheet.with(List.of(turn.change()));
            List<Refusal> refused =
                    new ArrayList<>(rails.against(changed, new CarAssembler(sheet).build(changed, car.middle())));
            if (cure < LEAST_SURE) {
                refused.add(Refusal.of(
                        Refusal.Kind.NOT_SURE,
                        Refusal.text(
                                "whether it helps is not sure: probability %.2f that the target moves the right way, %.1f is asked",
                                cure, LEAST_SURE),
                        new Refusal.Figure("probability_cure", cure),
                        new Refusal.Figure("probability_cure_least", LEAST_SURE)));
            }
            Harm.of(gains, prediction, target).ifPresent(refused::add);
            BrakesOff.refusal(turn, target, diagnosis.grounds().standing()).ifPresent(refused::add);
            if (prediction.lapTimeS().probabilityPositive() >= SURELY_SLOWER) {
                refused.add(Refusal.of(
                        Refusal.Kind.SLOWER,
                        Refusal.text(
                                "it would make the lap slower, by %.2f s (probability %.2f)",
                                prediction.lapTimeS().central(),
                                prediction.lapTimeS().probabilityPositive()),
                        new Refusal.Figure("slower_s", prediction.lapTimeS().central()),
                        new Refusal.Figure(
                                "probability_slower", prediction.lapTimeS().probabilityPositive())));
            }
            if (refused.isEmpty()) {
                Slightness.refusal(
                                (moreUndersteer ? 1.0 : -1.0) * effect.central(),
                                -prediction.lapTimeS().central())
                        .ifPresent(refused::add);
            }
            return new Candidate(
                    turn,
                    prediction,
                    effect,
                    cure,
                    gains,
                    -prediction.lapTimeS().central(),
                    refused);
        });
    }

    private static double fastest(Diagnosis diagnosis) {
        Channel speed = diagnosis.trace().speed();
        double most = 0.0;
        for (int i = 0; i < speed.size(); i++) {
            most = speed.get(i) > most ? speed.get(i) : most;
        }
        return most;
    }
}
