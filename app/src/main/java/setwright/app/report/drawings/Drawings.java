package setwright.app.report.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.report.CauseView.CornerPanel;
import setwright.app.report.ReportView;
import setwright.app.report.change.PredictionView;
import setwright.app.report.drawings.PanelStack.Panel;
import setwright.app.report.drawings.PanelStack.PanelKey;

/** All drawings of a report, and of the change that is proposed after it. */
public final class Drawings {
    private static final List<PanelKey> TRACES = List.of(
            new PanelKey(false, "typical", "typical lap (median)"),
            new PanelKey(true, "band", "all laps"),
            new PanelKey(true, "fill push", "understeer"),
            new PanelKey(true, "fill slide", "oversteer"),
            new PanelKey(false, "gesture", "one tick a lap: unusual hands; under the balance: an axle lets go"));

    private static final List<PanelKey> AXLES = List.of(
            new PanelKey(false, "axle-curve front", "front axle"), new PanelKey(false, "axle-curve rear", "rear axle"));

    private static final List<PanelKey> CHANGE = List.of(
            new PanelKey(false, "typical", "predicted"),
            new PanelKey(true, "band", "range: eight tenths of what the car may be"),
            new PanelKey(true, "fill push", "toward understeer +"),
            new PanelKey(true, "fill slide", "toward oversteer \u2212"));

    private Drawings() {}

    /**
     * Returns the drawings; what the laps do not tell is not drawn.
     *
     * @param change  the change over the lap; empty when none is proposed
     */
    public static List<Drawing> of(ReportView report, Optional<PredictionView> change) {
        String recording = report.facts().get(0);
        List<Drawing> all = new ArrayList<>();
        if (!report.laps().times().isEmptyContent()) {
            all.add(laps(report));
        }
        if (!report.ribbon().cells().isEmpty()) {
            all.add(RibbonDrawing.draw(
                    recording, report.ribbon(), report.balance().against()));
            all.add(MapDrawing.draw(
                    recording,
                    report.balance().map(),
                    report.balance().legend(),
                    report.balance().against()));
        }
        if (!report.driving().rows().isEmpty()) {
            all.add(DrivingDrawing.draw(recording, report.driving()));
        }
        report.balance()
                .axles()
                .ifPresent(axles -> all.add(PanelStack.draw(
                        "axles",
                        "How hard each axle works \u2013 " + recording,
                        List.of("Points: these laps, with their 95 % interval; lines: the fitted curves."),
                        axles.label(),
                        AXLES,
                        List.of(new Panel("Lateral force over load, against slip angle", axles.plot())))));
        report.cause().panels().forEach(panel -> all.add(corner(recording, panel)));
        if (!report.pattern().cards().isEmpty()) {
            all.add(FindingsDrawing.draw(recording, report.pattern()));
        }
        change.filter(view -> !view.plots().isEmpty()).ifPresent(view -> all.add(change(recording, view)));
        return all;
    }

    private static Drawing laps(ReportView report) {
        return PanelStack.draw(
                "laps",
                "Lap times \u2013 " + report.facts().get(0),
                List.of(String.join(
                        "; ", report.facts().subList(1, report.facts().size()))),
                report.laps().timesLabel(),
                List.of(),
                List.of(new Panel(
                        "Over the best lap, in s. Hollow: put aside; at the upper edge: slower than drawn. Below: lap number.",
                        report.laps().times())));
    }

    private static Drawing corner(String recording, CornerPanel corner) {
        List<PanelKey> keys = new ArrayList<>(TRACES);
        keys.add(1, new PanelKey(false, "best", corner.best()));
        keys.add(3, new PanelKey(false, "own", corner.reference()));
        return PanelStack.draw(
                String.format(Locale.ROOT, "corner-%02d", corner.corner()),
                "Corner " + corner.corner() + " \u2013 " + recording,
                List.of(corner.facts()),
                "Speed, steering wheel, brake, throttle and balance over distance, " + corner.laps() + " laps. "
                        + corner.facts(),
                keys,
                corner.plots().stream()
                        .map(plot -> new Panel(plot.title() + ", " + plot.unit(), plot.plot()))
                        .toList());
    }

    private static Drawing change(String recording, PredictionView change) {
        return PanelStack.draw(
                "change",
                change.headline(),
                List.of(recording + ". Numbers: corners; grey: where the line turns."),
                change.headline() + " "
                        + String.join(
                                " ",
                                change.plots().stream()
                                        .map(PredictionView.Panel::label)
                                        .toList()),
                CHANGE,
                change.plots().stream()
                        .map(plot -> new Panel(plot.title(), plot.plot()))
                        .toList());
    }
}
