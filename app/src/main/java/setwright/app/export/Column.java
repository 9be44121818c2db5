package setwright.app.export;

import java.io.IOException;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import setwright.intake.columns.ParquetTable.Kind;
import setwright.intake.columns.TableCells;

/**
 * A column of a table.
 *
 * @param <R>      a row
 * @param name     in words, unique within the table
 * @param kind     of its cells
 * @param measure  what its numbers measure; {@link Measure#NUMBER} for what is no number
 * @param words    what it is, one sentence without a full stop; what an empty cell means where there are any
 * @param cell     puts a row's cell
 */
public record Column<R>(String name, Kind kind, Measure measure, String words, Cell<R> cell) {
    /** Puts one cell of a row. */
    @FunctionalInterface
    public interface Cell<R> {
        /** Puts exactly one cell. */
        void put(R row, TableCells cells) throws IOException;
    }

    /** A column of texts; an empty text is an empty cell. */
    public static <R> Column<R> text(String name, String words, Function<R, String> value) {
        return new Column<>(name, Kind.TEXT, Measure.NUMBER, words, (row, cells) -> {
            String text = value.apply(row);
            if (text.isEmpty()) {
                cells.empty();
            } else {
                cells.text(text);
            }
        });
    }

    /** A column of whole numbers. */
    public static <R> Column<R> whole(String name, String words, ToLongFunction<R> value) {
        return new Column<>(
                name, Kind.WHOLE, Measure.NUMBER, words, (row, cells) -> cells.whole(value.applyAsLong(row)));
    }

    /** A column of whole numbers of which a row may have none. */
    public static <R> Column<R> wholeIfAny(String name, String words, Function<R, OptionalInt> value) {
        return new Column<>(name, Kind.WHOLE, Measure.NUMBER, words, (row, cells) -> {
            OptionalInt number = value.apply(row);
            if (number.isPresent()) {
                cells.whole(number.getAsInt());
            } else {
                cells.empty();
            }
        });
    }

    /** A column of numbers in SI units; one that is not finite is an empty cell. */
    public static <R> Column<R> number(String name, Measure measure, String words, ToDoubleFunction<R> si) {
        return new Column<>(name, Kind.NUMBER, measure, words, (row, cells) -> {
            double number = si.applyAsDouble(row);
            if (Double.isFinite(number)) {
                cells.number(number);
            } else {
                cells.empty();
            }
        });
    }

    /** A column of yes and no. */
    public static <R> Column<R> truth(String name, String words, Predicate<R> value) {
        return new Column<>(name, Kind.TRUTH, Measure.NUMBER, words, (row, cells) -> cells.truth(value.test(row)));
    }

    /** Returns the name as a JSON key. */
    public String key() {
        return name.replaceAll("[^a-z0-9]+", "_");
    }

    /** Returns the unit where numbers have one; empty for a text, a whole number, yes and no. */
    public String siUnit() {
        return kind == Kind.NUMBER ? measure.si() : "";
    }

    /** Returns the header where numbers are in SI units, as in Parquet. */
    public String siHeader() {
        return header(name, siUnit());
    }

    /** Returns the header: the name with a unit behind it where there is one. */
    static String header(String name, String unit) {
        return unit.isEmpty() ? name : name + " (" + unit + ")";
    }
}
