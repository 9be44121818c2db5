package setwright.app.report.sensors;

import java.util.List;
import java.util.Optional;
import setwright.app.plot.Axes;
import setwright.app.plot.PathData;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.units.Figures;
import setwright.core.chassis.LapInterval;
import setwright.core.chassis.RideHeights;

/** Draws ride heights of both axles against the speed; what lies between them is the rake. */
final class HeightPlot {
    private static final double WIDTH = 1000.0;
    private static final int HEIGHT = 220;
    private static final int AXIS_HEIGHT = 34;
    private static final double PAD = 8.0;
    private static final double MM = 1000.0;
    private static final double ROOM_MM = 2.0;

    private HeightPlot() {}

    /** Returns the drawing; empty with fewer than two speeds. */
    static Optional<SensorsView.Drawing> draw(RideHeights heights, Figures figures) {
        List<RideHeights.Point> points = heights.points();
        if (points.size() < 2) {
            return Optional.empty();
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (RideHeights.Point point : points) {
            low = Math.min(low, MM * Math.min(least(point.frontM()), least(point.rearM())));
            high = Math.max(high, MM * Math.max(most(point.frontM()), most(point.rearM())));
        }
        double last = figures.units().speed(points.get(points.size() - 1).highMps());
        Scale x = new Scale(0.0, last, 0.0, WIDTH);
        Scale y = new Scale(low - ROOM_MM, high + ROOM_MM, HEIGHT - PAD, PAD);
        Svg svg = new Svg()
                .open(
                        "svg",
                        "class",
                        "plot heights",
                        "width",
                        "100%",
                        "height",
                        String.valueOf(HEIGHT + AXIS_HEIGHT),
                        "aria-hidden",
                        "true");
        Axes.draw(
                svg,
                x,
                y,
                HEIGHT,
                6,
                figures::number,
                "speed, " + figures.units().speedUnit());
        svg.open(
                "svg",
                "viewBox",
                "0 0 1000 " + HEIGHT,
                "width",
                "100%",
                "height",
                String.valueOf(HEIGHT),
                "preserveAspectRatio",
                "none");
        for (boolean front : new boolean[] {true, false}) {
            svg.add("path", "class", "axle-curve " + css(front), "d", line(points, front, x, y, figures));
        }
        svg.close();
        for (boolean front : new boolean[] {true, false}) {
            points.forEach(point -> mark(svg, point, front, x, y, figures));
        }
        RideHeights.Point first = points.get(0);
        RideHeights.Point end = points.get(points.size() - 1);
        return Optional.of(new SensorsView.Drawing(
                "Ride height against speed, in quiet driving",
                "Ride height: front " + figures.number(MM * first.frontM().mean(), 0) + " to "
                        + figures.number(MM * end.frontM().mean(), 0) + " mm, rear "
                        + figures.number(MM * first.rearM().mean(), 0) + " to "
                        + figures.number(MM * end.rearM().mean(), 0) + " mm, from "
                        + figures.speed(first.speedMps()) + " to " + figures.speed(end.speedMps()),
                svg.close().markup()));
    }

    private static double least(LapInterval height) {
        return Double.isFinite(height.low()) ? height.low() : height.mean();
    }

    private static double most(LapInterval height) {
        return Double.isFinite(height.high()) ? height.high() : height.mean();
    }

    private static String css(boolean front) {
        return front ? "front" : "rear";
    }

    private static LapInterval height(RideHeights.Point point, boolean front) {
        return front ? point.frontM() : point.rearM();
    }

    private static String line(List<RideHeights.Point> points, boolean front, Scale x, Scale y, Figures figures) {
        double[] speeds = points.stream()
                .mapToDouble(point -> x.at(figures.units().speed(point.speedMps())))
                .toArray();
        double[] heights = points.stream()
                .mapToDouble(point -> y.at(MM * height(point, front).mean()))
                .toArray();
        return PathData.line(speeds, heights);
    }

    private static void mark(Svg svg, RideHeights.Point point, boolean front, Scale x, Scale y, Figures figures) {
        String css = "axle-point " + css(front);
        String at = Svg.percent(x.at(figures.units().speed(point.speedMps())) / WIDTH);
        LapInterval height = height(point, front);
        svg.add(
                "line",
                "class",
                css,
                "x1",
                at,
                "x2",
                at,
                "y1",
                Svg.number(y.at(MM * least(height))),
                "y2",
                Svg.number(y.at(MM * most(height))));
        svg.add("circle", "class", css, "cx", at, "cy", Svg.number(y.at(MM * height.mean())), "r", "4");
    }
}
