package setwright.app.report.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.app.evidence.Answer;
import setwright.app.predict.PredictionAnswer;
import setwright.app.predict.PresentBalance;
import setwright.app.propose.ProposalAnswer;
import setwright.app.propose.WeighedColumns;
import setwright.app.report.Page;
import setwright.app.report.TechniqueRow;
import setwright.app.report.change.PredictionView.EffectCell;
import setwright.app.report.change.ProposalView.Heading;
import setwright.app.report.change.ProposalView.Refusal;
import setwright.app.report.change.ProposalView.Row;
import setwright.app.story.AdviceWords;
import setwright.app.story.PredictionWords;
import setwright.app.story.ProposalWords;
import setwright.app.units.Figures;
import setwright.core.advice.Adviser;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

/** Writes the page of a proposal: what to turn, what else was weighed and why not that, and the change in full. */
public final class ProposalReport {
    private final Answer answer;
    private final Proposal proposal;
    private final Figures figures;
    private final PredictionAnswer predictions;
    private final PredictionWords words;
    private final ProposalWords story;
    private final WeighedColumns columns;

    private ProposalReport(ProposalAnswer proposed, Figures figures) {
        this.answer = proposed.answer();
        this.proposal = proposed.proposal();
        this.figures = figures;
        this.predictions = new PredictionAnswer(
                answer, true, all().map(Candidate::prediction).toList());
        this.words = new PredictionWords(predictions, figures);
        this.story = new ProposalWords(proposed, figures);
        this.columns = WeighedColumns.of(proposal);
    }

    /** Returns the document; the proposal has a target. */
    public static String html(ProposalAnswer answer, Figures figures) {
        return Page.render("propose.jte", view(answer, figures));
    }

    /** Returns what the document shows. */
    public static ProposalView view(ProposalAnswer answer, Figures figures) {
        return new ProposalReport(answer, figures).view();
    }

    private Stream<Candidate> all() {
        return WeighedColumns.all(proposal);
    }

    private ProposalView view() {
        List<Pool> pools = columns.pools(proposal);
        EffectCells cells = PredictionReport.cells(
                figures, PresentBalance.of(predictions).table().yardstickRad(), predictions.predictions(), List.of());
        Optional<Prediction> chosen = proposal.chosen().map(Candidate::prediction);
        return new ProposalView(
                story.title() + " \u2013 Setwright",
                PredictionReport.facts(answer),
                story.headline(),
                story.reasons(),
                story.levers().stream()
                        .map(lever -> TechniqueRow.of(lever, figures))
                        .toList(),
                AdviceWords.given(Adviser.review(answer.diagnosis(), answer.car()), figures),
                proposal.expect().stream().map(figures::told).toList(),
                chosen.map(words::doubts).orElse(List.of()),
                Stream.concat(
                                columns
                                        .target()
                                        .map(pool -> new Heading("Target: " + heading(pool), "target"))
                                        .stream(),
                                pools.stream().map(pool -> new Heading(Figures.capital(heading(pool)), "wide")))
                        .toList(),
                "Best first. Lap time in s, \u2212 is quicker; balance in deg, + toward understeer; the target is what is to be"
                        + " cured. Bar: range.",
                all().map(candidate -> row(candidate, pools, cells)).toList(),
                proposal.refused().stream()
                        .map(candidate -> new Refusal(
                                words.change(candidate.prediction()),
                                story.promise(candidate),
                                story.whyNot(candidate)))
                        .toList(),
                chosen.map(prediction -> PredictionReport.view(predictions, prediction, figures))
                        .orElse(null),
                cells.legend(),
                Page.style());
    }

    private static String heading(Pool pool) {
        return pool.phase().words() + ", " + WeighedColumns.words(pool.speedClass());
    }

    private Row row(Candidate candidate, List<Pool> pools, EffectCells cells) {
        boolean chosen = proposal.chosen().filter(candidate::equals).isPresent();
        String standing = chosen ? "chosen" : candidate.allowed() ? "weighed" : "refused";
        return new Row(
                words.change(candidate.prediction()),
                standing,
                standing,
                cells.time("lap", candidate.prediction().lapTimeS()),
                Stream.concat(
                                columns
                                        .target()
                                        .map(pool -> cells.balance("target", Optional.of(candidate.target()), ""))
                                        .stream(),
                                pools.stream().map(pool -> cell(candidate, pool, cells)))
                        .toList());
    }

    /** Narrow screens show the target, no other. */
    private EffectCell cell(Candidate candidate, Pool pool, EffectCells cells) {
        return cells.balance(heading(pool), candidate.prediction().balance(pool.phase(), pool.speedClass()), "")
                .wide();
    }
}
