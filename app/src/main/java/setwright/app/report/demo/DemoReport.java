package setwright.app.report.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.app.demo.DemoStint;
import setwright.app.demo.DemoStory;
import setwright.app.report.Page;
import setwright.app.story.DemoWords;
import setwright.app.story.Storyteller;
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
        List<DemoWords.Act> acts = DemoWords.acts(story, figures);
        String headline = acts.stream()
                .filter(act -> act.title().equals("Verdict"))
                .map(act -> act.sentences().get(0))
                .findFirst()
                .orElseGet(() ->
                        Storyteller.tell(story.coached().answer(), figures).headline());
        return Page.render(
                "demo.jte",
                new DemoView(
                        "The whole story \u2013 Setwright",
                        List.of(story.car(), "at " + story.circuit(), "invented car and circuit"),
                        headline,
                        acts,
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
                StintPlot.draw(
                        all.stream()
                                .map(stint -> new StintPlot.Series(words(stint), stint.lapTimesS()))
                                .filter(series -> !series.values().isEmpty())
                                .toList(),
                        figures)));
        story.target()
                .ifPresent(target -> plots.add(new DemoView.Plot(
                        "Balance where it is to help: " + DemoWords.words(target),
                        "deg against a balanced car, + understeer, - oversteer; one point for each judged lap",
                        StintPlot.draw(
                                all.stream()
                                        .map(stint -> new StintPlot.Series(words(stint), target.perLapDeg(stint)))
                                        .filter(series -> !series.values().isEmpty())
                                        .toList(),
                                figures))));
        return plots;
    }

    private static String words(DemoStint stint) {
        return stint.name().replace('-', ' ');
    }
}
