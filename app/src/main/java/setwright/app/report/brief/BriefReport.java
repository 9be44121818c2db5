package setwright.app.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.app.plot.Markup;
import setwright.app.report.Page;
import setwright.app.units.Figures;
import setwright.core.circuit.Lap;

/** Writes the brief. */
public final class BriefReport {
    private BriefReport() {}

    /** Returns the document, in well-formed XHTML. */
    public static String html(BriefRequest request, Figures figures) {
        return Page.render(
                "brief.jte",
                new BriefView(
                        "Brief \u2013 " + request.laps(),
                        facts(request, figures),
                        DriverSheet.of(request.proposed(), figures),
                        EngineerSheet.of(request.proposed(), figures),
                        style()));
    }

    private static List<String> facts(BriefRequest request, Figures figures) {
        List<Lap> good = request.proposed().answer().diagnosis().stint().goodLaps();
        List<String> facts = new ArrayList<>(List.of(request.laps(), request.circuit(), request.car()));
        if (!request.driver().isEmpty()) {
            facts.add(0, request.driver());
        }
        OptionalDouble best = good.stream().mapToDouble(Lap::timeS).min();
        if (best.isPresent()) {
            facts.add(good.size() + " laps, best " + figures.lapTime(best.getAsDouble()) + ", mean "
                    + figures.lapTime(
                            good.stream().mapToDouble(Lap::timeS).average().orElseThrow()));
        }
        return facts;
    }

    private static Markup style() {
        return Page.resource("brief.css");
    }
}
