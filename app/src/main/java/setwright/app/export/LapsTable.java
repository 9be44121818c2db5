package setwright.app.export;

import java.util.List;
import java.util.stream.Stream;
import setwright.app.export.Material.Of;
import setwright.core.circuit.Lap;

/** One row per lap, put aside or not. */
final class LapsTable implements Table<Of<Lap>> {
    @Override
    public String name() {
        return "laps";
    }

    @Override
    public String words() {
        return "One row per lap, those that are judged and those put aside.";
    }

    @Override
    public Source source() {
        return Source.LAPS;
    }

    @Override
    public List<Column<Of<Lap>>> columns() {
        return List.of(
                Material.stint(),
                Column.whole("lap", "number of the lap", row -> row.value().number()),
                Column.text(
                        "kind",
                        "what it is good for; only a good lap is judged",
                        row -> row.value().kind().words()),
                Column.truth(
                        "judged", "whether it is judged", row -> row.value().good()),
                Column.text(
                        "why",
                        "why it was put aside; empty for a good lap",
                        row -> row.value().why()),
                Column.number(
                        "time",
                        Measure.TIME,
                        "lap time; of a partial lap what was recorded of it",
                        row -> row.value().timeS()));
    }

    @Override
    public Stream<Of<Lap>> rows(Material material) {
        return material.each(one -> one.answer().diagnosis().stint().laps().stream());
    }
}
