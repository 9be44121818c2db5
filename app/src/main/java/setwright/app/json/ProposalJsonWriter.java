package setwright.app.json;

import static setwright.app.json.Numbers.known;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import setwright.app.propose.ProposalAnswer;
import setwright.app.story.Story;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.proposal.Refusal;

/** Writes a proposal as JSON of version 1. Units do not follow the user's choice: they stand in the field names. */
public final class ProposalJsonWriter {
    private static final int VERSION = 1;

    private ProposalJsonWriter() {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(ProposalAnswer answer) {
        Proposal proposal = answer.proposal();
        Stint stint = answer.answer().diagnosis().stint();
        return Numbers.text(new ProposalJson(
                VERSION,
                new ProposalJson.Recording(
                        stint.recording().name(),
                        stint.goodLaps().stream().map(Lap::number).toList()),
                answer.answer().car().description(),
                answer.answer().diagnosis().verdict().words(),
                proposal.target().map(ProposalJsonWriter::target),
                proposal.chosen().map(chosen -> candidate(chosen, proposal)),
                all(proposal.others(), proposal),
                all(proposal.refused(), proposal),
                proposal.expect(),
                proposal.laps(),
                proposal.refutation()
                        .map(found -> new ProposalJson.Refutation(
                                found.laps(), Numbers.degrees(found.belowRad()), Numbers.degrees(found.aboveRad()))),
                proposal.reason(),
                Story.CAUTION,
                TechniqueJsonWriter.of(
                        answer.answer().diagnosis(), answer.answer().car()),
                AdviceJsonWriter.of(answer.answer())));
    }

    private static ProposalJson.Target target(Finding finding) {
        return new ProposalJson.Target(
                finding.phase().words(),
                finding.speed().words(),
                finding.balance().words(),
                finding.trigger().words(),
                known(finding.probability()));
    }

    private static List<ProposalJson.Candidate> all(List<Candidate> candidates, Proposal proposal) {
        return candidates.stream()
                .map(candidate -> candidate(candidate, proposal))
                .toList();
    }

    private static ProposalJson.Candidate candidate(Candidate candidate, Proposal proposal) {
        return new ProposalJson.Candidate(
                candidate.turn().item().name(),
                candidate.turn().item().value(),
                candidate.turn().to(),
                candidate.turn().steps(),
                candidate.turn().item().unit(),
                known(candidate.score()),
                known(candidate.prediction().lapTimeS().central()),
                known(candidate.prediction().lapTimeS().low()),
                known(candidate.prediction().lapTimeS().high()),
                known(1.0 - candidate.prediction().lapTimeS().probabilityPositive()),
                Numbers.degrees(candidate.target().central()),
                known(candidate.towardCure()),
                proposal.target()
                        .flatMap(finding -> candidate.selectivity(finding.phase()))
                        .map(Numbers::known)
                        .orElse(OptionalDouble.empty()),
                candidate.prediction().phases().stream()
                        .map(effect -> new ProposalJson.Effect(
                                effect.phase().words(),
                                effect.speedClass().map(SpeedClass::words).orElse("all"),
                                Numbers.degrees(effect.balance().central()),
                                Numbers.degrees(effect.balance().low()),
                                Numbers.degrees(effect.balance().high())))
                        .toList(),
                candidate.prediction().reasons(),
                candidate.prediction().doubts(),
                candidate.objections(),
                candidate.refused().stream().map(ProposalJsonWriter::objection).toList());
    }

    private static ProposalJson.Objection objection(Refusal refusal) {
        Map<String, OptionalDouble> figures = new LinkedHashMap<>();
        refusal.figures().forEach(figure -> figures.put(figure.name(), known(figure.value())));
        return new ProposalJson.Objection(
                refusal.kind().words(),
                refusal.words(),
                refusal.where().map(pool -> pool.phase().words()),
                refusal.where()
                        .map(pool -> pool.speedClass().map(SpeedClass::words).orElse("all")),
                figures);
    }
}
