package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import setwright.app.propose.ProposalAnswer;
import setwright.app.units.Figures;
import setwright.core.car.setup.ItemRange;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.replay.Effect;

/** What to do next, in sentences. */
public final class ProposalWords {
    /** Units that only count: "6 step" reads badly. */
    private static final Set<String> COUNTED = Set.of("step", "click", "position");

    private final ProposalAnswer answer;
    private final Proposal proposal;
    private final Figures figures;

    /** Makes sentences about a proposal. */
    public ProposalWords(ProposalAnswer answer, Figures figures) {
        this.answer = answer;
        this.proposal = answer.proposal();
        this.figures = figures;
    }

    /** Returns what to do, without a full stop. */
    public String headline() {
        if (proposal.chosen().isPresent()) {
            Candidate chosen = proposal.chosen().get();
            String unit = chosen.turn().item().unit();
            return "Turn " + brief(chosen)
                    + (unit.isEmpty() || COUNTED.contains(unit) ? "" : Figures.KEPT_TOGETHER + unit);
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
        sentences.add("On these laps it makes " + figures.signed(time.central(), 2) + " s ("
                + figures.signed(time.low(), 2) + " to " + figures.signed(time.high(), 2)
                + "); the probability that it is quicker is " + figures.number(1.0 - time.probabilityPositive(), 2)
                + ".");
        proposal.target()
                .flatMap(target -> chosen.selectivity(target.phase()))
                .ifPresent(share -> sentences.add(String.format(
                        Locale.ROOT, "%.0f %% of what it does to the balance falls into that phase.", 100.0 * share)));
        return sentences;
    }

    /** Returns what is turned, such as {@code front_bar 5 to 3}. */
    public static String brief(Candidate candidate) {
        return candidate.turn().item().name() + " "
                + ItemRange.plain(candidate.turn().item().value()) + " to "
                + ItemRange.plain(candidate.turn().to());
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
