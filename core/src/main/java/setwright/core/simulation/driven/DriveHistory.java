package setwright.core.simulation.driven;

import java.util.Arrays;

/** Every {@link Signal} of a drive at equal steps of time. Immutable once built. */
public final class DriveHistory {
    private final double stepS;
    private final int count;
    private final double[][] columns;

    private DriveHistory(double stepS, int count, double[][] columns) {
        this.stepS = stepS;
        this.count = count;
        this.columns = columns;
    }

    /** Returns the time between samples, s. */
    public double stepS() {
        return stepS;
    }

    /** Returns the number of samples. */
    public int count() {
        return count;
    }

    /** Returns a signal at a sample, in 0..count. */
    public double at(Signal signal, int sample) {
        return columns[signal.index()][sample];
    }

    /** Returns a copy of all samples of a signal. */
    public double[] column(Signal signal) {
        return Arrays.copyOf(columns[signal.index()], count);
    }

    /** Collects samples, one after the other. */
    public static final class Builder {
        private final double stepS;
        private int count;
        private final double[][] columns = new double[Signal.count()][4096];

        /** Starts without samples. */
        public Builder(double stepS) {
            this.stepS = stepS;
        }

        /** Adds a sample: one value for each signal, by {@link Signal#index}. */
        public void add(double[] values) {
            if (count == columns[0].length) {
                for (int i = 0; i < columns.length; i++) {
                    columns[i] = Arrays.copyOf(columns[i], 2 * count);
                }
            }
            for (int i = 0; i < columns.length; i++) {
                columns[i][count] = values[i];
            }
            count++;
        }

        /** Returns what was collected; the builder is not to be used any more. */
        public DriveHistory build() {
            return new DriveHistory(stepS, count, columns);
        }
    }
}
