package setwright.app.export;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import setwright.core.replay.Effect;

/** The columns of a predicted change. */
final class Predicted {
    private Predicted() {}

    /** Returns its middle and the ends of the interval that holds it eight times in ten. */
    static <R> List<Column<R>> columns(
            String name, Measure measure, String words, Function<R, Optional<Effect>> effect) {
        return List.of(
                end(name, measure, words, effect, Effect::central),
                end(
                        name + " low",
                        measure,
                        "lower end of the interval that holds it eight times in ten",
                        effect,
                        Effect::low),
                end(name + " high", measure, "upper end of it", effect, Effect::high));
    }

    private static <R> Column<R> end(
            String name,
            Measure measure,
            String words,
            Function<R, Optional<Effect>> effect,
            ToDoubleFunction<Effect> end) {
        return Column.number(
                name,
                measure,
                words,
                row -> effect.apply(row).map(end::applyAsDouble).orElse(Double.NaN));
    }
}
