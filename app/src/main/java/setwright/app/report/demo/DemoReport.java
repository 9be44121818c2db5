package setwright.app.report.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.app.demo.DemoStint;
import setwright.app.demo.DemoStory;
import setwright.app.plot.Markup;
import setwright.app.report.Page;
import setwright.app.report.RunPlot;
import setwright.app.story.DemoWords;
import setwright.app.units.Figures;

/** Writes the demo's story as one HTML document. */
public final class DemoReport {
    private DemoReport() {}

    /**
     * Returns the document.
     *
     * @param evidence  file name of the report that lies beside it
     */
    public static String html(DemoStory story, String evidence, Figures figures) {
        return Page.render(
                "demo.jte",
                new DemoView(
                        "The whole story \u2013 Setwright",
                        List.of(story.car(), "at " + story.circuit(), "invented car and circuit"),
                        DemoWords.headline(story, figures),
                        DemoWords.acts(story, figures),
                        plots(story, figures),
                        evidence,
                        Page.style()));
    }

    private static List<DemoView.Plot> plots(DemoStory story, Figures figures) {
        List<DemoView.Plot> plots = new ArrayList<>();
        List<DemoStint> all = Stream.of(
                        Optional.of(story.loose()),
                        Optional.of(story.coached()),
                        story.technique().map(DemoStory.Tried::stint),
                        story.changed(),
                        story.again())
                .flatMap(Optional::stream)
                .toList();
        plots.add(new DemoView.Plot(
                "Lap times",
                "seconds; one point for each judged lap, the bar is the mean of the stint",
                drawn(all, all.stream().map(DemoStint::lapTimesS).toList(), figures)));
        story.target()
                .ifPresent(target -> plots.add(new DemoView.Plot(
                        "Balance where it is to help: " + DemoWords.words(target),
                        "deg from the mean of all these laps, + toward understeer, - toward oversteer; one point for each judged lap",
                        drawn(all, DemoStint.balanceDeg(all, target), figures))));
        return plots;
    }

    private static Markup drawn(List<DemoStint> stints, List<List<Double>> values, Figures figures) {
        return RunPlot.draw(
                IntStream.range(0, stints.size())
                        .mapToObj(i -> new RunPlot.Series(
                                words(stints.get(i)), stints.get(i).name().equals("changed"), values.get(i)))
                        .filter(series -> !series.values().isEmpty())
                        .toList(),
                false,
                figures);
    }

    private static String words(DemoStint stint) {
        return stint.name().replace('-', ' ');
    }
}
