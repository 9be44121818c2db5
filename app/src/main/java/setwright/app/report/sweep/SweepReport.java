package setwright.app.report.sweep;

import java.util.OptionalDouble;
import java.util.Set;
import setwright.app.plot.Markup;
import setwright.app.report.Page;
import setwright.app.story.SweepStory;
import setwright.app.sweep.SweepAnswer;
import setwright.app.units.Figures;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweptLap;

/** Writes the page of a sweep: one HTML document with everything in it. */
public final class SweepReport {
    private final SetupSweep sweep;
    private final Figures figures;
    private final SweepStory story;

    private SweepReport(SweepAnswer answer, Figures figures) {
        this.sweep = answer.sweep();
        this.figures = figures;
        this.story = new SweepStory(answer, figures);
    }

    /** Returns the document. */
    public static String html(SweepAnswer answer, Figures figures) {
        return Page.render("sweep.jte", new SweepReport(answer, figures).view());
    }

    private SweepView view() {
        boolean one = sweep.items().size() == 1;
        return new SweepView(
                "Setups round a lap \u2013 Setwright",
                story.facts(),
                story.headline(),
                story.remarks(),
                one ? SweepPlots.of(sweep, figures) : java.util.List.of(),
                one ? new Markup("") : SweepMap.of(sweep, figures),
                one ? "" : "Lap time in s against the present setup. Up: " + name(0) + ". Along: " + name(1) + ".",
                figures.units().speedUnit(),
                one ? name(0) : name(0) + " / " + name(1),
                sweep.laps().stream().map(this::row).toList(),
                story.corners(),
                story.limits(),
                Page.style());
    }

    private String name(int item) {
        String unit = sweep.items().get(item).item().unit();
        return sweep.items().get(item).item().name() + (unit.isEmpty() ? "" : ", " + unit);
    }

    private SweepView.Row row(SweptLap lap) {
        return new SweepView.Row(
                String.join(" / ", lap.values().stream().map(figures::plain).toList()),
                lap.values().equals(sweep.present().values()),
                lap.equals(sweep.quickest()),
                figures.lapTime(lap.timeS()),
                figures.signed(lap.timeS() - sweep.present().timeS(), 3),
                balance(lap, sweep.slowCorners()),
                balance(lap, sweep.fastCorners()),
                speed(lap.lowestMps(sweep.slowCorners())),
                speed(lap.lowestMps(sweep.fastCorners())),
                speed(OptionalDouble.of(lap.highestMps())),
                figures.percent(lap.frontShare()),
                figures.percent(lap.rearShare()),
                figures.percent(lap.engineShare()));
    }

    private String balance(SweptLap lap, Set<Integer> corners) {
        OptionalDouble balance = lap.balanceRad(corners);
        return balance.isPresent() ? figures.signed(Math.toDegrees(balance.getAsDouble()), 2) : "";
    }

    private String speed(OptionalDouble mps) {
        return mps.isPresent() ? figures.number(figures.units().speed(mps.getAsDouble()), 1) : "";
    }
}
