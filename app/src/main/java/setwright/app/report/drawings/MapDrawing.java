package setwright.app.report.drawings;

import java.util.List;
import java.util.stream.Collectors;
import setwright.app.plot.Svg;
import setwright.app.report.BalanceView.LegendItem;
import setwright.app.report.CircuitMap;

/** The circuit from above, coloured by balance. */
final class MapDrawing {
    private static final double WIDTH = 900.0;
    private static final double LEGEND = 46.0;
    private static final double SWATCH = 64.0;

    private MapDrawing() {}

    static Drawing draw(String recording, CircuitMap map, List<LegendItem> legend, String against) {
        double height = WIDTH / Double.parseDouble(map.aspect());
        Svg svg = new Svg();
        svg.text("text", "oversteer \u2212", "class", "note", "x", "0", "y", "15");
        double x = 80.0;
        for (LegendItem item : legend) {
            double width = Math.max(SWATCH, 16.0 + 7.0 * item.text().length());
            svg.add(
                    "rect",
                    "class",
                    item.css(),
                    "x",
                    Svg.number(x),
                    "y",
                    "0",
                    "width",
                    Svg.number(width),
                    "height",
                    "22",
                    "rx",
                    "2");
            svg.text(
                    "text",
                    item.text(),
                    "class",
                    "label middle " + item.css(),
                    "x",
                    Svg.number(x + 0.5 * width),
                    "y",
                    "15.5");
            x += width + 4.0;
        }
        svg.text("text", "understeer +, deg", "class", "note", "x", Svg.number(x + 8.0), "y", "15");
        svg.open(
                "svg",
                "class",
                "map",
                "y",
                Svg.number(LEGEND),
                "width",
                Svg.number(WIDTH),
                "height",
                Svg.number(height),
                "overflow",
                "visible");
        svg.put(map.track());
        map.labels().forEach(label -> label(svg, label));
        svg.close();
        return Drawing.of(
                "map",
                "Balance round the lap \u2013 " + recording,
                List.of("Median over the laps against " + against + ". Grey: small, or not clear of chance."
                        + " Dashed: left out, the driving differs there."),
                map.labels().stream().map(CircuitMap.Label::facts).collect(Collectors.joining(" ")),
                WIDTH,
                LEGEND + height,
                svg.markup());
    }

    private static void label(Svg svg, CircuitMap.Label label) {
        String text = label.corner() + (label.sign().isEmpty() ? "" : " " + label.sign());
        double width = 18.0 + 7.5 * text.length();
        boolean out = label.css().equals("out");
        svg.open("svg", "x", label.left(), "y", label.top(), "overflow", "visible")
                .add(
                        "rect",
                        "class",
                        out ? "paper" : label.css(),
                        "x",
                        Svg.number(-0.5 * width),
                        "y",
                        "-12",
                        "width",
                        Svg.number(width),
                        "height",
                        "24",
                        "rx",
                        "12")
                .add(
                        "rect",
                        "class",
                        "box",
                        "stroke-dasharray",
                        out ? "4 4" : "none",
                        "x",
                        Svg.number(-0.5 * width),
                        "y",
                        "-12",
                        "width",
                        Svg.number(width),
                        "height",
                        "24",
                        "rx",
                        "12")
                .text("text", text, "class", out ? "note middle" : "label middle " + label.css(), "y", "4.5")
                .close();
    }
}
