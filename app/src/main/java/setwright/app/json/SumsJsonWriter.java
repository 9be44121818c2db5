package setwright.app.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.Input;
import setwright.core.car.worked.Quantity;
import setwright.core.car.worked.Result;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes sums as JSON of version 1: the same values, formulas and sentences as the text. */
public final class SumsJsonWriter {
    private static final int VERSION = 1;
    /** Hides what binary fractions add to 0.3, and no more. */
    private static final MathContext DIGITS = new MathContext(12);

    private static final Figures FIGURES = Figures.forTerminal(UnitSystem.METRIC);

    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private SumsJsonWriter() {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(List<Calculation> calculations) {
        SumsJson json = new SumsJson(
                VERSION, calculations.stream().map(SumsJsonWriter::of).toList());
        return MAPPER.writeValueAsString(json) + "\n";
    }

    private static SumsJson.Calculation of(Calculation sum) {
        return new SumsJson.Calculation(
                sum.name(),
                sum.title(),
                sum.results().stream().map(result -> of(sum, result)).toList(),
                sum.findings(),
                sum.inputs().stream().map(SumsJsonWriter::of).toList(),
                sum.source(),
                sum.notes(),
                sum.caution());
    }

    private static SumsJson.Input of(Input input) {
        return new SumsJson.Input(
                input.symbol(),
                input.words(),
                value(input),
                input.unit().symbol(),
                input.origin().words());
    }

    private static SumsJson.Result of(Calculation sum, Result result) {
        return new SumsJson.Result(
                result.symbol(),
                result.words(),
                value(result),
                result.unit().symbol(),
                sum.inLetters(result),
                sum.with(result, quantity -> FIGURES.inFormula(quantity.value())));
    }

    private static double value(Quantity quantity) {
        return new BigDecimal(quantity.value(), DIGITS).doubleValue();
    }
}
