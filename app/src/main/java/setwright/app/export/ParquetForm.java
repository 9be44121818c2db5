package setwright.app.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import setwright.intake.columns.ParquetTable;
import setwright.intake.columns.ParquetTable.Head;

/** A table as Parquet: SI units, which stand in the headers. */
final class ParquetForm {
    private ParquetForm() {}

    /** Returns how a column begins. */
    static Head head(Column<?> column) {
        return new Head(column.siHeader(), column.kind());
    }

    /** Writes a table; returns how many rows it has. */
    static <R> long write(Path file, Table<R> table, Material material) throws IOException {
        List<Column<R>> columns = table.columns(material);
        long[] count = {0};
        ParquetTable.write(file, columns.stream().map(ParquetForm::head).toList(), cells -> {
            for (Iterator<R> rows = table.rows(material).iterator(); rows.hasNext(); count[0]++) {
                R row = rows.next();
                cells.row();
                for (Column<R> column : columns) {
                    column.cell().put(row, cells);
                }
            }
        });
        return count[0];
    }
}
