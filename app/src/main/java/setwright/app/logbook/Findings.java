package setwright.app.logbook;

import java.util.Locale;
import java.util.stream.Collectors;
import setwright.core.car.setup.ItemRange;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Proposal;
import setwright.logbook.row.DiagnosisRow;
import setwright.logbook.row.FindingRow;
import setwright.logbook.row.ProposalRow;

/** Turns what was found and proposed into rows, and rows into words. */
final class Findings {
    private Findings() {}

    static DiagnosisRow row(Diagnosis diagnosis, long stint) {
        return new DiagnosisRow(
                0, stint, diagnosis.verdict().words(), diagnosis.repeatability().repeatable(), Diary.now());
    }

    static FindingRow row(Finding finding, long diagnosis, int place) {
        return new FindingRow(
                0,
                diagnosis,
                place,
                finding.phase().words(),
                finding.speed().words(),
                finding.balance().words(),
                finding.trigger().words(),
                finding.cause().words(),
                finding.corners().stream().map(String::valueOf).collect(Collectors.joining(", ")),
                finding.lapShare(),
                finding.lapWide(),
                finding.probability(),
                finding.price().seconds(),
                finding.price().low(),
                finding.price().high());
    }

    static String words(FindingRow finding) {
        return String.format(
                Locale.ROOT,
                "%s, %s, %s speed, set off by %s, the %s's, probability %.2f, %.2f s a lap%s",
                finding.balance(),
                finding.phase(),
                finding.speed(),
                finding.setOffBy(),
                finding.cause(),
                finding.probability(),
                Math.abs(finding.priceS()),
                finding.priceS() < 0.0 ? " quicker than in the baseline" : "");
    }

    static ProposalRow row(Proposal proposal, long stint) {
        return proposal.chosen()
                .map(chosen -> new ProposalRow(
                        0,
                        stint,
                        chosen.turn().item().name(),
                        ItemRange.plain(chosen.turn().item().value()),
                        ItemRange.plain(chosen.turn().to()),
                        chosen.turn().item().unit(),
                        proposal.reason(),
                        Diary.now()))
                .orElseGet(() -> new ProposalRow(0, stint, "", "", "", "", proposal.reason(), Diary.now()));
    }

    static String words(ProposalRow proposal) {
        return proposal.item().isEmpty()
                ? "no change of the car"
                : proposal.item() + " " + proposal.fromValue() + " to " + proposal.toValue()
                        + (proposal.unit().isEmpty() ? "" : " " + proposal.unit());
    }

    static boolean alike(ProposalRow one, ProposalRow other) {
        return words(one).equals(words(other)) && one.reason().equals(other.reason());
    }
}
