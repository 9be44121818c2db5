package setwright.benchmarks.measure;

import java.io.PrintStream;
import java.util.List;

/** The table of ratios: ours over a reference, on the clock and by processor time, as Markdown. */
public final class RatioTable {
    private final MarkdownTable table;

    /** Prints its head. */
    public RatioTable(PrintStream out) {
        table = new MarkdownTable(
                out,
                "what",
                "ours",
                "reference",
                "ratio (least to most)",
                "processor time, ours / reference",
                "its ratio (least to most)",
                "the reference is");
    }

    /** Prints a row of two that took turns. */
    public void row(String what, PairedTimes times, String reference) {
        List<Spent> theirs = times.reference();
        table.row(
                what,
                median(times.ours(), false),
                median(theirs, false),
                Figure.ratio(times.ratio(Spent::wallS)),
                both(median(times.ours(), true), median(theirs, true)),
                Figure.ratio(times.ratio(Spent::processorS)),
                reference);
    }

    /** Prints a row of what has no like: its spread stands instead of a ratio. */
    public void alone(String what, List<Spent> ours, String note) {
        Spread wall = PairedTimes.of(ours, Spent::wallS);
        table.row(
                what,
                Figure.time(wall.median()),
                "",
                Figure.time(wall.least()) + " to " + Figure.time(wall.most()),
                median(ours, true),
                "",
                note);
    }

    private static String median(List<Spent> rounds, boolean processor) {
        return Figure.time(PairedTimes.of(rounds, processor ? Spent::processorS : Spent::wallS)
                .median());
    }

    private static String both(String ours, String reference) {
        return ours.isEmpty() || reference.isEmpty() ? ours : ours + " / " + reference;
    }
}
