package setwright.intake.map;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import setwright.core.numerics.LocalPolynomial;
import setwright.core.numerics.Robust;
import setwright.core.numerics.UniformResampler;
import setwright.core.numerics.ZeroPhaseLowPass;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/**
 * The columns of a table on a slow common time base, smoothed, for testing one against another.
 *
 * <p>Ten samples a second behind a 1 Hz zero-phase low-pass: what a car does in a corner passes, sensor noise does not.
 */
final class Signals {
    static final double RATE_HZ = 10.0;
    static final double STEP_S = 1.0 / RATE_HZ;
    private static final double CUTOFF_HZ = 1.0;
    private static final int FINER = 2;
    /** A hundred of them lie beyond the outermost thousandth, which is then good to a tenth of itself. */
    private static final int ENOUGH_ROWS = 100_000;
    /** Bridged for these tests only; the recording itself is never filled across so much. */
    private static final double LONGEST_GAP_S = 0.55;

    private final Table table;
    private final UniformResampler resampler;
    private final ZeroPhaseLowPass lowPass;
    private final double[][] smooth;
    private final LocalPolynomial slope = LocalPolynomial.of(2, 2);

    Signals(Table table, double[] timesS) {
        this.table = table;
        this.resampler = UniformResampler.onto(timesS, FINER * RATE_HZ, LONGEST_GAP_S);
        this.lowPass = ZeroPhaseLowPass.butterworth(2, CUTOFF_HZ, FINER * RATE_HZ);
        this.smooth = new double[table.columns().size()][];
        // the searches ask for nearly all of them
        IntStream.range(0, smooth.length).parallel().forEach(index -> smooth[index] = slow(raw(index)));
    }

    Table table() {
        return table;
    }

    int columnCount() {
        return table.columns().size();
    }

    /** Smoothed readings of a column, {@value #RATE_HZ} a second. Not to be changed. */
    double[] column(int index) {
        return smooth[index];
    }

    /** Brings any quantity given per row onto the slow base. */
    double[] slow(double[] perRow) {
        double[] fine = lowPass.apply(resampler.means(perRow));
        double[] out = new double[(fine.length + FINER - 1) / FINER];
        for (int i = 0; i < out.length; i++) {
            out[i] = fine[i * FINER];
        }
        return out;
    }

    /** Time derivative on the slow base, per second. */
    double[] derivative(double[] signal) {
        return slope.derivative(signal, STEP_S);
    }

    double[] raw(int index) {
        return table.columns().get(index).toArray();
    }

    Optional<Integer> indexOf(String header) {
        for (int i = 0; i < columnCount(); i++) {
            if (table.columns().get(i).header().equals(header)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** A quantile of a column; of a long one by every so many-th row, but for its least and its most. */
    double quantile(int index, double share) {
        double[] rows = raw(index);
        int step = share > 0.0 && share < 1.0 ? Math.max(1, rows.length / ENOUGH_ROWS) : 1;
        if (step == 1) {
            return Robust.quantile(rows, share);
        }
        double[] some = new double[rows.length / step];
        Arrays.setAll(some, i -> rows[i * step]);
        return Robust.quantile(some, share);
    }

    /** Tells whether a column never changes. */
    boolean isConstant(int index) {
        TableColumn column = table.columns().get(index);
        double first = Double.NaN;
        for (int i = 0; i < column.size(); i++) {
            double value = column.get(i);
            if (Double.isFinite(value)) {
                if (value != first && !Double.isNaN(first)) {
                    return false;
                }
                first = value;
            }
        }
        return true;
    }

    static double[] combine(double[] a, double[] b, java.util.function.DoubleBinaryOperator operator) {
        double[] out = new double[a.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = operator.applyAsDouble(a[i], b[i]);
        }
        return out;
    }

    static double[] scaled(double[] a, double factor) {
        return Arrays.stream(a).map(value -> factor * value).toArray();
    }
}
