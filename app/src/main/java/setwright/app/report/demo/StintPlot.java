package setwright.app.report.demo;

import java.util.List;
import setwright.app.plot.Axis;
import setwright.app.plot.Markup;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.units.Figures;

/** Draws one point for each lap, stint beside stint, with the mean of each as a bar. */
final class StintPlot {
    private static final double WIDTH = 720.0;
    private static final double HEIGHT = 240.0;
    private static final double LEFT = 60.0;
    private static final double TOP = 10.0;
    private static final double BOTTOM = 44.0;
    private static final double LAP_SHARE = 0.7;
    private static final double MARGIN = 0.08;

    /** A stint: its name and one value for each lap. */
    record Series(String name, List<Double> values) {}

    private StintPlot() {}

    static Markup draw(List<Series> series, Figures figures) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Series one : series) {
            for (double value : one.values()) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        double room = Math.max(MARGIN * (high - low), 1.0e-3);
        Scale y = new Scale(low - room, high + room, HEIGHT - BOTTOM, TOP);
        Svg svg = new Svg()
                .open(
                        "svg",
                        "class",
                        "stints",
                        "viewBox",
                        "0 0 " + Svg.number(WIDTH) + " " + Svg.number(HEIGHT),
                        "aria-hidden",
                        "true");
        Axis axis = Axis.between(low - room, high + room, 6);
        for (double tick : axis.ticks()) {
            svg.add(
                    "line",
                    "class",
                    "grid",
                    "x1",
                    Svg.number(LEFT),
                    "x2",
                    Svg.number(WIDTH),
                    "y1",
                    Svg.number(y.at(tick)),
                    "y2",
                    Svg.number(y.at(tick)));
            svg.text(
                    "text",
                    figures.number(tick, axis.decimals()),
                    "class",
                    "mark",
                    "text-anchor",
                    "end",
                    "x",
                    Svg.number(LEFT - 6.0),
                    "y",
                    Svg.number(y.at(tick) + 4.0));
        }
        double each = (WIDTH - LEFT) / series.size();
        for (int s = 0; s < series.size(); s++) {
            stint(svg, series.get(s), LEFT + s * each, each, y);
        }
        return svg.close().markup();
    }

    private static void stint(Svg svg, Series series, double from, double width, Scale y) {
        List<Double> values = series.values();
        double first = from + 0.5 * (1.0 - LAP_SHARE) * width;
        double step = LAP_SHARE * width / Math.max(1, values.size() - 1);
        double sum = 0.0;
        for (int i = 0; i < values.size(); i++) {
            sum += values.get(i);
            svg.add(
                    "circle",
                    "class",
                    "lap",
                    "r",
                    "4",
                    "cx",
                    Svg.number(first + i * step),
                    "cy",
                    Svg.number(y.at(values.get(i))));
        }
        if (!values.isEmpty()) {
            double mean = y.at(sum / values.size());
            svg.add(
                    "line",
                    "class",
                    "mean",
                    "x1",
                    Svg.number(first - 8.0),
                    "x2",
                    Svg.number(first + LAP_SHARE * width + 8.0),
                    "y1",
                    Svg.number(mean),
                    "y2",
                    Svg.number(mean));
        }
        svg.text(
                "text",
                series.name(),
                "class",
                "mark",
                "text-anchor",
                "middle",
                "x",
                Svg.number(from + 0.5 * width),
                "y",
                Svg.number(HEIGHT - BOTTOM + 26.0));
    }
}
