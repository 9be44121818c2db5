package setwright.core.numerics;

/**
 * A symmetric positive definite band matrix whose band runs round the corner, and its solutions.
 *
 * <p>Ordered 0, n-1, 1, n-2, ... a cyclic band of half-width b becomes a plain one of half-width 2b, which Cholesky's
 * method factors in place.
 */
final class CyclicBand {
    private final int size;
    private final int width;
    private final double[][] lower;
    private boolean factored;

    CyclicBand(int size, int halfWidth) {
        this.size = size;
        this.width = 2 * halfWidth;
        this.lower = new double[size][width + 1];
    }

    /** Adds to the entries (row, column) and (column, row); indices are taken round. */
    void add(int row, int column, double value) {
        int a = folded(row % size);
        int b = folded(column % size);
        int high = Math.max(a, b);
        lower[high][width - (high - Math.min(a, b))] += value;
    }

    private int folded(int index) {
        return 2 * index < size ? 2 * index : 2 * (size - 1 - index) + 1;
    }

    /** Returns the solution for one right-hand side; nothing may be added to the matrix afterwards. */
    double[] solve(double[] right) {
        double[] x = new double[size];
        for (int i = 0; i < size; i++) {
            x[folded(i)] = right[i];
        }
        if (!factored) {
            factor();
            factored = true;
        }
        for (int i = 0; i < size; i++) {
            double sum = x[i];
            for (int j = Math.max(0, i - width); j < i; j++) {
                sum -= lower[i][width - (i - j)] * x[j];
            }
            x[i] = sum / lower[i][width];
        }
        for (int i = size - 1; i >= 0; i--) {
            x[i] /= lower[i][width];
            for (int j = Math.max(0, i - width); j < i; j++) {
                x[j] -= lower[i][width - (i - j)] * x[i];
            }
        }
        double[] solution = new double[size];
        for (int i = 0; i < size; i++) {
            solution[i] = x[folded(i)];
        }
        return solution;
    }

    private void factor() {
        for (int i = 0; i < size; i++) {
            for (int j = Math.max(0, i - width); j <= i; j++) {
                double sum = lower[i][width - (i - j)];
                for (int k = Math.max(0, i - width); k < j; k++) {
                    if (j - k <= width) {
                        sum -= lower[i][width - (i - k)] * lower[j][width - (j - k)];
                    }
                }
                if (i == j) {
                    if (!(sum > 0.0)) {
                        throw new ArithmeticException("the band matrix is not positive definite at row " + i);
                    }
                    lower[i][width] = Math.sqrt(sum);
                } else {
                    lower[i][width - (i - j)] = sum / lower[j][width];
                }
            }
        }
    }
}
