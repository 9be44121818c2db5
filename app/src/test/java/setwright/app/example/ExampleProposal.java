package setwright.app.example;

import java.util.List;
import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.app.propose.ProposalAnswer;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.proposal.Refusal;
import setwright.core.proposal.Refutation;
import setwright.core.proposal.Turn;
import setwright.core.replay.Prediction;

/** An invented proposal for the invented answer: a softer front bar, with one change weighed and one refused. */
public final class ExampleProposal {
    private ExampleProposal() {}

    /** Returns it. */
    public static ProposalAnswer answer() {
        return new ProposalAnswer(Example.answer(), proposal());
    }

    /** Returns the same when no change is worth making. */
    public static ProposalAnswer none() {
        Proposal whole = proposal();
        return new ProposalAnswer(
                Example.answer(),
                new Proposal(
                        whole.target(),
                        Optional.empty(),
                        List.of(),
                        whole.refused(),
                        List.of(),
                        0,
                        Optional.empty(),
                        "No single change within the ranges of the sheet does enough against this without doing harm elsewhere."));
    }

    static Proposal proposal() {
        Answer answer = Example.answer();
        Finding target = answer.diagnosis().findings().get(0);
        SetupItem bar = answer.car().item("front_bar").orElseThrow();
        SetupItem spring = answer.car().item("front_spring").orElseThrow();
        List<Turn> turns = List.of(
                new Turn(bar, bar.value() - bar.step(), -1),
                new Turn(spring, spring.value() - spring.step(), -1),
                new Turn(spring, spring.value() + spring.step(), 1));
        List<Prediction> predictions = ExamplePrediction.predictions(
                answer,
                turns.stream().map(turn -> List.<SetupChange>of(turn.change())).toList());
        return new Proposal(
                Optional.of(target),
                Optional.of(candidate(target, turns.get(0), predictions.get(0), List.of())),
                List.of(candidate(target, turns.get(1), predictions.get(1), List.of())),
                List.of(candidate(
                        target,
                        turns.get(2),
                        predictions.get(2),
                        List.of(new Refusal(
                                Refusal.Kind.RIDE_FREQUENCY,
                                "the front ride frequency would be 9.20 Hz (now 7.90), outside the 1 to 8 Hz of such a car",
                                Optional.empty(),
                                List.of(
                                        new Refusal.Figure("ride_frequency_hz", 9.2),
                                        new Refusal.Figure("ride_frequency_now_hz", 7.9),
                                        new Refusal.Figure("ride_frequency_least_hz", 1.0),
                                        new Refusal.Figure("ride_frequency_most_hz", 8.0)))))),
                List.of("If it is right, the balance moves.", "It takes 6 laps a side to see that."),
                6,
                Optional.of(new Refutation(-0.01, 0.002, 6)),
                "8 turns of items were tried in rough and the 3 most promising replayed in full; of those that are allowed this"
                        + " is worth most.");
    }

    private static Candidate candidate(Finding target, Turn turn, Prediction prediction, List<Refusal> refused) {
        return new Candidate(turn, prediction, target.moved(prediction).orElseThrow(), 0.93, List.of(), 0.1, refused);
    }
}
