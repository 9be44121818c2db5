package setwright.app.report.brief;

import java.util.ArrayList;
import java.util.List;
import setwright.app.plot.Markup;
import setwright.app.plot.PathData;
import setwright.app.plot.Svg;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;

/** The circuit from above, in lines that any printer can draw; places to work on carry their number. */
final class SheetMap {
    private static final double WIDTH = 320.0;
    private static final double HEIGHT = 240.0;
    private static final double MARGIN = 22.0;
    private static final String PURPLE = "#5e3c99";
    private static final double OUT = 14.0;
    /** Between two points of the line: finer ones would only show their rounding. */
    private static final double STEP = 3.0;
    /** Numbers nearer to one another could not be read. */
    private static final double APART = 15.0;

    private final ReferenceLine line;
    private final double scale;
    private final double left;
    private final double top;

    private SheetMap(ReferenceLine line) {
        double[] x = bounds(line, true);
        double[] y = bounds(line, false);
        this.line = line;
        this.scale = Math.min(
                (WIDTH - 2.0 * MARGIN) / Math.max(1.0, x[1] - x[0]),
                (HEIGHT - 2.0 * MARGIN) / Math.max(1.0, y[1] - y[0]));
        this.left = 0.5 * (WIDTH - scale * (x[0] + x[1]));
        this.top = 0.5 * (HEIGHT + scale * (y[0] + y[1]));
    }

    static Markup of(ReferenceLine line, List<Corner> corners, List<Integer> places) {
        return new SheetMap(line).drawn(corners, places);
    }

    private static double[] bounds(ReferenceLine line, boolean x) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int node = 0; node < line.nodeCount(); node++) {
            double value = x ? line.x(node) : line.y(node);
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return new double[] {low, high};
    }

    private double across(int node) {
        return left + scale * line.x(node);
    }

    private double down(int node) {
        return top - scale * line.y(node);
    }

    private int node(double stationM) {
        return Math.floorMod((int) Math.round(line.wrap(stationM) / line.stepM()), line.nodeCount());
    }

    private Markup drawn(List<Corner> corners, List<Integer> places) {
        Svg svg = new Svg()
                .open(
                        "svg",
                        "xmlns",
                        "http://www.w3.org/2000/svg",
                        "viewBox",
                        "0 0 " + Svg.number(WIDTH) + " " + Svg.number(HEIGHT),
                        "width",
                        Svg.number(WIDTH),
                        "height",
                        Svg.number(HEIGHT));
        PathData path = new PathData();
        int every = (int) Math.max(1.0, Math.rint(STEP / (scale * line.stepM())));
        for (int i = 0; i < line.nodeCount(); i += every) {
            path.to(across(i), down(i));
        }
        svg.add("path", "d", path.close().text(), "fill", "none", "stroke", "#555", "stroke-width", "3");
        List<Corner> marked = corners.stream()
                .filter(corner -> places.contains(corner.number()))
                .toList();
        marked.forEach(corner -> stretch(svg, corner));
        List<double[]> taken = new ArrayList<>();
        marked.forEach(corner -> number(svg, corner, true, taken));
        corners.stream()
                .filter(corner -> !marked.contains(corner))
                .forEach(corner -> number(svg, corner, false, taken));
        return svg.close().markup();
    }

    private void stretch(Svg svg, Corner corner) {
        PathData path = new PathData();
        for (double at = corner.turnInM(); at <= corner.turnOutM(); at += Math.max(line.stepM(), STEP / scale)) {
            path.to(across(node(at)), down(node(at)));
        }
        svg.add(
                "path",
                "d",
                path.text(),
                "fill",
                "none",
                "stroke",
                PURPLE,
                "stroke-width",
                "7",
                "stroke-linecap",
                "round");
    }

    /** On the outside of the corner: places in a disc, others small and grey where there is room. */
    private void number(Svg svg, Corner corner, boolean marked, List<double[]> taken) {
        int apex = node(corner.apexM());
        double outward = line.curvature(apex) > 0.0 ? -1.0 : 1.0;
        double x = across(apex) - outward * OUT * Math.sin(line.heading(apex));
        double y = down(apex) - outward * OUT * Math.cos(line.heading(apex));
        if (!marked && taken.stream().anyMatch(other -> Math.hypot(other[0] - x, other[1] - y) < APART)) {
            return;
        }
        taken.add(new double[] {x, y});
        if (marked) {
            svg.add("circle", "cx", Svg.number(x), "cy", Svg.number(y), "r", "9", "fill", PURPLE);
        }
        svg.text(
                "text",
                String.valueOf(corner.number()),
                "x",
                Svg.number(x),
                "y",
                Svg.number(y + 4.0),
                "text-anchor",
                "middle",
                "font-size",
                marked ? "12" : "10",
                "font-family",
                "Sheet, sans-serif",
                "fill",
                marked ? "#ffffff" : "#555555");
    }
}
