package setwright.app.json;

import java.util.List;
import java.util.Optional;

/**
 * Sums as JSON. Field names are those of the JSON.
 *
 * @param version       of this shape
 * @param calculations  in the order asked for
 */
record SumsJson(int version, List<Calculation> calculations) {

    /** A sum. */
    record Calculation(
            String name,
            String title,
            List<Result> results,
            List<String> findings,
            List<Input> inputs,
            String source,
            List<String> notes,
            Optional<String> caution) {}

    /** A value that went in; {@code origin} is given, car sheet or assumed. */
    record Input(String symbol, String what, double value, String unit, String origin) {}

    /** A value that came out; {@code numbers} is the formula with the values put in. */
    record Result(String symbol, String what, double value, String unit, String formula, String numbers) {}
}
