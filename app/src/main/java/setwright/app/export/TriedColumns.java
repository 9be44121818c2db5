package setwright.app.export;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import setwright.logbook.row.TriedEffectRow;

/** The columns of a change that was predicted and measured. */
final class TriedColumns {
    private static final String UPPER = "upper end of it";

    private TriedColumns() {}

    static <R> List<Column<R>> of(
            String name, Measure measure, String words, Function<R, Optional<TriedEffectRow>> effect) {
        return List.of(
                end("predicted " + name, measure, "predicted " + words, effect, TriedEffectRow::predicted),
                end(
                        "predicted " + name + " low",
                        measure,
                        "lower end of the interval that holds it eight times in ten",
                        effect,
                        TriedEffectRow::predictedLow),
                end("predicted " + name + " high", measure, UPPER, effect, TriedEffectRow::predictedHigh),
                end("measured " + name, measure, "measured " + words, effect, row -> OptionalDouble.of(row.measured())),
                end(
                        "measured " + name + " low",
                        measure,
                        "lower end of its 95 % interval",
                        effect,
                        row -> OptionalDouble.of(row.measuredLow())),
                end(
                        "measured " + name + " high",
                        measure,
                        UPPER,
                        effect,
                        row -> OptionalDouble.of(row.measuredHigh())));
    }

    private static <R> Column<R> end(
            String name,
            Measure measure,
            String words,
            Function<R, Optional<TriedEffectRow>> effect,
            Function<TriedEffectRow, OptionalDouble> end) {
        return Column.number(
                name,
                measure,
                words,
                row -> effect.apply(row).map(end).orElse(OptionalDouble.empty()).orElse(Double.NaN));
    }
}
