package setwright.app.report.change;

import java.util.List;
import setwright.app.plot.Markup;

/**
 * Everything the page of a predicted change shows.
 *
 * @param title       of the document
 * @param facts       what was read: recording, car, laps
 * @param headline    the answer, short
 * @param reasons     the rest of the answer, then why
 * @param doubts      what may be wrong
 * @param selectivity for which phase the change is; empty without an effect
 * @param classes     headings of the table of phases
 * @param phases      rows of the table of phases
 * @param corners     rows of the table of corners; the last one is the lap
 * @param plots       over the lap
 * @param candidates  single steps, quickest first; empty when one change was asked for
 * @param legend      what the colours mean
 * @param style       the style sheet
 */
public record PredictionView(
        String title,
        List<String> facts,
        String headline,
        List<String> reasons,
        List<String> doubts,
        String selectivity,
        List<String> classes,
        List<PhaseRow> phases,
        List<CornerRow> corners,
        List<Panel> plots,
        List<Candidate> candidates,
        List<LegendItem> legend,
        Markup style) {
    public PredictionView {
        facts = List.copyOf(facts);
        reasons = List.copyOf(reasons);
        doubts = List.copyOf(doubts);
        classes = List.copyOf(classes);
        phases = List.copyOf(phases);
        corners = List.copyOf(corners);
        plots = List.copyOf(plots);
        candidates = List.copyOf(candidates);
        legend = List.copyOf(legend);
    }

    /** One phase, a cell for each class of corners. */
    public record PhaseRow(String phase, List<EffectCell> cells) {}

    /** One corner; {@code phases} has one entry per phase, in driving order. */
    public record CornerRow(String corner, String place, List<EffectCell> phases, EffectCell time) {}

    /**
     * One effect.
     *
     * @param value  signed
     * @param range  its interval
     * @param now    what the balance is now; empty where that is not shown
     * @param css    style classes
     * @param bar    the interval drawn
     * @param label  all in words
     */
    public record EffectCell(String value, String range, String now, String css, Markup bar, String label) {
        /** Returns it for wide screens only. */
        EffectCell wide() {
            return new EffectCell(value, range, now, css + " wide", bar, label);
        }

        EffectCell withoutBar() {
            return new EffectCell(value, range, now, css, new Markup(""), label);
        }
    }

    /** One colour explained. */
    public record LegendItem(String css, String text) {}

    /** A drawing with its title, and what a person who cannot see it is told. */
    public record Panel(String title, String label, Markup plot) {}

    /** One step of one item. */
    public record Candidate(String change, EffectCell time, String sure, List<EffectCell> phases) {}
}
