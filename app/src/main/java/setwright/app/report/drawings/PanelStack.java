package setwright.app.report.drawings;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.app.plot.Markup;
import setwright.app.plot.Svg;

/** Panels of one width, one below the other, under what their lines mean. */
final class PanelStack {
    static final double WIDTH = 1000.0;
    private static final double LEFT = 58.0;
    private static final double CAPTION = 24.0;
    private static final double GAP = 14.0;
    private static final double KEYS = 26.0;
    /** Width of a letter of a key, px, on the wide side. */
    private static final double LETTER = 7.1;

    private static final Pattern HEIGHT = Pattern.compile("^<svg[^>]* height=\"([0-9.]+)\"");

    /**
     * A drawing with what it shows.
     *
     * @param caption  above it
     * @param plot     as wide as it gets, with a height of its own
     */
    record Panel(String caption, Markup plot) {}

    /**
     * What a line or an area means.
     *
     * @param area   whether it is an area
     * @param css    style classes
     * @param words  what it means
     */
    record PanelKey(boolean area, String css, String words) {}

    private PanelStack() {}

    /** Returns the height of a drawing, px. */
    static double height(Markup plot) {
        Matcher height = HEIGHT.matcher(plot.text());
        if (!height.find()) {
            throw new IllegalArgumentException("a drawing does not say its height");
        }
        return Double.parseDouble(height.group(1));
    }

    static Drawing draw(
            String name, String title, List<String> notes, String words, List<PanelKey> keys, List<Panel> panels) {
        Svg svg = new Svg().open("g", "class", "panel");
        double y = keys(svg, keys);
        for (Panel panel : panels) {
            svg.text("text", panel.caption(), "class", "caption", "x", "0", "y", Svg.number(y + 14.0));
            y += CAPTION;
            double height = height(panel.plot());
            place(svg, panel.plot(), LEFT, y, WIDTH - LEFT, height);
            y += height + GAP;
        }
        return Drawing.of(name, title, notes, words, WIDTH, y - GAP, svg.close().markup());
    }

    /** Puts a drawing that is as wide as it gets. */
    static void place(Svg svg, Markup plot, double x, double y, double width, double height) {
        svg.open(
                        "svg",
                        "x",
                        Svg.number(x),
                        "y",
                        Svg.number(y),
                        "width",
                        Svg.number(width),
                        "height",
                        Svg.number(height),
                        "overflow",
                        "visible")
                .put(plot)
                .close();
    }

    private static double keys(Svg svg, List<PanelKey> keys) {
        double x = 0.0;
        double y = 0.0;
        for (PanelKey key : keys) {
            double width = 44.0 + LETTER * key.words().length();
            if (x > 0.0 && x + width > WIDTH) {
                x = 0.0;
                y += KEYS - 4.0;
            }
            if (key.area()) {
                svg.add(
                        "rect",
                        "class",
                        key.css(),
                        "x",
                        Svg.number(x),
                        "y",
                        Svg.number(y + 4.0),
                        "width",
                        "26",
                        "height",
                        "12");
            } else {
                svg.add("path", "class", key.css(), "d", "M" + Svg.number(x) + " " + Svg.number(y + 10.0) + "h26");
            }
            svg.text("text", key.words(), "class", "note", "x", Svg.number(x + 32.0), "y", Svg.number(y + 14.5));
            x += width;
        }
        return keys.isEmpty() ? 0.0 : y + KEYS;
    }
}
