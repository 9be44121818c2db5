package setwright.app.report.sensors;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import setwright.app.plot.Axis;
import setwright.app.plot.Markup;
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
    /** What is rarer than this at its speed is put into the outermost bars. */
    private static final double LEAST_SHOWN = 0.002;
    /** Shown beyond the knee at least. */
    private static final double BEYOND_KNEE = 1.2;

    private final int first;
    private final int last;
    private final double lowMps;
    private final double binMps;
    private final double most;
    private final Figures figures;

    private DamperPlot(DamperMotion motion, Figures figures) {
        List<Double> edges = motion.edgesMps();
        this.figures = figures;
        this.binMps = edges.get(1) - edges.get(0);
        double reach = BEYOND_KNEE
                * motion.wheels().stream()
                        .mapToDouble(DamperMotion.OfWheel::kneeMps)
                        .max()
                        .orElse(0.0);
        for (DamperMotion.OfWheel wheel : motion.wheels()) {
            for (int bin = 1; bin < edges.size(); bin++) {
                if (wheel.shares().get(bin) >= LEAST_SHOWN) {
                    reach = Math.max(reach, Math.max(-edges.get(bin - 1), edges.get(bin)));
                }
            }
        }
        int half = edges.size() / 2;
        int eachWay = (int) Math.min(half + 1.0, Math.ceil(reach / binMps - 1.0e-9) + 1.0);
        this.first = half + 1 - eachWay;
        this.last = half + eachWay;
        this.lowMps = -eachWay * binMps;
        this.most = motion.wheels().stream()
                .flatMap(wheel -> IntStream.rangeClosed(first, last).mapToObj(bin -> share(wheel, bin)))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0.0);
    }

    /** Share of a bar; the outermost hold what lies beyond them. */
    private double share(DamperMotion.OfWheel wheel, int bin) {
        List<Double> shares = wheel.shares();
        List<Double> held = bin == first
                ? shares.subList(0, bin + 1)
                : bin == last ? shares.subList(bin, shares.size()) : shares.subList(bin, bin + 1);
        return held.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Returns one drawing for each wheel, all on the same scales. */
    static List<SensorsView.Drawing> draw(DamperMotion motion, Figures figures) {
        DamperPlot plot = new DamperPlot(motion, figures);
        List<SensorsView.Drawing> drawings = new ArrayList<>();
        for (DamperMotion.OfWheel wheel : motion.wheels()) {
            String label = "Damper speed " + wheel.wheel().words() + ": slow bump "
                    + figures.percent(wheel.lowBump().mean()) + ", slow rebound "
                    + figures.percent(wheel.lowRebound().mean()) + ", fast bump "
                    + figures.percent(wheel.highBump().mean()) + ", fast rebound "
                    + figures.percent(wheel.highRebound().mean());
            drawings.add(new SensorsView.Drawing(Figures.capital(wheel.wheel().words()), label, plot.draw(wheel)));
        }
        return drawings;
    }

    private Markup draw(DamperMotion.OfWheel wheel) {
        Scale x = new Scale(lowMps, -lowMps, 0.0, 1.0);
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
        axes(svg, x, y);
        for (int bin = first; bin <= last; bin++) {
            double low = lowMps + (bin - first) * binMps;
            double top = y.at(share(wheel, bin));
            svg.add(
                    "rect",
                    "class",
                    low < -0.5 * binMps ? "rebound" : "bump",
                    "x",
                    Svg.percent(x.at(low + 0.5 * GAP * binMps)),
                    "width",
                    Svg.percent(x.at(low + (1.0 - 0.5 * GAP) * binMps) - x.at(low + 0.5 * GAP * binMps)),
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

    private void axes(Svg svg, Scale x, Scale y) {
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
        for (double mm : Axis.between(1000.0 * x.low(), 1000.0 * x.high(), 6).ticks()) {
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
                "\u2190 rebound \u00b7 damper speed, mm/s \u00b7 bump \u2192",
                "class",
                "tick middle",
                "x",
                "50%",
                "y",
                String.valueOf(HEIGHT + 30));
    }
}
