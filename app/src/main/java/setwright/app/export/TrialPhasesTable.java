package setwright.app.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.app.export.TrialPhasesTable.Part;
import setwright.app.logbook.StoryDesk.Tried;
import setwright.logbook.row.TriedEffectRow;

/** What was tried, as the balance has it: one row per trial, phase and class of corners. */
final class TrialPhasesTable implements Table<Part> {
    /** The balance in one phase of a trial. */
    record Part(Tried tried, TriedEffectRow effect) {}

    @Override
    public String name() {
        return "trial-phases";
    }

    @Override
    public String words() {
        return "One row per trial of the table trials, phase and class of corners: the balance that was predicted and measured.";
    }

    @Override
    public Source source() {
        return Source.LOGBOOK;
    }

    @Override
    public List<Column<Part>> columns() {
        List<Column<Part>> columns = new ArrayList<>(List.of(
                Column.whole(
                        "trial",
                        "number of the trial",
                        part -> part.tried().trial().id()),
                Column.text(
                        "phase",
                        "braking, entry, mid or exit",
                        part -> part.effect().phase()),
                Column.text(
                        "speed class",
                        "low, medium or high; empty: all corners",
                        part -> part.effect().speed())));
        columns.addAll(TriedColumns.of(
                "balance",
                Measure.ANGLE,
                "change of the balance angle; positive: toward understeer",
                part -> Optional.of(part.effect())));
        return columns;
    }

    @Override
    public Stream<Part> rows(Material material) {
        return material.tried().stream()
                .flatMap(tried -> tried.effects().stream()
                        .filter(effect -> !effect.phase().isEmpty())
                        .map(effect -> new Part(tried, effect)));
    }
}
