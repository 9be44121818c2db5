package setwright.app.text;

import java.util.List;
import java.util.Locale;
import setwright.app.logbook.Added;
import setwright.app.logbook.KeptStint;
import setwright.app.logbook.SetupStep;
import setwright.app.units.Figures;
import setwright.core.circuit.Lap;

/** What came into the logbook, as lines of text. */
public final class AddedText {
    private AddedText() {}

    /** Returns the text, ending with a line break. */
    public static String write(Added added, Figures figures, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        write(added, figures, lines);
        return lines.text();
    }

    private static void write(Added added, Figures figures, TextLines lines) {
        KeptStint stint = added.stint();
        if (added.known()) {
            lines.wide(stint.recording().name() + " is in the logbook already, as " + stint.name() + ".");
            return;
        }
        lines.wide(Figures.capital(stint.name()) + " from " + stint.recording().name() + ".");
        lines.paragraph(
                "Driven",
                String.format(
                        Locale.ROOT,
                        "By %s in %s with setup %d at %s%s.",
                        stint.driver().name(),
                        stint.car().name(),
                        stint.setup().number(),
                        stint.circuit().name(),
                        added.newCircuit() ? ", a new circuit" : ""));
        added.setup()
                .filter(step -> step.made() || step.moved())
                .map(SetupStep::words)
                .ifPresent(words -> lines.paragraph("Setup", words));
        lines.paragraph(
                "Laps",
                stint.stint().goodLaps() + " of " + stint.stint().laps() + " can be judged"
                        + (stint.stint().bestS().isPresent()
                                ? ", best "
                                        + figures.lapTime(stint.stint().bestS().getAsDouble()) + ", mean "
                                        + figures.lapTime(stint.stint().meanS().orElseThrow())
                                : "")
                        + ".");
        added.laps().stream()
                .filter(lap -> !lap.good())
                .forEach(lap -> lines.paragraph("", "Lap " + lap.number() + " put aside: " + why(lap) + "."));
        List<String> calibrations = added.calibrations().stream()
                .map(found -> Figures.capital(found.what()) + ": " + Figures.sentence(found.reason()))
                .toList();
        if (!calibrations.isEmpty()) {
            lines.paragraphs("Adjusted", calibrations);
        }
        lines.paragraphs("Noted", added.remarks());
    }

    private static String why(Lap lap) {
        return lap.why().isEmpty() ? "not whole" : lap.why();
    }
}
