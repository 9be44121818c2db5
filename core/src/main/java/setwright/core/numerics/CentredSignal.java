package setwright.core.numerics;

/**
 * A signal about its mean, zero where it is not finite, with what its correlation with another at many shifts needs.
 *
 * <p>Only the sum of products runs over all samples at every shift; the other sums are those of each signal alone, less what lies where
 * the other has a gap.
 */
final class CentredSignal {
    private final double[] values;
    private final boolean[] known;
    private final int[] missing;
    /** Up to each sample: how many are known, their sum and the sum of their squares. */
    private final double[][] upTo;

    /**
     * Makes one.
     *
     * @param signal  NaN in gaps
     */
    CentredSignal(double[] signal) {
        int size = signal.length;
        known = new boolean[size];
        double sum = 0.0;
        int count = 0;
        for (int i = 0; i < size; i++) {
            known[i] = Double.isFinite(signal[i]);
            sum += known[i] ? signal[i] : 0.0;
            count += known[i] ? 1 : 0;
        }
        values = new double[size];
        missing = new int[size - count];
        upTo = new double[3][size + 1];
        int gaps = 0;
        for (int i = 0; i < size; i++) {
            if (known[i]) {
                values[i] = signal[i] - sum / count;
            } else {
                missing[gaps++] = i;
            }
            upTo[0][i + 1] = upTo[0][i] + (known[i] ? 1.0 : 0.0);
            upTo[1][i + 1] = upTo[1][i] + values[i];
            upTo[2][i + 1] = upTo[2][i] + values[i] * values[i];
        }
    }

    int size() {
        return values.length;
    }

    /** Count, sum and sum of squares of a stretch where the other, so many samples later, is known too. */
    double[] sums(int from, int to, CentredSignal other, int shift) {
        double[] sums = new double[3];
        for (int k = 0; k < 3; k++) {
            sums[k] = upTo[k][to] - upTo[k][from];
        }
        for (int gap : other.missing) {
            int i = gap - shift;
            if (i >= from && i < to && known[i]) {
                sums[0] -= 1.0;
                sums[1] -= values[i];
                sums[2] -= values[i] * values[i];
            }
        }
        return sums;
    }

    /** Sums of products with the other, which comes from 0 to so many samples later. */
    double[] productsWith(CentredSignal other, int most) {
        double[] products = new double[most + 1];
        int shift = 0;
        for (; shift + 1 <= most; shift += 2) {
            twoProducts(other, shift, products);
        }
        if (shift == most) {
            products[shift] = rest(other, shift, 0, new double[4]);
        }
        return products;
    }

    /** Two shifts in one pass, as each sample read serves both; four sums of each side by side, which do not wait for each other. */
    private void twoProducts(CentredSignal other, int shift, double[] products) {
        double[] mine = values;
        double[] his = other.values;
        int to = common(other, shift + 1);
        double a0 = 0.0;
        double a1 = 0.0;
        double a2 = 0.0;
        double a3 = 0.0;
        double b0 = 0.0;
        double b1 = 0.0;
        double b2 = 0.0;
        double b3 = 0.0;
        int i = 0;
        for (; i + 3 < to; i += 4) {
            double m0 = mine[i];
            double m1 = mine[i + 1];
            double m2 = mine[i + 2];
            double m3 = mine[i + 3];
            double h1 = his[i + shift + 1];
            double h2 = his[i + shift + 2];
            double h3 = his[i + shift + 3];
            a0 += m0 * his[i + shift];
            a1 += m1 * h1;
            a2 += m2 * h2;
            a3 += m3 * h3;
            b0 += m0 * h1;
            b1 += m1 * h2;
            b2 += m2 * h3;
            b3 += m3 * his[i + shift + 4];
        }
        products[shift] = rest(other, shift, i, new double[] {a0, a1, a2, a3});
        products[shift + 1] = rest(other, shift + 1, i, new double[] {b0, b1, b2, b3});
    }

    /** What a sum of products comes to, of which four sums hold the samples before one. */
    private double rest(CentredSignal other, int shift, int from, double[] sums) {
        int to = common(other, shift);
        double one = sums[0];
        double two = sums[1];
        double three = sums[2];
        double four = sums[3];
        int i = from;
        for (; i + 3 < to; i += 4) {
            one += values[i] * other.values[i + shift];
            two += values[i + 1] * other.values[i + 1 + shift];
            three += values[i + 2] * other.values[i + 2 + shift];
            four += values[i + 3] * other.values[i + 3 + shift];
        }
        for (; i < to; i++) {
            one += values[i] * other.values[i + shift];
        }
        return one + two + (three + four);
    }

    private int common(CentredSignal other, int shift) {
        return Math.max(0, Math.min(size(), other.size() - shift));
    }
}
