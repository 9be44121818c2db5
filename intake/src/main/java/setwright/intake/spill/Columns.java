package setwright.intake.spill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.intake.table.HeldNumbers;
import setwright.intake.table.Numbers;

/** Columns that grow block by block: in memory while they are few, else in a {@link Spill}. Mutable; for one thread. */
public final class Columns {
    /** 128 MB: an hour of forty columns at a hundred rows a second stays in memory. */
    public static final long USUAL_CELLS = 1L << 24;

    private final int width;
    private final long mostHeld;
    private final List<double[][]> held = new ArrayList<>();
    private Optional<Spill> spill = Optional.empty();
    private long rows;

    /**
     * Begins.
     *
     * @param width     number of columns
     * @param mostHeld  cells that are held in memory; with more, all go to the disk
     */
    public Columns(int width, long mostHeld) {
        this.width = width;
        this.mostHeld = mostHeld;
    }

    /** Returns how many rows there are so far. */
    public long rows() {
        return rows;
    }

    /**
     * Appends rows.
     *
     * @param block  one array per column, equally long; owned by this from now on
     * @throws setwright.intake.problem.InputProblem when the disk takes no more
     */
    public void add(double[][] block) {
        rows += block[0].length;
        if (spill.isEmpty()) {
            held.add(block);
            if (rows * width > mostHeld) {
                Spill begun = Spill.begin(width);
                held.forEach(begun::add);
                held.clear();
                spill = Optional.of(begun);
            }
        } else {
            spill.get().add(block);
        }
    }

    /**
     * Returns the columns. Nothing can be added afterwards.
     *
     * @throws ArithmeticException when there are more rows than an array can hold
     */
    public List<Numbers> done() {
        int count = Math.toIntExact(rows);
        if (spill.isPresent()) {
            return spill.get().columns();
        }
        List<Numbers> columns = new ArrayList<>();
        for (int c = 0; c < width; c++) {
            double[] column = new double[count];
            int at = 0;
            for (double[][] block : held) {
                System.arraycopy(block[c], 0, column, at, block[c].length);
                at += block[c].length;
                block[c] = new double[0];
            }
            columns.add(HeldNumbers.of(column));
        }
        return columns;
    }
}
