package setwright.app.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import setwright.intake.columns.ParquetTable;
import setwright.intake.columns.TableCells;

/**
 * A table as Parquet whose rows come little by little, so that what they are made from need not be held until the last: SI units,
 * which stand in the headers.
 *
 * @param <R> a row
 */
public final class GrowingParquet<R> implements AutoCloseable {
    private final List<Column<R>> columns;
    private final ParquetTable.Growing table;
    private long count;

    private GrowingParquet(List<Column<R>> columns) throws IOException {
        this.columns = List.copyOf(columns);
        this.table = ParquetTable.open(columns.stream().map(ParquetForm::head).toList());
    }

    /**
     * Begins a table.
     *
     * @throws IOException when it cannot be held
     */
    public static <R> GrowingParquet<R> open(List<Column<R>> columns) throws IOException {
        return new GrowingParquet<>(columns);
    }

    /** Rows whose cells are worked out but not yet in the table. */
    public interface Ready {
        /**
         * Puts them into the table they were worked out for.
         *
         * @throws IOException when the table cannot hold them
         */
        void add() throws IOException;
    }

    /**
     * Works out the cells of some rows; the table takes them once they are all there, so that it never holds a part of them.
     *
     * @throws IOException when a cell cannot be worked out
     */
    public Ready ready(Stream<R> rows) throws IOException {
        Cells kept = new Cells();
        long more = 0;
        for (R row : (Iterable<R>) rows::iterator) {
            kept.row();
            for (Column<R> column : columns) {
                column.cell().put(row, kept);
            }
            more++;
        }
        long added = more;
        return () -> {
            for (Put put : kept.puts) {
                put.into(table.cells());
            }
            count += added;
        };
    }

    /**
     * Writes all rows; none can be added afterwards.
     *
     * @return how many they are
     * @throws IOException when the file cannot be written
     */
    public long finish(Path file) throws IOException {
        table.finish(file);
        return count;
    }

    @Override
    public void close() throws IOException {
        table.close();
    }

    private interface Put {
        void into(TableCells cells) throws IOException;
    }

    /** Cells in waiting. */
    private static final class Cells implements TableCells {
        private final List<Put> puts = new ArrayList<>();

        @Override
        public void row() {
            puts.add(TableCells::row);
        }

        @Override
        public void text(String text) {
            puts.add(cells -> cells.text(text));
        }

        @Override
        public void whole(long number) {
            puts.add(cells -> cells.whole(number));
        }

        @Override
        public void number(double number) {
            puts.add(cells -> cells.number(number));
        }

        @Override
        public void truth(boolean truth) {
            puts.add(cells -> cells.truth(truth));
        }

        @Override
        public void empty() {
            puts.add(TableCells::empty);
        }
    }
}
