package setwright.app.report.drawings;

import java.util.List;
import java.util.stream.Collectors;
import setwright.app.plot.Svg;
import setwright.app.report.PatternView;
import setwright.app.report.PatternView.Card;

/** What repeats, with its price. */
final class FindingsDrawing {
    private static final double WIDTH = 900.0;
    private static final double ROW = 84.0;

    private FindingsDrawing() {}

    static Drawing draw(String recording, PatternView pattern) {
        Svg svg = new Svg();
        double y = 0.0;
        for (Card card : pattern.cards()) {
            svg.add(
                    "rect",
                    "class",
                    card.css(),
                    "x",
                    "0",
                    "y",
                    Svg.number(y),
                    "width",
                    "26",
                    "height",
                    "22",
                    "rx",
                    "2");
            svg.text("text", card.sign(), "class", "label middle " + card.css(), "x", "13", "y", Svg.number(y + 15.5));
            svg.text("text", card.rank() + ". " + card.name(), "class", "strong", "x", "36", "y", Svg.number(y + 15.5));
            svg.text("text", card.price(), "class", "note", "x", "36", "y", Svg.number(y + 35.0));
            if (!card.priceBar().text().isEmpty()) {
                PanelStack.place(
                        svg, card.priceBar(), 36.0, y + 42.0, WIDTH - 60.0, PanelStack.height(card.priceBar()));
            }
            y += ROW;
        }
        return Drawing.of(
                "findings",
                "What repeats, and what it costs a lap \u2013 " + recording,
                List.of(pattern.link().answer()),
                pattern.cards().stream()
                        .map(card -> card.rank() + ". " + card.name() + ": " + card.price() + ".")
                        .collect(Collectors.joining(" ")),
                WIDTH,
                y,
                svg.markup());
    }
}
