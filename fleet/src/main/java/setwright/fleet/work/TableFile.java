package setwright.fleet.work;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import setwright.app.evidence.Answer;
import setwright.app.export.Column;
import setwright.app.export.ExportTables;
import setwright.app.export.GrowingParquet;
import setwright.app.export.Material;
import setwright.app.export.Table;
import setwright.fleet.ledger.LedgerTable;
import setwright.fleet.tree.Recorded;

/** A batch's file of one table, to which the rows of one recording after the other are added. */
final class TableFile<R> implements AutoCloseable {
    private final String name;
    private final GrowingParquet<Row<R>> rows;
    private final Rows<R> made;

    /** A row with the recording that it is of. */
    record Row<R>(Recorded recorded, R row) {}

    /** Makes the rows of a recording. */
    private interface Rows<R> {
        Stream<R> of(Recorded recorded, Answer answer);
    }

    private TableFile(String name, List<Column<R>> columns, Rows<R> made) throws IOException {
        this.name = name;
        List<Column<Row<R>>> all = new ArrayList<>(LedgerTable.front(Row::recorded));
        columns.forEach(column -> all.add(ofRow(column)));
        this.rows = GrowingParquet.open(all);
        this.made = made;
    }

    /** Opens a table that {@code export} has, too. */
    static TableFile<?> exported(String name) throws IOException {
        return of(ExportTables.named(name).orElseThrow());
    }

    private static <R> TableFile<R> of(Table<R> table) throws IOException {
        return new TableFile<>(
                table.name(),
                table.columns(),
                (recorded, answer) -> table.rows(
                        Material.of(List.of(new Material.Laps(fileName(recorded), answer, Optional.empty())))));
    }

    /** Opens the table of setups. */
    static TableFile<SetupRow> setups() throws IOException {
        return new TableFile<>(OutTables.SETUPS, SetupRow.columns(), (recorded, answer) -> SetupRow.of(answer.car()));
    }

    private static String fileName(Recorded recorded) {
        return recorded.path().substring(recorded.path().lastIndexOf('/') + 1);
    }

    private static <R> Column<Row<R>> ofRow(Column<R> column) {
        return new Column<>(
                column.name(),
                column.kind(),
                column.measure(),
                column.words(),
                (row, cells) -> column.cell().put(row.row(), cells));
    }

    String name() {
        return name;
    }

    /** Works out the rows of a recording; they are not added yet. */
    GrowingParquet.Ready ready(Recorded recorded, Answer answer) throws IOException {
        Function<R, Row<R>> row = one -> new Row<>(recorded, one);
        return rows.ready(made.of(recorded, answer).map(row));
    }

    void finish(Path file) throws IOException {
        rows.finish(file);
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }
}
