package setwright.intake.table;

import java.util.Arrays;

/** Numbers in memory. */
public final class HeldNumbers implements Numbers {
    private final double[] values;
    private final long finiteCount;

    private HeldNumbers(double[] values) {
        this.values = values;
        this.finiteCount = finite(values);
    }

    /** Takes numbers, which are owned by the result from now on. */
    public static HeldNumbers of(double[] values) {
        return new HeldNumbers(values);
    }

    /** Returns how many of some numbers are finite. */
    public static long finite(double[] values) {
        long count = 0;
        for (double value : values) {
            count += Double.isFinite(value) ? 1 : 0;
        }
        return count;
    }

    @Override
    public int size() {
        return values.length;
    }

    @Override
    public double get(int index) {
        return values[index];
    }

    @Override
    public double[] copy(int from, int to) {
        return Arrays.copyOfRange(values, from, to);
    }

    @Override
    public long finiteCount() {
        return finiteCount;
    }
}
