package setwright.intake.map;

import setwright.core.recording.Quantity;
import setwright.intake.table.TableColumn;

/** What the words of a header alone say. */
public final class ColumnWords {
    private ColumnWords() {}

    /** Returns how well a column's header and unit read like a quantity, 0 (not at all) to 1. */
    public static double score(TableColumn column, Quantity quantity) {
        return Vocabulary.scores(HeaderWords.of(column)).getOrDefault(quantity, 0.0);
    }

    /** Returns what turns a reading of the column into SI, by the unit in its header; 1 when there is none. */
    public static double siFactor(TableColumn column, Quantity quantity) {
        return HeaderWords.of(column).unitFor(quantity).map(Unit::factor).orElse(1.0);
    }
}
