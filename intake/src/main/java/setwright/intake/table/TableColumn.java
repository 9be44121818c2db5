package setwright.intake.table;

import java.util.Optional;

/** One column of a {@link Table}: header and unit as written, and its numbers; NaN where a cell is empty. Immutable. */
public final class TableColumn {
    private final String header;
    private final String unitRow;
    private final Numbers numbers;
    private final Optional<BadCell> firstBad;
    private final long badCount;

    /**
     * The first cell of a column that is neither empty nor a number.
     *
     * @param row   line of the file, counted from 1
     * @param text  as found
     */
    public record BadCell(long row, String text) {}

    /**
     * Makes a column.
     *
     * @param header    as written, without surrounding blanks
     * @param unitRow   what the row of units says of it; empty when there is no such row
     * @param numbers   one per row
     * @param firstBad  the first cell that is not a number
     * @param badCount  how many there are
     */
    public TableColumn(String header, String unitRow, Numbers numbers, Optional<BadCell> firstBad, long badCount) {
        this.header = header;
        this.unitRow = unitRow;
        this.numbers = numbers;
        this.firstBad = firstBad;
        this.badCount = badCount;
    }

    /** Makes a column of numbers in memory, which are owned by the column from now on. */
    public TableColumn(String header, String unitRow, double[] values, Optional<BadCell> firstBad, long badCount) {
        this(header, unitRow, HeldNumbers.of(values), firstBad, badCount);
    }

    /** Makes a column of numbers that did not come from a file, for tests and for other kinds of source. */
    public static TableColumn of(String header, String unit, double[] values) {
        return new TableColumn(header, unit, values.clone(), Optional.empty(), 0);
    }

    /** Returns the header as written. */
    public String header() {
        return header;
    }

    /** Returns what the row of units under the header says; empty when there is no such row. */
    public String unitRow() {
        return unitRow;
    }

    /** Returns the number of rows. */
    public int size() {
        return numbers.size();
    }

    /** Returns the number in row {@code index}, counted from 0; NaN where the cell is empty or no number. */
    public double get(int index) {
        return numbers.get(index);
    }

    /** Returns a copy of all numbers. */
    public double[] toArray() {
        return numbers.copy(0, numbers.size());
    }

    /**
     * Returns the rows {@code from} (inclusive) to {@code to} (exclusive) as a column of their own, that counts as words where the whole one
     * does.
     */
    public TableColumn part(int from, int to) {
        return new TableColumn(header, unitRow, numbers.part(from, to), firstBad, isText() ? badCount : 0L);
    }

    /** Returns the first cell that is neither empty nor a number. */
    public Optional<BadCell> firstBad() {
        return firstBad;
    }

    /** Returns how many cells are neither empty nor a number. */
    public long badCount() {
        return badCount;
    }

    /** Tells whether most filled cells are words, so that the column was never meant as numbers. */
    public boolean isText() {
        long filled = badCount + numbers.finiteCount();
        return badCount > 0 && 2 * badCount > filled;
    }

    /** Returns how many cells hold a finite number. */
    public long finiteCount() {
        return numbers.finiteCount();
    }
}
