package setwright.core.numerics;

/**
 * Lays one signal on another that is the same but for slow stretching.
 *
 * <p>Dynamic programming (H. Sakoe and S. Chiba, "Dynamic programming algorithm optimization for spoken word recognition",
 * IEEE Trans. ASSP 26(1), 1978), with a shift per cell that changes by at most one cell at a time and pays for each change.
 */
public final class Alignment {
    private Alignment() {}

    /**
     * Finds the shifts.
     *
     * @param signal     {@code reference.length + 2 * reach} cells; cell {@code i + reach} lies at reference cell i when the
     *                   shift is zero. NaN cells cost nothing
     * @param reference  cells to lay it on
     * @param reach      greatest shift, cells
     * @param noise      standard deviation of an honest difference, in the signal's unit, &gt; 0
     * @param stiffness  cost of one change of shift by one cell, in squared standard deviations
     * @param tied       whether the shift must be zero at both ends
     * @return the shift of each reference cell: {@code signal[i + reach + shift[i]]} matches {@code reference[i]}
     */
    public static int[] shifts(
            double[] signal, double[] reference, int reach, double noise, double stiffness, boolean tied) {
        int cells = reference.length;
        int states = 2 * reach + 1;
        if (signal.length != cells + 2 * reach) {
            throw new IllegalArgumentException(
                    "signal must have " + (cells + 2 * reach) + " cells for this reach, got " + signal.length);
        }
        byte[][] from = new byte[cells][states];
        double[] cost = new double[states];
        double[] next = new double[states];
        for (int s = 0; s < states; s++) {
            cost[s] = tied && s != reach ? Double.POSITIVE_INFINITY : misfit(signal[s], reference[0], noise);
        }
        for (int i = 1; i < cells; i++) {
            for (int s = 0; s < states; s++) {
                double best = cost[s];
                byte step = 0;
                if (s > 0 && cost[s - 1] + stiffness < best) {
                    best = cost[s - 1] + stiffness;
                    step = -1;
                }
                if (s + 1 < states && cost[s + 1] + stiffness < best) {
                    best = cost[s + 1] + stiffness;
                    step = 1;
                }
                next[s] = best + misfit(signal[i + s], reference[i], noise);
                from[i][s] = step;
            }
            double[] swap = cost;
            cost = next;
            next = swap;
        }
        int state = reach;
        if (!tied) {
            for (int s = 0; s < states; s++) {
                if (cost[s] < cost[state]) {
                    state = s;
                }
            }
        }
        int[] shift = new int[cells];
        for (int i = cells - 1; i >= 0; i--) {
            shift[i] = state - reach;
            state += from[i][state];
        }
        return shift;
    }

    private static double misfit(double signal, double reference, double noise) {
        if (Double.isNaN(signal)) {
            return 0.0;
        }
        double z = (signal - reference) / noise;
        // A stretch that fits nowhere (a spin) must not bend the rest: no cell costs more than five deviations.
        return Math.min(z * z, 25.0);
    }
}
