package setwright.core.simulation.logger;

import java.util.List;

/**
 * A recording as a table.
 *
 * @param rateHz   rows per second
 * @param columns  of equal length; the first is time
 */
public record LoggedTable(double rateHz, List<LoggedColumn> columns) {
    public LoggedTable {
        columns = List.copyOf(columns);
    }

    /** Returns the number of rows. */
    public int rows() {
        return columns.get(0).values().length;
    }
}
