package setwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.app.evidence.BalanceTable;
import setwright.app.evidence.BalanceTable.Cell;
import setwright.app.evidence.BalanceTable.Row;
import setwright.app.plot.Markup;
import setwright.app.plot.PathData;
import setwright.app.plot.Svg;
import setwright.core.circuit.ReferenceLine;

/**
 * The circuit from above, coloured by balance.
 *
 * @param aspect  width over height
 * @param track   the drawing, stretched over its box
 * @param labels  corner numbers, placed in per cent of the box
 */
public record CircuitMap(String aspect, Markup track, List<Label> labels) {
    private static final double WIDTH = MapFrame.WIDTH;
    /** Distances at which a label is tried, in drawing units, and how near two labels may come. */
    private static final double[] AWAY = {44.0, -44.0, 66.0, -66.0, 90.0, -90.0};

    private static final double APART = 62.0;
    private static final double CLEAR = 30.0;

    /** A corner's number with the sign of its largest imbalance. */
    public record Label(int corner, String left, String top, String sign, String css, String facts) {}

    static CircuitMap of(BalanceTable table, ReferenceLine line, CornerFacts facts) {
        MapFrame frame = MapFrame.around(line);
        Svg svg = new Svg()
                .open(
                        "svg",
                        "viewBox",
                        "0 0 " + Svg.number(WIDTH) + " " + Svg.number(frame.height()),
                        "width",
                        "100%",
                        "height",
                        "100%",
                        "aria-hidden",
                        "true");
        svg.add("path", "class", "track", "d", path(frame, line, 0.0, line.lengthM()));
        for (Row row : table.rows()) {
            String place = String.valueOf(row.corner().number());
            svg.open("g", "data-corner", place);
            svg.add(
                    "path",
                    "class",
                    "halo",
                    "d",
                    path(frame, line, row.corner().turnInM(), row.corner().turnOutM()));
            if (row.repeatable()) {
                row.cells().values().stream()
                        .sorted(java.util.Comparator.comparingDouble(Cell::fromM))
                        .forEach(cell -> svg.add(
                                "path",
                                "class",
                                "stretch "
                                        + Shade.of(cell, table.yardstickRad()).css(),
                                "d",
                                path(frame, line, cell.fromM(), cell.toM())));
            } else {
                svg.add(
                        "path",
                        "class",
                        "stretch out",
                        "d",
                        path(frame, line, row.corner().turnInM(), row.corner().turnOutM()));
            }
            svg.close();
        }
        start(svg, frame, line);
        return new CircuitMap(
                String.format(Locale.ROOT, "%.3f", WIDTH / frame.height()),
                svg.close().markup(),
                labels(table, frame, line, facts));
    }

    private static String path(MapFrame frame, ReferenceLine line, double fromM, double toM) {
        if (!(toM > fromM)) {
            return "";
        }
        PathData path = new PathData();
        double step = Math.max(3.0, line.stepM());
        for (double s = fromM; s < toM; s += step) {
            path.to(frame.x(line, s), frame.y(line, s));
        }
        return path.to(frame.x(line, toM), frame.y(line, toM)).text();
    }

    private static void start(Svg svg, MapFrame frame, ReferenceLine line) {
        double dx = frame.x(line, 6.0) - frame.x(line, 0.0);
        double dy = frame.y(line, 6.0) - frame.y(line, 0.0);
        double length = Math.max(1e-9, Math.hypot(dx, dy));
        double ux = dx / length;
        double uy = dy / length;
        double x = frame.x(line, 0.0);
        double y = frame.y(line, 0.0);
        svg.add(
                "path",
                "class",
                "start",
                "d",
                new PathData()
                        .to(x - 15.0 * uy, y + 15.0 * ux)
                        .to(x + 15.0 * uy, y - 15.0 * ux)
                        .text());
        double ax = x + 18.0 * uy;
        double ay = y - 18.0 * ux;
        svg.add(
                "path",
                "class",
                "start arrow",
                "d",
                new PathData()
                        .to(ax, ay)
                        .to(ax + 34.0 * ux, ay + 34.0 * uy)
                        .to(ax + 24.0 * ux - 6.0 * uy, ay + 24.0 * uy + 6.0 * ux)
                        .text());
    }

    private static List<Label> labels(BalanceTable table, MapFrame frame, ReferenceLine line, CornerFacts facts) {
        List<double[]> taken = new ArrayList<>();
        List<Label> labels = new ArrayList<>();
        for (Row row : table.rows()) {
            double[] at = place(frame, line, row.corner().apexM(), row.corner().sign(), taken);
            taken.add(at);
            Shade shade = facts.shade(row);
            labels.add(new Label(
                    row.corner().number(),
                    Svg.percent(at[0] / WIDTH),
                    Svg.percent(at[1] / frame.height()),
                    row.repeatable() ? shade.sign() : "",
                    row.repeatable() ? shade.css() : "out",
                    "Corner " + row.corner().number() + ": " + facts.line(row)));
        }
        return labels;
    }

    /** Outside of the corner first; the first place that is clear of other labels and of the track. */
    private static double[] place(
            MapFrame frame, ReferenceLine line, double station, double turn, List<double[]> taken) {
        double x = frame.x(line, station);
        double y = frame.y(line, station);
        double tx = frame.x(line, station + 2.0) - frame.x(line, station - 2.0);
        double ty = frame.y(line, station + 2.0) - frame.y(line, station - 2.0);
        double length = Math.max(1e-9, Math.hypot(tx, ty));
        double[] best = {x, y};
        double bestRoom = Double.NEGATIVE_INFINITY;
        for (double away : AWAY) {
            double side = away * turn / length;
            double[] candidate = {
                Math.max(22.0, Math.min(WIDTH - 22.0, x - ty * side)),
                Math.max(22.0, Math.min(frame.height() - 22.0, y + tx * side))
            };
            double room = Math.min(nearest(candidate, taken) - APART, nearestTrack(candidate, frame, line) - CLEAR);
            if (room >= 0.0) {
                return candidate;
            }
            if (room > bestRoom) {
                bestRoom = room;
                best = candidate;
            }
        }
        return best;
    }

    private static double nearest(double[] at, List<double[]> taken) {
        return taken.stream()
                .mapToDouble(other -> Math.hypot(other[0] - at[0], other[1] - at[1]))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double nearestTrack(double[] at, MapFrame frame, ReferenceLine line) {
        double least = Double.POSITIVE_INFINITY;
        for (double s = 0.0; s < line.lengthM(); s += 8.0) {
            least = Math.min(least, Math.hypot(frame.x(line, s) - at[0], frame.y(line, s) - at[1]));
        }
        return least;
    }
}
