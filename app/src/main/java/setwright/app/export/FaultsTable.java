package setwright.app.export;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.app.export.Material.Of;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.LostTime;

/** What the driver does: one row per fault of the driving. */
final class FaultsTable implements Table<Of<DrivingFault>> {
    @Override
    public String name() {
        return "faults";
    }

    @Override
    public String words() {
        return "One row per fault of the driving. No row: none was found, or the laps do not tell.";
    }

    @Override
    public Source source() {
        return Source.LAPS;
    }

    @Override
    public List<Column<Of<DrivingFault>>> columns() {
        return List.of(
                Material.stint(),
                Column.text("kind", "what he does", row -> row.value().kind()),
                Column.text(
                        "corners",
                        "numbers of the corners where he does it",
                        row -> row.value().corners().stream()
                                .map(String::valueOf)
                                .collect(Collectors.joining(" "))),
                Column.number(
                        "lap share",
                        Measure.NUMBER,
                        "of the passes through these corners that show it",
                        row -> row.value().lapShare()),
                Column.number(
                        "size", Measure.BESIDE, "how large", row -> row.value().size()),
                Column.text("size unit", "unit of the size", row -> row.value().unit()),
                Column.truth(
                        "habit",
                        "whether he drives so all round the lap",
                        row -> row.value().habit()),
                cost("cost", "what it costs a lap; empty where the laps do not show it", LostTime::seconds),
                cost("cost low", "lower end of its 95 % interval", LostTime::low),
                cost("cost high", "upper end of it", LostTime::high));
    }

    private static Column<Of<DrivingFault>> cost(String name, String words, ToDoubleFunction<LostTime> value) {
        return Column.number(
                name,
                Measure.TIME,
                words,
                row -> row.value().cost().map(value::applyAsDouble).orElse(Double.NaN));
    }

    @Override
    public Stream<Of<DrivingFault>> rows(Material material) {
        return material.each(one -> one.answer().diagnosis().faults().stream());
    }
}
