package setwright.fleet.work;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import setwright.app.export.Column;
import setwright.app.export.ExportTables;
import setwright.fleet.ledger.LedgerTable;
import setwright.fleet.ledger.OutLayout;
import setwright.fleet.tree.Recorded;

/** What columns the tables of a run have; the circuit is none of them, as it stands in the names of folders. */
public final class OutTables {
    static final String SETUPS = "setups";

    private OutTables() {}

    /** Returns the columns of a table, in order. */
    public static List<Column<?>> columns(String table) {
        if (table.equals(OutLayout.LEDGER)) {
            return List.copyOf(LedgerTable.columns());
        }
        List<Column<?>> columns = new ArrayList<>(LedgerTable.<Recorded>front(Function.identity()));
        columns.addAll(
                table.equals(SETUPS)
                        ? SetupRow.columns()
                        : ExportTables.named(table).orElseThrow().columns());
        return columns;
    }
}
