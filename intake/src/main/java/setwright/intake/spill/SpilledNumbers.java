package setwright.intake.spill;

import setwright.intake.table.Numbers;

/** One column of a {@link Spill}. */
final class SpilledNumbers implements Numbers {
    private static final int CHUNK = 8192;

    private final Spill spill;
    private final int column;
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

    SpilledNumbers(Spill spill, int column, int size, long finiteCount) {
        this.spill = spill;
        this.column = column;
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
            chunk = new Chunk(from, spill.read(column, from, Math.min(size, from + CHUNK)));
            last = chunk;
        }
        return chunk.values[index - chunk.from];
    }

    @Override
    public double[] copy(int from, int to) {
        return spill.read(column, from, to);
    }

    @Override
    public long finiteCount() {
        return finiteCount;
    }
}
