package setwright.app.report.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import setwright.app.carfit.CarFitAnswer;
import setwright.app.plot.Markup;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.report.Page;
import setwright.app.story.CarFitWords;
import setwright.app.units.Figures;
import setwright.core.identification.FittedValue;

/** Writes the page of an identified car: one HTML document with everything in it. */
public final class CarFitReport {
    private CarFitReport() {}

    /** Returns the document. */
    public static String html(CarFitAnswer answer, Figures figures) {
        CarFitWords words = new CarFitWords(figures);
        List<String> facts = new ArrayList<>(answer.recordings());
        facts.add(answer.laps() + " laps");
        facts.add(answer.car().description());
        return Page.render(
                "car-fit.jte",
                new CarFitView(
                        "The car from its laps \u2013 Setwright",
                        facts,
                        words.headline(answer),
                        answer.fit().values().stream()
                                .map(value -> row(value, words))
                                .toList(),
                        answer.values(true).stream().map(words::why).toList(),
                        answer.values(false).stream().map(words::why).toList(),
                        answer.fit().evidence().stream()
                                .map(evidence -> EvidencePlot.of(evidence, figures))
                                .toList(),
                        Page.style()));
    }

    private static CarFitView.ValueRow row(FittedValue value, CarFitWords words) {
        return new CarFitView.ValueRow(
                Figures.capital(value.words()),
                words.before(value),
                words.beforeRange(value),
                words.after(value),
                words.afterRange(value),
                value.unit(),
                value.told(),
                bars(value));
    }

    /** The range before as a pale bar, the range after as a dark one over it. */
    private static Markup bars(FittedValue value) {
        double[] ends = DoubleStream.of(value.assumedLow(), value.assumedHigh(), value.low(), value.high())
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        if (ends.length < 2 || ends[0] == ends[ends.length - 1]) {
            return new Markup("");
        }
        Scale x = new Scale(ends[0], ends[ends.length - 1], 0.0, 1.0);
        Svg svg = new Svg().open("svg", "class", "ranges", "width", "100%", "height", "16", "aria-hidden", "true");
        bar(svg, x, value.assumedLow(), value.assumedHigh(), "before", 2.0, 12.0);
        bar(svg, x, value.low(), value.high(), value.told() ? "after" : "after untold", 6.0, 4.0);
        if (Double.isFinite(value.value())) {
            svg.add("circle", "cx", Svg.percent(x.within(value.value())), "cy", "8", "r", "3.5");
        }
        return svg.close().markup();
    }

    private static void bar(Svg svg, Scale x, double low, double high, String css, double top, double height) {
        if (Double.isFinite(low) && Double.isFinite(high)) {
            svg.add(
                    "rect",
                    "class",
                    css,
                    "x",
                    Svg.percent(x.at(low)),
                    "width",
                    Svg.percent(Math.max(0.004, x.at(high) - x.at(low))),
                    "y",
                    Svg.number(top),
                    "height",
                    Svg.number(height));
        }
    }
}
