package setwright.app.report.sweep;

import java.util.List;
import setwright.app.plot.Markup;
import setwright.app.plot.Svg;
import setwright.app.units.Figures;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweptLap;

/** Draws lap time over two items: a cell for each setup, the darker the quicker, with the difference written in it. */
final class SweepMap {
    private static final int ROW = 30;
    private static final int AXIS = 40;
    /** Room for the values of the first item, as a share of the width. */
    private static final double MARGIN = 0.09;
    /** The darkest shade still lets its text be read. */
    private static final double DARKEST = 0.5;

    private SweepMap() {}

    static Markup of(SetupSweep sweep, Figures figures) {
        List<Double> down = sweep.items().get(0).values();
        List<Double> across = sweep.items().get(1).values();
        double best = sweep.quickest().timeS();
        double worst = sweep.laps().stream().mapToDouble(SweptLap::timeS).max().orElseThrow();
        double width = (1.0 - MARGIN) / across.size();
        Svg svg = new Svg()
                .open(
                        "svg",
                        "class",
                        "plot setups",
                        "width",
                        "100%",
                        "height",
                        String.valueOf(ROW * down.size() + AXIS),
                        "aria-hidden",
                        "true");
        for (int i = 0; i < down.size(); i++) {
            // the first item grows upward
            int row = down.size() - 1 - i;
            svg.text(
                    "text",
                    figures.plain(down.get(i)),
                    "class",
                    "tick end",
                    "x",
                    Svg.percent(MARGIN - 0.01),
                    "y",
                    String.valueOf(row * ROW + 19));
            for (int j = 0; j < across.size(); j++) {
                SweptLap lap = sweep.at(i, j);
                double share = worst > best ? (worst - lap.timeS()) / (worst - best) : 0.0;
                boolean present = lap.values().equals(sweep.present().values());
                svg.add(
                        "rect",
                        "class",
                        "setup" + (lap.equals(sweep.quickest()) ? " quickest" : "") + (present ? " present" : ""),
                        "fill-opacity",
                        String.format(java.util.Locale.ROOT, "%.3f", DARKEST * share),
                        "x",
                        Svg.percent(MARGIN + width * j + 0.001),
                        "width",
                        Svg.percent(width - 0.002),
                        "y",
                        String.valueOf(row * ROW + 1),
                        "height",
                        String.valueOf(ROW - 2));
                svg.text(
                        "text",
                        figures.signed(lap.timeS() - sweep.present().timeS(), 2),
                        "class",
                        "value middle",
                        "x",
                        Svg.percent(MARGIN + width * (j + 0.5)),
                        "y",
                        String.valueOf(row * ROW + 19));
            }
        }
        for (int j = 0; j < across.size(); j++) {
            svg.text(
                    "text",
                    figures.plain(across.get(j)),
                    "class",
                    "tick middle",
                    "x",
                    Svg.percent(MARGIN + width * (j + 0.5)),
                    "y",
                    String.valueOf(ROW * down.size() + 16));
        }
        return svg.close().markup();
    }
}
