package setwright.app.report;

import java.util.List;
import java.util.stream.IntStream;
import setwright.app.plot.Axis;
import setwright.app.plot.Markup;
import setwright.app.plot.PathData;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.units.Figures;

/**
 * Draws one point for each lap, run beside run, with the mean of each as a bar: rings without a change, diamonds with it. Where the first
 * setup comes back, a dashed line through its runs can show what the day did.
 */
public final class RunPlot {
    private static final double WIDTH = 720.0;
    private static final double HEIGHT = 240.0;
    private static final double LEFT = 60.0;
    private static final double TOP = 10.0;
    private static final double BOTTOM = 44.0;
    private static final double LAP_SHARE = 0.7;
    private static final double MARGIN = 0.08;
    private static final double DIAMOND = 5.5;

    /**
     * A run.
     *
     * @param name     below it
     * @param changed  whether the change was on the car
     * @param values   one for each lap
     */
    public record Series(String name, boolean changed, List<Double> values) {
        public Series {
            values = List.copyOf(values);
        }

        double mean() {
            return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
        }
    }

    private RunPlot() {}

    /**
     * Returns the drawing of runs in their order.
     *
     * @param day  whether what the day did is drawn: the unchanged runs are of one setup and one driver
     */
    public static Markup draw(List<Series> series, boolean day, Figures figures) {
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
            run(svg, series.get(s), LEFT + s * each, each, y);
        }
        if (day) {
            day(svg, series, each, y);
        }
        return svg.close().markup();
    }

    private static void run(Svg svg, Series series, double from, double width, Scale y) {
        List<Double> values = series.values();
        double first = from + 0.5 * (1.0 - LAP_SHARE) * width;
        double step = LAP_SHARE * width / Math.max(1, values.size() - 1);
        for (int i = 0; i < values.size(); i++) {
            mark(svg, series.changed(), first + i * step, y.at(values.get(i)));
        }
        if (!values.isEmpty()) {
            String mean = Svg.number(y.at(series.mean()));
            svg.add(
                    "line",
                    "class",
                    "mean",
                    "x1",
                    Svg.number(first - 8.0),
                    "x2",
                    Svg.number(first + LAP_SHARE * width + 8.0),
                    "y1",
                    mean,
                    "y2",
                    mean);
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

    private static void mark(Svg svg, boolean changed, double x, double y) {
        if (changed) {
            svg.add(
                    "path",
                    "class",
                    "lap",
                    "d",
                    new PathData()
                            .to(x, y - DIAMOND)
                            .to(x + DIAMOND, y)
                            .to(x, y + DIAMOND)
                            .to(x - DIAMOND, y)
                            .close()
                            .text());
        } else {
            svg.add("circle", "class", "lap ring", "r", "4", "cx", Svg.number(x), "cy", Svg.number(y));
        }
    }

    /** From the first run without the change to the last one, when that comes after a changed one. */
    private static void day(Svg svg, List<Series> series, double each, Scale y) {
        List<Integer> without = IntStream.range(0, series.size())
                .filter(s -> !series.get(s).changed() && !series.get(s).values().isEmpty())
                .boxed()
                .toList();
        boolean back = !without.isEmpty()
                && series.subList(without.get(0), without.get(without.size() - 1)).stream()
                        .anyMatch(Series::changed);
        if (back) {
            int first = without.get(0);
            int last = without.get(without.size() - 1);
            svg.add(
                    "line",
                    "class",
                    "day",
                    "x1",
                    Svg.number(LEFT + (first + 0.5) * each),
                    "x2",
                    Svg.number(LEFT + (last + 0.5) * each),
                    "y1",
                    Svg.number(y.at(series.get(first).mean())),
                    "y2",
                    Svg.number(y.at(series.get(last).mean())));
        }
    }
}
