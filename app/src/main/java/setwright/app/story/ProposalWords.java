package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.propose.ProposalAnswer;
import setwright.app.units.Figures;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.proposal.Turn;
import setwright.core.replay.Effect;
import setwright.core.technique.TechniqueFinder;
import setwright.core.technique.TechniqueLever;

/** What to do next, in sentences. */
public final class ProposalWords {
    private final ProposalAnswer answer;
    private final Proposal proposal;
    private final List<TechniqueLever> levers;
    private final Figures figures;

    /** Makes sentences about a proposal. */
    public ProposalWords(ProposalAnswer answer, Figures figures) {
        this.answer = answer;
        this.proposal = answer.proposal();
        this.levers = TechniqueFinder.find(
                answer.answer().diagnosis(), answer.answer().car().drivenAxle());
        this.figures = figures;
    }

    /** Returns what to do, without a full stop: what the driver can try against the same problem, then the turn. */
    public String headline() {
        Optional<Finding> target = proposal.target();
        return proposal.chosen().isPresent() && target.isPresent()
                ? action(proposal.chosen().get().turn(), target.get(), levers, figures)
                : title();
    }

    /** Returns what the driver can do himself, as found in the same laps. */
    public List<TechniqueLever> levers() {
        return levers;
    }

    static String action(Turn turn, Finding target, List<TechniqueLever> levers, Figures figures) {
        return levers.stream()
                .filter(lever -> lever.finding().filter(target::equals).isPresent())
                .findFirst()
                .map(lever -> "Technique first: " + Figures.uncapital(TechniqueWords.move(lever, figures)) + " in "
                        + Figures.corners(TechniqueWords.corners(lever)) + "; then turn " + TurnWords.inFull(turn))
                .orElseGet(() -> "Turn " + TurnWords.inFull(turn));
    }

    /** Returns what is done to the car, short enough for a title. */
    public String title() {
        if (proposal.chosen().isPresent()) {
            return "Turn " + TurnWords.inFull(proposal.chosen().get().turn());
        }
        return proposal.target().isPresent()
                ? "No change of the setup"
                : Figures.capital(answer.answer().diagnosis().verdict().words()) + ": no change of the setup";
    }

    /** Returns what it is for and why, the whole argument in plain sentences. */
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        proposal.target().ifPresent(target -> reasons.add("For " + problem(target) + "."));
        reasons.add(figures.told(proposal.reason()));
        proposal.chosen().ifPresent(chosen -> {
            reasons.addAll(effect(chosen));
            chosen.prediction().reasons().stream().map(figures::told).forEach(reasons::add);
        });
        return reasons;
    }

    /** Returns what the chosen change does to the lap and where. */
    public List<String> effect(Candidate chosen) {
        Effect time = chosen.prediction().lapTimeS();
        List<String> sentences = new ArrayList<>();
        sentences.add("On these laps the lap time changes by " + figures.signed(time.central(), 2) + " s ("
                + figures.signed(time.low(), 2) + " to " + figures.signed(time.high(), 2)
                + "); the probability that it is quicker is " + figures.number(1.0 - time.probabilityPositive(), 2)
                + ".");
        proposal.target()
                .flatMap(target -> chosen.selectivity(target.phase()))
                .ifPresent(share -> sentences.add(String.format(
                        Locale.ROOT, "%.0f %% of what it does to the balance falls into that phase.", 100.0 * share)));
        return sentences;
    }

    /** Returns what is turned and which way, such as {@code front_bar 5 to 3 (softer)}. */
    public static String brief(Candidate candidate) {
        return TurnWords.brief(candidate.turn());
    }

    /** Returns why a change is not to be made, with what it would do in the target and to the lap. */
    public String refusal(Candidate candidate) {
        return TurnWords.values(candidate.turn()) + " (" + TurnWords.way(candidate.turn()) + "; " + promise(candidate)
                + "): " + whyNot(candidate);
    }

    /** Returns why a change is not to be made, as a sentence to stand after a colon. */
    public String whyNot(Candidate candidate) {
        return figures.shown(String.join("; ", candidate.objections())) + ".";
    }

    /** Returns the predicted change in the target and of the lap time: {@code target -0.21 deg, lap -0.29 s}. */
    public String promise(Candidate candidate) {
        return "target " + figures.signed(Math.toDegrees(candidate.target().central()), 2) + " deg, lap "
                + figures.signed(candidate.prediction().lapTimeS().central(), 2) + " s";
    }

    /** Returns the problem that is to be cured, without a full stop. */
    public static String problem(Finding target) {
        return String.format(
                Locale.ROOT,
                "%s %s in %s (probability %.2f)",
                target.balance().words(),
                target.phase().place(),
                target.speed().corners(),
                target.probability());
    }
}
