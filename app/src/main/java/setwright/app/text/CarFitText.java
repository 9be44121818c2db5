package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import setwright.app.carfit.CarFitAnswer;
import setwright.app.story.CarFitWords;
import setwright.app.story.Story;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.text.TextTable.Style;
import setwright.app.units.Figures;
import setwright.core.identification.FittedValue;

/** What laps told of a car, as lines of text. */
public final class CarFitText {
    private CarFitText() {}

    /** Returns the text, ending with a line break. */
    public static String write(CarFitAnswer answer, Figures figures, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        CarFitWords words = new CarFitWords(figures);
        lines.wide(words.headline(answer));
        lines.faint(words.source(answer));
        List<List<Cell>> rows = new ArrayList<>();
        for (FittedValue value : answer.fit().values()) {
            Style style = value.told() ? Style.PLAIN : Style.FAINT;
            rows.add(List.of(
                    new Cell(Figures.capital(value.words()), style),
                    new Cell(words.before(value), Style.FAINT),
                    new Cell(words.beforeRange(value), Style.FAINT),
                    new Cell(words.after(value), style),
                    new Cell(words.afterRange(value), style),
                    new Cell(value.unit(), Style.FAINT),
                    new Cell(value.told() ? "yes" : "no", style)));
        }
        lines.gap();
        lines.wide(new TextTable(
                List.of(
                        new Column("", false, 9),
                        new Column("before", true, 5),
                        new Column("range", true, 2),
                        new Column("now", true, 8),
                        new Column("range", true, 6),
                        new Column("unit", false, 7),
                        new Column("told", false, 7)),
                rows));
        lines.faint("Ranges hold eight tenths of the probability. Told: the laps made it clearly narrower.");
        section(lines, "Told", answer.values(true), words);
        section(lines, "Not told", answer.values(false), words);
        lines.gap();
        lines.faint(Story.CAUTION);
        return lines.text();
    }

    private static void section(TextLines lines, String name, List<FittedValue> values, CarFitWords words) {
        if (!values.isEmpty()) {
            lines.gap();
            lines.paragraphs(name, values.stream().map(words::why).toList());
        }
    }
}
