package setwright.core.simulation.logger;

import java.util.List;
import java.util.Optional;
import setwright.core.recording.Quantity;

/**
 * What a logger wrote: columns of equal length, one row for each moment.
 *
 * @param rateHz   rows per second
 * @param columns  in the order of the file; one of them is time
 */
public record LoggedTable(double rateHz, List<LoggedColumn> columns) {
    public LoggedTable {
        columns = List.copyOf(columns);
    }

    /** Returns the number of rows. */
    public int rowCount() {
        return columns.isEmpty() ? 0 : columns.get(0).size();
    }

    /** Returns the column that holds a quantity. */
    public Optional<LoggedColumn> column(Quantity quantity) {
        return columns.stream().filter(column -> column.quantity() == quantity).findFirst();
    }
}
