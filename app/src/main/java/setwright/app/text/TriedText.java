package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.app.logbook.StoryDesk.Tried;
import setwright.app.story.TriedWords;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.units.Figures;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;

/** What changes were to do and what they did, as lines of text. */
public final class TriedText {
    private TriedText() {}

    /** Returns the text, ending with a line break. */
    public static String write(List<Tried> all, Figures figures, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        if (all.isEmpty()) {
            lines.wide("Nothing was tried yet. Plan a trial: setwright trial plan.");
        }
        for (int i = 0; i < all.size(); i++) {
            if (i > 0) {
                lines.gap();
            }
            write(all.get(i), figures, lines);
        }
        return lines.text();
    }

    private static void write(Tried tried, Figures figures, TextLines lines) {
        lines.wide("Trial " + tried.trial().id() + ", " + tried.car().name() + ": "
                + tried.trial().changeWords() + " - "
                + tried.verdict().map(VerdictRow::verdict).orElse("not judged") + ".");
        tried.verdict().ifPresent(verdict -> lines.faint(verdict.reason()));
        if (tried.effects().isEmpty()) {
            return;
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (TriedEffectRow effect : tried.effects()) {
            double scale = TriedWords.scale(effect);
            rows.add(List.of(
                    Cell.of(TriedWords.place(effect)),
                    Cell.of(figure(effect.predicted(), scale, figures)),
                    Cell.of(range(effect.predictedLow(), effect.predictedHigh(), scale, figures)),
                    Cell.of(figure(OptionalDouble.of(effect.measured()), scale, figures)),
                    Cell.of(range(
                            OptionalDouble.of(effect.measuredLow()),
                            OptionalDouble.of(effect.measuredHigh()),
                            scale,
                            figures))));
        }
        lines.table(new TextTable(
                List.of(
                        new Column("", false, 9),
                        new Column("predicted", true, 8),
                        new Column("8 in 10", false, 5),
                        new Column("measured", true, 8),
                        new Column("95 in 100", false, 6)),
                rows));
    }

    private static String figure(OptionalDouble value, double scale, Figures figures) {
        return value.isPresent() ? figures.signed(scale * value.getAsDouble(), 2) : "-";
    }

    private static String range(OptionalDouble low, OptionalDouble high, double scale, Figures figures) {
        return low.isPresent() && high.isPresent()
                ? figure(low, scale, figures) + " to " + figure(high, scale, figures)
                : "";
    }
}
