package setwright.app.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.app.logbook.StoryDesk.Tried;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;

/** What was tried: one row per trial. */
final class TrialsTable implements Table<Tried> {
    @Override
    public String name() {
        return "trials";
    }

    @Override
    public String words() {
        return "One row per change that was tried back to back on any car of the logbook: what it was to do, what it did and"
                + " what was decided.";
    }

    @Override
    public Source source() {
        return Source.LOGBOOK;
    }

    @Override
    public List<Column<Tried>> columns() {
        List<Column<Tried>> columns = new ArrayList<>(List.of(
                Column.whole(
                        "trial", "number of the trial", tried -> tried.trial().id()),
                Column.text("car", "name of the car", tried -> tried.car().name()),
                Column.text("change", "what was changed", tried -> tried.trial().changeWords()),
                Column.text(
                        "together",
                        "why several items were changed together; empty for one item",
                        tried -> tried.trial().together()),
                Column.text(
                        "plan",
                        "order of the runs: A without the change, B with it",
                        tried -> tried.trial().plan()),
                Column.text(
                        "opened",
                        "when it was planned, ISO 8601, UTC",
                        tried -> tried.trial().openedAt().toString()),
                Column.text("state", "open or over", tried -> tried.trial().state()),
                Column.text(
                        "verdict",
                        "the last one; empty when it was never judged",
                        tried -> tried.verdict().map(VerdictRow::verdict).orElse("")),
                Column.text(
                        "reason",
                        "why that verdict",
                        tried -> tried.verdict().map(VerdictRow::reason).orElse(""))));
        columns.addAll(TriedColumns.of(
                "lap time", Measure.TIME, "change of the lap time; negative: quicker", TrialsTable::lap));
        return columns;
    }

    private static Optional<TriedEffectRow> lap(Tried tried) {
        return tried.effects().stream()
                .filter(effect -> effect.phase().isEmpty())
                .findFirst();
    }

    @Override
    public Stream<Tried> rows(Material material) {
        return material.tried().stream();
    }
}
