package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.app.propose.ProposalAnswer;
import setwright.app.propose.WeighedColumns;
import setwright.app.story.AdviceWords;
import setwright.app.story.ProposalWords;
import setwright.app.story.Story;
import setwright.app.story.TechniqueWords;
import setwright.app.story.TurnWords;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.units.Figures;
import setwright.core.advice.Adviser;
import setwright.core.circuit.Stint;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;

/** What to do next, as lines of text: the one change first, then why, what to look for, and what else was weighed. */
public final class ProposalText {
    private static final int MOST_OTHERS = 6;
    private static final Pattern LEADING_ZERO = Pattern.compile("^([-+]?)0\\.");
    private static final String CHOSEN = "> ";
    private static final String REFUSED = "x ";
    private static final String TARGET = "aim";

    private final ProposalAnswer answer;
    private final Proposal proposal;
    private final ProposalWords words;
    private final WeighedColumns columns;
    private final TextLines lines;
    private final Figures figures;

    private ProposalText(ProposalAnswer answer, Figures figures, Terminal terminal) {
        this.answer = answer;
        this.proposal = answer.proposal();
        this.words = new ProposalWords(answer, figures);
        this.columns = WeighedColumns.of(proposal);
        this.lines = new TextLines(terminal);
        this.figures = figures;
    }

    /** Returns the text, ending with a line break. */
    public static String write(ProposalAnswer answer, Figures figures, Terminal terminal) {
        ProposalText text = new ProposalText(answer, figures, terminal);
        text.headline();
        text.laps();
        text.technique();
        text.reason();
        text.proposal.chosen().ifPresent(text::chosen);
        text.others();
        text.refused();
        text.besides();
        text.lines.gap();
        text.lines.faint(Story.CAUTION);
        return text.lines.text();
    }

    private void headline() {
        lines.wide(words.headline() + ".");
        proposal.target().ifPresent(target -> lines.wide("For " + ProposalWords.problem(target) + "."));
    }

    private void laps() {
        Stint stint = answer.answer().diagnosis().stint();
        lines.faint(stint.recording().name() + ", " + answer.answer().car().description() + ", on "
                + stint.goodLaps().size() + " laps");
    }

    private void reason() {
        lines.gap();
        lines.paragraph("Reason", proposal.reason());
    }

    private void technique() {
        List<String> technique = TechniqueWords.tell(words.levers(), figures);
        if (!technique.isEmpty()) {
            lines.gap();
            lines.paragraphs("Driver", technique);
            if (proposal.chosen().isPresent()) {
                lines.paragraph("", "Try that first: it is free. Then the change, by itself.");
            }
        }
    }

    private void chosen(Candidate chosen) {
        lines.paragraphs("", words.effect(chosen));
        if (!chosen.prediction().reasons().isEmpty()) {
            lines.gap();
            lines.paragraphs(
                    "Why",
                    chosen.prediction().reasons().stream().map(figures::told).toList());
        }
        lines.gap();
        lines.paragraphs("Expect", proposal.expect().stream().map(figures::told).toList());
        if (!chosen.prediction().doubts().isEmpty()) {
            lines.gap();
            lines.paragraphs(
                    "Doubts",
                    chosen.prediction().doubts().stream().map(figures::told).toList());
        }
    }

    private void others() {
        List<Candidate> shown = Stream.of(
                        proposal.chosen().stream(),
                        proposal.others().stream().limit(MOST_OTHERS),
                        proposal.refused().stream().limit(MOST_OTHERS))
                .flatMap(candidates -> candidates)
                .toList();
        if (shown.isEmpty()) {
            return;
        }
        lines.gap();
        lines.paragraph(
                "Weighed",
                "Change of balance in deg, + toward understeer" + target() + "; phases in "
                        + columns.classes().stream()
                                .map(speed -> WeighedColumns.words(Optional.of(speed)))
                                .collect(Collectors.joining(" / "))
                        + " corners; time in s, -" + Figures.KEPT_TOGETHER + "quicker. "
                        + CHOSEN.replace(' ', Figures.KEPT_TOGETHER) + "chosen, "
                        + REFUSED.replace(' ', Figures.KEPT_TOGETHER) + "refused.");
        List<Column> heads = new ArrayList<>(List.of(new Column("", false, 9), new Column("", false, 3)));
        heads.add(new Column(TARGET, true, 8));
        for (Phase phase : columns.phases()) {
            // the target stands by itself already: where room is short its phase can go
            boolean told =
                    columns.target().filter(pool -> pool.phase() == phase).isPresent();
            heads.add(new Column(phase.words(), true, told ? 4 : 5));
        }
        heads.add(new Column("time", true, 7));
        lines.wide(new TextTable(heads, shown.stream().map(this::row).toList()));
    }

    private List<Cell> row(Candidate candidate) {
        List<Cell> row = new ArrayList<>(List.of(
                Cell.of(standing(candidate) + TurnWords.values(candidate.turn())),
                Cell.of(TurnWords.way(candidate.turn()))));
        row.add(Cell.of(hundredths(Math.toDegrees(candidate.target().central()))));
        for (Phase phase : columns.phases()) {
            row.add(Cell.of(String.join(
                    "/",
                    columns.classes().stream()
                            .map(speed -> moved(candidate, phase, speed))
                            .toList())));
        }
        row.add(Cell.of(hundredths(candidate.prediction().lapTimeS().central())));
        return row;
    }

    private String standing(Candidate candidate) {
        return !candidate.allowed()
                ? REFUSED
                : proposal.chosen().filter(candidate::equals).isPresent() ? CHOSEN : " ".repeat(CHOSEN.length());
    }

    private String target() {
        return columns.target()
                .map(pool -> "; " + TARGET + ": the target, " + pool.phase().words() + ", "
                        + WeighedColumns.words(pool.speedClass()) + " corners")
                .orElse("");
    }

    /** Without the zero before the point, or eighty characters could not hold three phases in two classes. */
    private String hundredths(double value) {
        return LEADING_ZERO.matcher(figures.signed(value, 2)).replaceFirst("$1.");
    }

    private String moved(Candidate candidate, Phase phase, SpeedClass speed) {
        return candidate
                .prediction()
                .balance(phase, Optional.of(speed))
                .map(effect -> hundredths(Math.toDegrees(effect.central())))
                .orElse("-");
    }

    private void refused() {
        if (proposal.refused().isEmpty()) {
            return;
        }
        lines.gap();
        lines.paragraphs(
                "Not",
                proposal.refused().stream()
                        .limit(MOST_OTHERS)
                        .map(words::refusal)
                        .toList());
    }

    private void besides() {
        List<String> given = AdviceWords.given(
                Adviser.review(answer.answer().diagnosis(), answer.answer().car()), figures);
        if (!given.isEmpty()) {
            lines.gap();
            lines.paragraphs("Besides", given);
        }
    }
}
