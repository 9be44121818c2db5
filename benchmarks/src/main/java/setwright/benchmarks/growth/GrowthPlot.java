package setwright.benchmarks.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import setwright.app.plot.Axes;
import setwright.app.plot.PathData;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.benchmarks.measure.Spent;
import setwright.benchmarks.measure.Spread;

/** Draws processor time of each part over what is varied: black on white, each line with its name at its end. */
final class GrowthPlot {
    private static final int WIDTH = 680;
    private static final int HEIGHT = 380;
    private static final int LEFT = 56;
    private static final int TOP = 44;
    private static final int INNER_WIDTH = 460;
    private static final int INNER_HEIGHT = 280;
    private static final double ROOM = 1.08;
    private static final double BETWEEN_NAMES = 15.0;
    private static final String STYLE = "text{font:12px sans-serif;fill:#000}.title{font-weight:bold;font-size:13px}"
            + ".grid{stroke:#ccc;stroke-width:1}.end{text-anchor:end}.middle{text-anchor:middle}"
            + ".curve{fill:none;stroke:#000;stroke-width:1.5}.spread{stroke:#000;stroke-width:1}.point{fill:#000}"
            + ".READ{stroke-dasharray:2 3}.LAPS{stroke-dasharray:8 3 2 3}.DIAGNOSIS{stroke-dasharray:7 4}"
            + ".WHOLE{stroke-width:2.2}";

    private GrowthPlot() {}

    /** Returns the drawing as a file of its own. */
    static String draw(Series series, List<Point> points) {
        double most = points.stream()
                .mapToDouble(point -> point.of(Part.WHOLE, Spent::processorS).most())
                .max()
                .orElseThrow();
        double last = points.get(points.size() - 1).value();
        Scale x = new Scale(0.0, last, 0.0, INNER_WIDTH);
        Scale y = new Scale(0.0, ROOM * most, INNER_HEIGHT, 0.0);
        Svg svg = new Svg()
                .open(
                        "svg",
                        "xmlns",
                        "http://www.w3.org/2000/svg",
                        "viewBox",
                        "0 0 " + WIDTH + " " + HEIGHT,
                        "width",
                        String.valueOf(WIDTH),
                        "height",
                        String.valueOf(HEIGHT),
                        "role",
                        "img");
        svg.text("title", "Processor time of a diagnosis over " + series.words());
        svg.text("style", STYLE);
        svg.add("rect", "width", "100%", "height", "100%", "fill", "#fff");
        words(svg, "Diagnosis from a file, " + series.rest(), "title", 8, 18);
        words(svg, "processor time, s", "tick", 8, 36);
        svg.open(
                "svg",
                "x",
                String.valueOf(LEFT),
                "y",
                String.valueOf(TOP),
                "width",
                String.valueOf(INNER_WIDTH),
                "height",
                String.valueOf(INNER_HEIGHT),
                "overflow",
                "visible");
        Axes.draw(
                svg,
                x,
                y,
                INNER_HEIGHT,
                6,
                (value, decimals) -> String.format(Locale.ROOT, "%." + decimals + "f", value),
                series.axis());
        for (Part part : Part.values()) {
            curve(svg, part, points, x, y);
        }
        names(svg, points, y);
        return svg.close().close().markup().text() + "\n";
    }

    private static void curve(Svg svg, Part part, List<Point> points, Scale x, Scale y) {
        PathData path = new PathData();
        for (Point point : points) {
            Spread spread = point.of(part, Spent::processorS);
            if (!spread.known()) {
                continue;
            }
            path.to(x.at(point.value()), y.at(spread.median()));
            String at = Svg.number(x.at(point.value()));
            svg.add(
                    "line",
                    "class",
                    "spread",
                    "x1",
                    at,
                    "x2",
                    at,
                    "y1",
                    Svg.number(y.at(spread.least())),
                    "y2",
                    Svg.number(y.at(spread.most())));
            svg.add("circle", "class", "point", "cx", at, "cy", Svg.number(y.at(spread.median())), "r", "2.6");
        }
        svg.add("path", "class", "curve " + part, "d", path.text());
    }

    private record Name(Part part, double y) {}

    /** Right of the last point of each line, kept apart. */
    private static void names(Svg svg, List<Point> points, Scale y) {
        Point end = points.get(points.size() - 1);
        List<Name> names = new ArrayList<>();
        for (Part part : Part.values()) {
            names.add(new Name(part, y.at(end.of(part, Spent::processorS).median())));
        }
        names.sort(Comparator.comparingDouble(Name::y).reversed());
        double lowest = INNER_HEIGHT + BETWEEN_NAMES;
        for (Name name : names) {
            double at = Math.min(name.y(), lowest - BETWEEN_NAMES);
            lowest = at;
            words(svg, name.part().words(), "name", INNER_WIDTH + 10, at + 4.0);
        }
    }

    private static void words(Svg svg, String words, String css, double x, double y) {
        svg.text("text", words, "class", css, "x", Svg.number(x), "y", Svg.number(y));
    }
}
