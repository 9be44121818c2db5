package setwright.app.report;

import java.util.List;
import java.util.Optional;
import setwright.app.plot.Axes;
import setwright.app.plot.Markup;
import setwright.app.plot.PathData;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.units.Figures;
import setwright.core.car.TyreCurve;
import setwright.core.slip.AxleEvidence;
import setwright.core.slip.AxleSide;
import setwright.core.slip.GripCurve;

/**
 * Both axles' grip curves, drawn.
 *
 * @param label  what the drawing shows, in words
 * @param plot   the drawing
 */
public record AxleView(String label, Markup plot) {
    private static final double WIDTH = 1000.0;
    private static final int HEIGHT = 240;
    private static final int AXIS_HEIGHT = 34;
    private static final double PAD = 8.0;
    private static final int CURVE_POINTS = 60;

    /** Returns the view; empty where neither axle's curve is known. */
    static Optional<AxleView> of(Optional<AxleEvidence> axles, Figures figures) {
        return axles.filter(found -> !found.front().points().isEmpty()
                        || !found.rear().points().isEmpty())
                .map(found -> new AxleView(
                        "Lateral force over load against slip angle, front and rear axle; bars: 95 % intervals from lap to lap",
                        draw(List.of(found.front(), found.rear()), figures)));
    }

    private static Markup draw(List<GripCurve> curves, Figures figures) {
        double mostSlip = 0.0;
        double mostForce = 0.0;
        for (GripCurve curve : curves) {
            for (GripCurve.Point point : curve.points()) {
                mostSlip = Math.max(mostSlip, Math.toDegrees(point.slipRad()));
                mostForce = Math.max(mostForce, point.high());
            }
            mostForce = curve.isKnown() ? Math.max(mostForce, curve.gripHigh()) : mostForce;
        }
        Scale x = new Scale(0.0, 1.05 * mostSlip + 0.5, 0.0, WIDTH);
        Scale y = new Scale(0.0, 1.05 * mostForce + 0.1, HEIGHT - PAD, PAD);
        Svg svg = new Svg()
                .open(
                        "svg",
                        "class",
                        "plot axles",
                        "width",
                        "100%",
                        "height",
                        String.valueOf(HEIGHT + AXIS_HEIGHT),
                        "aria-hidden",
                        "true");
        Axes.draw(svg, x, y, HEIGHT, 8, figures::number, "slip angle, deg");
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
        for (GripCurve curve : curves) {
            if (curve.isKnown()) {
                svg.add("path", "class", "axle-curve " + curve.axle().words(), "d", path(curve, x, y));
            }
        }
        svg.close();
        curves.forEach(curve -> points(svg, curve, x, y));
        return svg.close().markup();
    }

    private static String path(GripCurve curve, Scale x, Scale y) {
        double[] slips = new double[CURVE_POINTS];
        double[] forces = new double[CURVE_POINTS];
        for (int i = 0; i < CURVE_POINTS; i++) {
            double slip = x.high() * i / (CURVE_POINTS - 1);
            slips[i] = x.at(slip);
            forces[i] = y.at(curve.grip() * TyreCurve.forceShare(Math.toRadians(slip) / curve.peakSlipRad()));
        }
        return PathData.line(slips, forces);
    }

    private static void points(Svg svg, GripCurve curve, Scale x, Scale y) {
        String css = "axle-point " + curve.axle().words();
        // the two axles' bins are the same: a little aside, so that no bar covers another
        double aside = curve.axle() == AxleSide.FRONT ? -0.002 : 0.002;
        for (GripCurve.Point point : curve.points()) {
            String at = Svg.percent(x.at(Math.toDegrees(point.slipRad())) / WIDTH + aside);
            svg.add(
                    "line",
                    "class",
                    css,
                    "x1",
                    at,
                    "x2",
                    at,
                    "y1",
                    Svg.number(y.at(point.low())),
                    "y2",
                    Svg.number(y.at(point.high())));
            svg.add("circle", "class", css, "cx", at, "cy", Svg.number(y.at(point.force())), "r", "4");
        }
    }
}
