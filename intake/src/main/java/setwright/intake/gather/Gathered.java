package setwright.intake.gather;

import java.util.List;
import setwright.intake.table.Table;

/**
 * All that was recorded of a run, in one table.
 *
 * @param table    one row for each moment of the quickest part
 * @param remarks  what was brought together and how, in sentences
 */
public record Gathered(Table table, List<String> remarks) {
    public Gathered {
        remarks = List.copyOf(remarks);
    }
}
