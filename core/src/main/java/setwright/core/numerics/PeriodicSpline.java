package setwright.core.numerics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Periodic smoothing spline through scattered, weighted samples. Immutable.
 *
 * <p>Cubic B-splines on equal knots whose third differences are penalised (P. Eilers and B. Marx, "Flexible smoothing
 * with B-splines and penalties", Statistical Science 11(2), 1996), which approximates the minimum of
 *
 * <pre>Σ w (y - f(u))² + λ ∫ f'''(u)² du</pre>
 *
 * <p>For samples of even density ρ and weight 1 it acts as the low-pass {@code 1 / (1 + (ω/ωc)⁶)} with
 * {@code λ = ρ / ωc⁶}; frequencies are in rad per unit of u.
 */
public final class PeriodicSpline {
    private static final int ORDER = 4;
    /** Fewer samples are summed up sooner than a second core begins. */
    private static final int PART = 8_000;

    private final double period;
    private final double spacing;
    private final double[] coefficients;

    private PeriodicSpline(double period, double[] coefficients) {
        this.period = period;
        this.coefficients = coefficients;
        this.spacing = period / coefficients.length;
    }

    /**
     * Fits a spline.
     *
     * @param period     after which the curve repeats, &gt; 0
     * @param knots      number of equal knot spans in a period, at least 8
     * @param u          where the samples lie; any value is taken into the period
     * @param y          the samples; NaN ones are left out
     * @param weight     of each sample, &gt;= 0
     * @param roughness  λ, &gt; 0, which also carries the curve over stretches without samples
     * @throws IllegalArgumentException when the arrays differ in length or an argument is out of range
     */
    public static PeriodicSpline fit(
            double period, int knots, double[] u, double[] y, double[] weight, double roughness) {
        return fit(period, knots, u, new double[][] {y}, weight, roughness).get(0);
    }

    /**
     * Fits one spline to each of several quantities taken at the same places, which costs little more than one.
     *
     * @param samples  one array for each quantity; a place where one is NaN is left out for all
     */
    static List<PeriodicSpline> fit(
            double period, int knots, double[] u, double[][] samples, double[] weight, double roughness) {
        if (!(period > 0.0) || knots < 8 || !(roughness > 0.0)) {
            throw new IllegalArgumentException(
                    "a periodic spline needs a positive period and roughness and 8 knots, got " + period + ", "
                            + roughness + ", " + knots);
        }
        for (double[] y : samples) {
            if (u.length != y.length || u.length != weight.length) {
                throw new IllegalArgumentException("samples, places and weights must have equal lengths, got "
                        + y.length + ", " + u.length + ", " + weight.length);
            }
        }
        // the same parts on every machine, so that sums come out the same to the last digit
        int parts = Math.max(1, u.length / PART);
        Sums sums = IntStream.range(0, parts)
                .parallel()
                .mapToObj(part -> {
                    int from = (int) ((long) u.length * part / parts);
                    int to = (int) ((long) u.length * (part + 1) / parts);
                    return sums(period, knots, u, samples, weight, from, to);
                })
                .toList()
                .stream()
                .reduce(Sums::plus)
                .orElseThrow();
        CyclicBand system = new CyclicBand(knots, ORDER - 1);
        for (int row = 0; row < knots; row++) {
            for (int back = 0; back < ORDER; back++) {
                system.add(row, row - back + knots, sums.products[row * ORDER + back]);
            }
        }
        addPenalty(system, knots, roughness * Math.pow(period / knots, -5.0));
        List<PeriodicSpline> splines = new ArrayList<>();
        for (double[] one : sums.right) {
            splines.add(new PeriodicSpline(period, system.solve(one)));
        }
        return splines;
    }

    /** Products of the B-splines with each other, four for each knot, and with the samples of each quantity. */
    private static final class Sums {
        private final double[] products;
        private final double[][] right;

        Sums(int knots, int quantities) {
            products = new double[knots * ORDER];
            right = new double[quantities][knots];
        }

        /** Adds others to these. */
        Sums plus(Sums other) {
            add(other.products, products);
            for (int k = 0; k < right.length; k++) {
                add(other.right[k], right[k]);
            }
            return this;
        }

        private static void add(double[] more, double[] sums) {
            for (int i = 0; i < sums.length; i++) {
                sums[i] += more[i];
            }
        }
    }

    /** Over the samples from {@code from} (inclusive) to {@code to} (exclusive). */
    private static Sums sums(
            double period, int knots, double[] u, double[][] samples, double[] weight, int from, int to) {
        Sums sums = new Sums(knots, samples.length);
        double[] basis = new double[ORDER];
        double spacing = period / knots;
        for (int i = from; i < to; i++) {
            if (Double.isNaN(u[i]) || weight[i] == 0.0 || isMissing(samples, i)) {
                continue;
            }
            int first = locate(u[i], period, spacing, knots, basis, 0);
            for (int p = 0; p < ORDER; p++) {
                int row = first + p < knots ? first + p : first + p - knots;
                double weighted = weight[i] * basis[p];
                for (int k = 0; k < samples.length; k++) {
                    sums.right[k][row] += weighted * samples[k][i];
                }
                for (int q = 0; q <= p; q++) {
                    sums.products[row * ORDER + p - q] += weighted * basis[q];
                }
            }
        }
        return sums;
    }

    private static boolean isMissing(double[][] samples, int index) {
        for (double[] one : samples) {
            if (Double.isNaN(one[index])) {
                return true;
            }
        }
        return false;
    }

    private static void addPenalty(CyclicBand system, int knots, double scale) {
        double[] difference = {-1.0, 3.0, -3.0, 1.0};
        for (int i = 0; i < knots; i++) {
            for (int p = 0; p < ORDER; p++) {
                for (int q = 0; q <= p; q++) {
                    system.add(i + p, i + q, scale * difference[p] * difference[q]);
                }
            }
        }
    }

    /** Returns the value ({@code derivative} 0) or the first or second derivative at any u. */
    public double at(double u, int derivative) {
        double[] basis = new double[ORDER];
        int first = locate(u, period, spacing, coefficients.length, basis, derivative);
        double sum = 0.0;
        for (int p = 0; p < ORDER; p++) {
            sum += basis[p] * coefficients[(first + p) % coefficients.length];
        }
        return sum;
    }

    /** Returns the period. */
    public double period() {
        return period;
    }

    /** Fills the four B-splines (or their derivatives) that are not zero at u; returns the index of the first. */
    private static int locate(double u, double period, double spacing, int knots, double[] basis, int derivative) {
        double wrapped = u - period * Math.floor(u / period);
        int span = Math.min((int) (wrapped / spacing), knots - 1);
        double t = wrapped / spacing - span;
        double s = 1.0 - t;
        switch (derivative) {
            case 0 -> {
                basis[0] = s * s * s / 6.0;
                basis[1] = (3.0 * t * t * t - 6.0 * t * t + 4.0) / 6.0;
                basis[2] = (3.0 * s * s * s - 6.0 * s * s + 4.0) / 6.0;
                basis[3] = t * t * t / 6.0;
            }
            case 1 -> {
                basis[0] = -0.5 * s * s / spacing;
                basis[1] = (1.5 * t * t - 2.0 * t) / spacing;
                basis[2] = (-1.5 * s * s + 2.0 * s) / spacing;
                basis[3] = 0.5 * t * t / spacing;
            }
            case 2 -> {
                double square = spacing * spacing;
                basis[0] = s / square;
                basis[1] = (3.0 * t - 2.0) / square;
                basis[2] = (3.0 * s - 2.0) / square;
                basis[3] = t / square;
            }
            default -> throw new IllegalArgumentException("derivative must be 0, 1 or 2, got " + derivative);
        }
        return span;
    }
}
