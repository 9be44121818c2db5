package setwright.app.report.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import setwright.app.plot.Axis;
import setwright.app.plot.PathData;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.report.fit.CarFitView.Plot;
import setwright.app.units.Figures;
import setwright.core.identification.FitEvidence;
import setwright.core.identification.FitEvidence.Series;
import setwright.core.recording.Channel;

/** Draws data as points and the fitted car as lines. Drawings stretch sideways; their texts and points do not. */
public final class EvidencePlot {
    private static final double WIDTH = 1000.0;
    private static final int HEIGHT = 260;
    private static final int AXIS_HEIGHT = 34;
    private static final double PAD = 8.0;
    /** More points than this are a blot and a slow page; every n-th is drawn then. */
    private static final int MOST_POINTS = 1500;
    /** So few can be drawn large. */
    private static final int FEW_POINTS = 60;
    /** Styles in use: data, then the fitted car, then others. */
    private static final int STYLES = 3;

    private final FitEvidence evidence;
    private final Figures figures;
    private final Scale x;
    private final Scale y;

    private EvidencePlot(FitEvidence evidence, Figures figures) {
        this.evidence = evidence;
        this.figures = figures;
        this.x = scale(Series::x, 0.0, WIDTH);
        this.y = scale(Series::y, HEIGHT - PAD, PAD);
    }

    public static Plot of(FitEvidence evidence, Figures figures) {
        EvidencePlot plot = new EvidencePlot(evidence, figures);
        List<CarFitView.Key> keys = new ArrayList<>();
        for (int i = 0; i < evidence.series().size(); i++) {
            keys.add(new CarFitView.Key(plot.css(i), evidence.series().get(i).words()));
        }
        return new Plot(
                evidence.title(),
                evidence.xWords(),
                evidence.yWords(),
                keys,
                plot.draw().markup());
    }

    private String css(int series) {
        boolean curve = evidence.series().get(series).curve();
        long before = IntStream.range(0, series)
                .filter(i -> evidence.series().get(i).curve() == curve)
                .count();
        return (curve ? "curve" : "points") + (1 + before % STYLES);
    }

    private Svg draw() {
        Svg svg = new Svg()
                .open(
                        "svg",
                        "class",
                        "plot",
                        "width",
                        "100%",
                        "height",
                        String.valueOf(HEIGHT + AXIS_HEIGHT),
                        "aria-hidden",
                        "true");
        axes(svg);
        for (int i = 0; i < evidence.series().size(); i++) {
            if (!evidence.series().get(i).curve()) {
                points(svg, evidence.series().get(i), css(i));
            }
        }
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
        for (int i = 0; i < evidence.series().size(); i++) {
            Series series = evidence.series().get(i);
            if (series.curve()) {
                svg.add("path", "class", css(i), "d", PathData.line(places(x, series.x()), places(y, series.y())));
            }
        }
        return svg.close().close();
    }

    private static double[] places(Scale scale, Channel values) {
        return Arrays.stream(values.toArray()).map(scale::at).toArray();
    }

    private void points(Svg svg, Series series, String css) {
        int count = Math.min(series.x().size(), series.y().size());
        int each = Math.max(1, (count + MOST_POINTS - 1) / MOST_POINTS);
        for (int i = 0; i < count; i += each) {
            double px = series.x().get(i);
            double py = series.y().get(i);
            if (Double.isFinite(px) && Double.isFinite(py)) {
                svg.add(
                        "circle",
                        "class",
                        css,
                        "cx",
                        Svg.percent(x.at(px) / WIDTH),
                        "cy",
                        Svg.number(y.at(py)),
                        "r",
                        count <= FEW_POINTS ? "4" : "2");
            }
        }
    }

    private void axes(Svg svg) {
        Axis up = Axis.between(y.low(), y.high(), 5);
        for (double tick : up.ticks()) {
            String at = Svg.number(y.at(tick));
            svg.add("line", "class", tick == 0.0 ? "grid zero" : "grid", "x1", "0", "x2", "100%", "y1", at, "y2", at);
            svg.text(
                    "text",
                    figures.number(tick, up.decimals()),
                    "class",
                    "tick end",
                    "x",
                    "-6",
                    "y",
                    Svg.number(y.at(tick) + 4.0));
        }
        Axis along = Axis.between(x.low(), x.high(), 6);
        for (double tick : along.ticks()) {
            String at = Svg.percent(x.at(tick) / WIDTH);
            svg.add("line", "class", "grid", "x1", at, "x2", at, "y1", "0", "y2", String.valueOf(HEIGHT));
            svg.text(
                    "text",
                    figures.number(tick, along.decimals()),
                    "class",
                    "tick middle",
                    "x",
                    at,
                    "y",
                    String.valueOf(HEIGHT + 14));
        }
        svg.text("text", evidence.xWords(), "class", "tick middle", "x", "50%", "y", String.valueOf(HEIGHT + 30));
    }

    private Scale scale(Function<Series, Channel> side, double from, double to) {
        double[] all = evidence.series().stream()
                .flatMapToDouble(series -> DoubleStream.of(side.apply(series).toArray()))
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        if (all.length == 0) {
            return new Scale(0.0, 1.0, from, to);
        }
        double low = all[0];
        double high = all[all.length - 1];
        double margin = Math.max(0.03 * (high - low), 1e-6 * (1.0 + Math.abs(high)));
        return new Scale(low - margin, high + margin, from, to);
    }
}
