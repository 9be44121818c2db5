package setwright.app.report.sensors;

import java.util.ArrayList;
import java.util.List;
import setwright.app.plot.Axis;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.units.Figures;
import setwright.core.chassis.DamperMotion;

/** Draws how much of the time each damper moves at which speed: rebound to the left, bump to the right. */
final class DamperPlot {
    private static final int HEIGHT = 150;
    private static final int AXIS_HEIGHT = 34;
    private static final double GAP = 0.08;
    private static final double ROOM = 1.08;
    private static final double TICK_MM = 100.0;

    private DamperPlot() {}

    /** Returns one drawing for each wheel, all on the same scales. */
    static List<SensorsView.Drawing> draw(DamperMotion motion, Figures figures) {
        double most = motion.wheels().stream()
                .flatMap(wheel -> wheel.shares().stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0.0);
        List<SensorsView.Drawing> drawings = new ArrayList<>();
        for (DamperMotion.OfWheel wheel : motion.wheels()) {
            String label = "Damper speed " + wheel.wheel().words() + ": slow bump "
                    + figures.percent(wheel.lowBump().mean()) + ", slow rebound "
                    + figures.percent(wheel.lowRebound().mean()) + ", fast bump "
                    + figures.percent(wheel.highBump().mean()) + ", fast rebound "
                    + figures.percent(wheel.highRebound().mean());
            drawings.add(new SensorsView.Drawing(
                    Figures.capital(wheel.wheel().words()), label, draw(wheel, motion.edgesMps(), most, figures)));
        }
        return drawings;
    }

    private static setwright.app.plot.Markup draw(
            DamperMotion.OfWheel wheel, List<Double> edges, double most, Figures figures) {
        double bin = edges.get(1) - edges.get(0);
        Scale x = new Scale(edges.get(0) - bin, edges.get(edges.size() - 1) + bin, 0.0, 1.0);
        Scale y = new Scale(0.0, ROOM * Math.max(most, 0.01), HEIGHT, 0.0);
        Svg svg = new Svg()
                .open(
                        "svg",
                        "class",
                        "plot damper",
                        "width",
                        "100%",
                        "height",
                        String.valueOf(HEIGHT + AXIS_HEIGHT),
                        "aria-hidden",
                        "true");
        axes(svg, x, y, figures);
        for (int i = 0; i < wheel.shares().size(); i++) {
            double low = x.low() + i * bin;
            double top = y.at(wheel.shares().get(i));
            svg.add(
                    "rect",
                    "class",
                    low < -0.5 * bin ? "rebound" : "bump",
                    "x",
                    Svg.percent(x.at(low + 0.5 * GAP * bin)),
                    "width",
                    Svg.percent(x.at(low + (1.0 - 0.5 * GAP) * bin) - x.at(low + 0.5 * GAP * bin)),
                    "y",
                    Svg.number(top),
                    "height",
                    Svg.number(HEIGHT - top));
        }
        for (double knee : new double[] {-wheel.kneeMps(), wheel.kneeMps()}) {
            String at = Svg.percent(x.at(knee));
            svg.add("line", "class", "knee", "x1", at, "x2", at, "y1", "0", "y2", String.valueOf(HEIGHT));
        }
        return svg.close().markup();
    }

    private static void axes(Svg svg, Scale x, Scale y, Figures figures) {
        Axis up = Axis.between(0.0, 100.0 * y.high(), 4);
        for (double tick : up.ticks()) {
            String at = Svg.number(y.at(tick / 100.0));
            svg.add("line", "class", "grid", "x1", "0", "x2", "100%", "y1", at, "y2", at);
            svg.text(
                    "text",
                    figures.number(tick, up.decimals()) + "%",
                    "class",
                    "tick end",
                    "x",
                    "-6",
                    "y",
                    Svg.number(y.at(tick / 100.0) + 4.0));
        }
        for (double mm = -2.0 * TICK_MM; mm <= 2.0 * TICK_MM; mm += TICK_MM) {
            svg.text(
                    "text",
                    figures.number(mm, 0),
                    "class",
                    "tick middle",
                    "x",
                    Svg.percent(x.at(mm / 1000.0)),
                    "y",
                    String.valueOf(HEIGHT + 14));
        }
        svg.text(
                "text",
                "rebound   damper speed, mm/s   bump",
                "class",
                "tick middle",
                "x",
                "50%",
                "y",
                String.valueOf(HEIGHT + 30));
    }
}
