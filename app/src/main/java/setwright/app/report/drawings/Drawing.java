package setwright.app.report.drawings;

import java.util.ArrayList;
import java.util.List;
import setwright.app.plot.Markup;
import setwright.app.plot.Svg;

/**
 * A drawing that stands alone.
 *
 * @param name  of its file, without ending
 * @param text  the SVG document
 */
public record Drawing(String name, String text) {
    private static final double PAD = 24.0;
    private static final double HEADING = 28.0;
    private static final double LINE = 19.0;
    /** Letters of the notes' size that fit into a unit of width, with room to spare. */
    private static final double LETTERS = 0.145;

    /**
     * Sets a drawing on paper, under its title.
     *
     * @param name    of its file, without ending
     * @param title   above it
     * @param notes   below the title, one line each or more
     * @param words   what a person is told who cannot see it
     * @param width   of the body, px
     * @param height  of the body, px
     * @param body    drawn from 0, 0
     */
    static Drawing of(
            String name, String title, List<String> notes, String words, double width, double height, Markup body) {
        List<String> lines =
                notes.stream().flatMap(note -> wrapped(note, width).stream()).toList();
        double top = PAD + HEADING + lines.size() * LINE + 8.0;
        String wide = Svg.number(width + 2.0 * PAD);
        String high = Svg.number(top + height + PAD);
        Svg svg = new Svg()
                .open(
                        "svg",
                        "xmlns",
                        "http://www.w3.org/2000/svg",
                        "width",
                        wide,
                        "height",
                        high,
                        "viewBox",
                        "0 0 " + wide + " " + high,
                        "role",
                        "img",
                        "aria-labelledby",
                        "title words")
                .text("title", title, "id", "title")
                .text("desc", words, "id", "words")
                .text("style", PlotStyle.sheet())
                .add("rect", "class", "paper", "width", wide, "height", high)
                .text("text", title, "class", "heading", "x", Svg.number(PAD), "y", Svg.number(PAD + 14.0));
        for (int i = 0; i < lines.size(); i++) {
            svg.text(
                    "text",
                    lines.get(i),
                    "class",
                    "note",
                    "x",
                    Svg.number(PAD),
                    "y",
                    Svg.number(PAD + HEADING + 9.0 + i * LINE));
        }
        svg.open("g", "transform", "translate(" + Svg.number(PAD) + " " + Svg.number(top) + ")")
                .put(body)
                .close();
        return new Drawing(
                name,
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                        + svg.close().markup().text() + "\n");
    }

    private static List<String> wrapped(String note, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : note.strip().split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > LETTERS * width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
