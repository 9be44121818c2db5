package setwright.app.report;

import java.util.List;
import setwright.app.evidence.Answer;
import setwright.app.evidence.ChannelNote;
import setwright.app.plot.Markup;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.story.LapsWords;
import setwright.app.story.Story;
import setwright.app.units.Figures;
import setwright.core.circuit.Lap;
import setwright.core.recording.Calibration;

/**
 * What the laps link shows.
 *
 * @param link          the argument
 * @param times         lap times as a drawing; empty without good laps
 * @param timesLabel    the drawing in words
 * @param rows          lap by lap
 * @param calibrations  what was corrected
 * @param channels      how the file was understood
 * @param assumed       what was assumed of the car
 */
public record LapsView(
        Story.Link link,
        Markup times,
        String timesLabel,
        List<LapRow> rows,
        List<CalibrationRow> calibrations,
        List<ChannelNote> channels,
        List<String> assumed) {
    private static final int HEIGHT = 132;
    private static final int MOST_LABELS = 16;

    /** One lap of the table. */
    public record LapRow(int lap, String time, String gap, boolean used, String why) {}

    /** One correction of the table. */
    public record CalibrationRow(String what, String value, String why) {}

    static LapsView of(Answer answer, Story.Link link, Figures figures) {
        List<Lap> laps = answer.diagnosis().stint().laps();
        double best =
                laps.stream().filter(Lap::good).mapToDouble(Lap::timeS).min().orElse(Double.NaN);
        return new LapsView(
                link,
                Double.isFinite(best) ? times(laps, best, figures) : new Markup(""),
                "Time of each lap over the best one, in s; laps put aside are hollow.",
                laps.stream().map(lap -> row(lap, best, figures)).toList(),
                answer.diagnosis().stint().recording().calibrations().stream()
                        .map(c -> calibration(c, figures))
                        .toList(),
                answer.channels(),
                answer.car().assumed());
    }

    private static LapRow row(Lap lap, double best, Figures figures) {
        return new LapRow(
                lap.number(),
                figures.lapTime(lap.timeS()),
                Double.isFinite(best) ? figures.signed(lap.timeS() - best, 2) : "",
                lap.good(),
                lap.good() ? "used" : figures.shown(LapsWords.reason(lap)));
    }

    private static CalibrationRow calibration(Calibration c, Figures figures) {
        return new CalibrationRow(c.what(), figures.signed(c.value(), 3) + " " + c.unit(), c.reason());
    }

    private static Markup times(List<Lap> laps, double best, Figures figures) {
        double slowest =
                laps.stream().filter(Lap::good).mapToDouble(Lap::timeS).max().orElse(best);
        double top = Math.max(0.2, 1.25 * (slowest - best));
        Scale y = new Scale(0.0, top, HEIGHT - 26.0, 22.0);
        Svg svg = new Svg()
                .open("svg", "class", "plot", "width", "100%", "height", String.valueOf(HEIGHT), "aria-hidden", "true");
        for (double tick : setwright.app.plot.Axis.between(0.0, top, 3).ticks()) {
            String at = Svg.number(y.at(tick));
            svg.add("line", "class", "grid", "x1", "0", "x2", "100%", "y1", at, "y2", at);
            svg.text(
                    "text",
                    tick == 0.0 ? "best" : "+" + figures.number(tick, 2) + " s",
                    "class",
                    "tick end",
                    "x",
                    "-6",
                    "y",
                    Svg.number(y.at(tick) + 4.0));
        }
        int every = (laps.size() + MOST_LABELS - 1) / MOST_LABELS;
        for (int i = 0; i < laps.size(); i++) {
            Lap lap = laps.get(i);
            String x = Svg.percent((i + 0.5) / laps.size());
            boolean beyond = lap.timeS() - best > top || !(lap.timeS() >= best);
            double place = beyond ? 14.0 : y.at(lap.timeS() - best);
            svg.add("circle", "class", lap.good() ? "dot" : "dot hollow", "cx", x, "cy", Svg.number(place), "r", "5");
            if (i % every == 0 || !lap.good()) {
                svg.text(
                        "text",
                        String.valueOf(lap.number()),
                        "class",
                        "tick middle",
                        "x",
                        x,
                        "y",
                        String.valueOf(HEIGHT - 8));
            }
        }
        return svg.close().markup();
    }
}
