package setwright.intake.spill;

import setwright.intake.table.HeldNumbers;
import setwright.intake.table.Numbers;

/** Rows of one column of a {@link Spill}. */
final class SpilledNumbers implements Numbers {
    private static final int CHUNK = 8192;

    private final Spill spill;
    private final int column;
    private final int first;
    private final int size;
    private final long finiteCount;
    /** What was read last; replaced whole, so that several threads may read. */
    private volatile Chunk last = new Chunk(0, new double[0]);

    /** Not a record: it holds an array, which nobody else sees. */
    private static final class Chunk {
        private final int from;
        private final double[] values;

        Chunk(int from, double[] values) {
            this.from = from;
            this.values = values;
        }
    }

    /**
     * Makes one.
     *
     * @param first        row of the spill
     * @param size         how many rows
     * @param finiteCount  how many of them are finite
     */
    SpilledNumbers(Spill spill, int column, int first, int size, long finiteCount) {
        this.spill = spill;
        this.column = column;
        this.first = first;
        this.size = size;
        this.finiteCount = finiteCount;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public double get(int index) {
        Chunk chunk = last;
        if (index < chunk.from || index >= chunk.from + chunk.values.length) {
            int from = index - index % CHUNK;
            chunk = new Chunk(from, copy(from, Math.min(size, from + CHUNK)));
            last = chunk;
        }
        return chunk.values[index - chunk.from];
    }

    @Override
    public double[] copy(int from, int to) {
        return spill.read(column, first + from, first + to);
    }

    @Override
    public Numbers part(int from, int to) {
        return new SpilledNumbers(spill, column, first + from, to - from, HeldNumbers.finite(copy(from, to)));
    }

    @Override
    public long finiteCount() {
        return finiteCount;
    }
}
