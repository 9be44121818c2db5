package setwright.app.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.brief.BriefView.Engineer;
import setwright.app.report.brief.BriefView.Row;
import setwright.app.story.FindingWords;
import setwright.app.story.ProposalWords;
import setwright.app.story.Story;
import setwright.app.story.Storyteller;
import setwright.app.units.Figures;
import setwright.core.judgement.Finding;

/** Says to the engineer what was found, what to change and what would refute it. */
final class EngineerSheet {
    /** More than these are in the report, not on a sheet. */
    private static final int MOST_ROWS = 4;

    private static final int MOST_REASONS = 5;

    private EngineerSheet() {}

    static Engineer of(ProposalAnswer proposed, Figures figures) {
        Story story = Storyteller.tell(proposed.answer(), figures);
        ProposalWords words = new ProposalWords(proposed, figures);
        List<String> change = new ArrayList<>();
        change.add(words.headline() + ".");
        words.reasons().stream().limit(MOST_REASONS).forEach(change::add);
        return new Engineer(
                story.headline(),
                Stream.concat(Stream.of(story.reason()), story.why().stream())
                        .filter(text -> !text.isBlank())
                        .limit(MOST_REASONS)
                        .toList(),
                proposed.answer().diagnosis().findings().stream()
                        .limit(MOST_ROWS)
                        .map(finding -> row(finding, figures))
                        .toList(),
                change,
                proposed.proposal().expect().stream().map(figures::told).toList(),
                proposed.proposal().refused().stream()
                        .limit(MOST_ROWS)
                        .map(words::refusal)
                        .toList(),
                List.of(story.laps().answer(), story.driving().answer()));
    }

    private static Row row(Finding finding, Figures figures) {
        return new Row(
                Figures.capital(FindingWords.name(finding)),
                Figures.list(finding.corners()),
                finding.trigger().words(),
                finding.cause().words(),
                figures.probability(finding.probability()),
                FindingWords.brief(finding, figures));
    }
}
