package setwright.core.numerics;

import java.util.Arrays;

/*
 * Design note. Hipparchus has an unscented Kalman filter and a smoother, and a test holds this class to both. It is here because ten
 * laps are some twenty thousand steps of eight states: the library allocates matrices at each, this class allocates once.
 * Sigma points: 2 n points at plus and minus sqrt(n) times the columns of the Cholesky root, equal weights (Julier and Uhlmann's set
 * with kappa = 0, S. J. Julier and J. K. Uhlmann, Proc. IEEE 92(3), 2004, value from memory): no weight is negative, so that
 * covariances stay positive. Smoother: S. Sarkka, IEEE Trans. Automatic Control 53(3), 2008 (value from memory).
 */

/** Unscented Kalman filter over equal steps of time, and the smoother that runs back over them. Mutable; for one thread. */
public final class UnscentedSmoother {
    private static final double LEAST_PIVOT = 1.0e-18;

    private final Model model;
    private final int n;
    private final int m;
    private final double[] root;
    private final double[] points;
    private final double[] moved;
    private final double[] seen;
    private final double[] one;
    private final double[] reading;
    private final double[] mean;
    private final double[] covariance;
    private final double[] cross;
    private final double[] gain;
    private final double[] innovation;
    private final double[] spread;
    private final double[] work;
    private final double[] apart;
    private final double far;
    private final int acting;
    private int steps;
    private double[] means = new double[0];
    private double[] covariances = new double[0];
    private double[] predictedMeans = new double[0];
    private double[] predictedCovariances = new double[0];
    private double[] crossCovariances = new double[0];
    private double[] surprise = new double[0];

    /** What moves and what is read of it. */
    public interface Model {
        /** Returns the number of states. */
        int states();

        /** Returns the number of readings at each step. */
        int readings();

        /** Moves a state from a step to the next one, in place. */
        void move(int step, double[] state);

        /** Returns the index of the first state from which on all stay as they are in a move, and act on none of the others. */
        default int acting() {
            return states();
        }

        /** Writes what would be read of a state at a step. */
        void read(int step, double[] state, double[] reading);

        /** Writes the variances that moving from a step to the next one adds to each state. */
        void noise(int step, double[] variance);
    }

    /** Makes one with room for a model's states. */
    public UnscentedSmoother(Model model) {
        this.model = model;
        this.n = model.states();
        this.m = model.readings();
        this.root = new double[n * n];
        this.points = new double[2 * n * n];
        this.moved = new double[2 * n * n];
        this.seen = new double[2 * n * m];
        this.one = new double[n];
        this.reading = new double[m];
        this.mean = new double[n];
        this.covariance = new double[n * n];
        this.cross = new double[n * m];
        this.gain = new double[n * m];
        this.innovation = new double[m];
        this.spread = new double[m * m];
        this.work = new double[n * n];
        this.apart = new double[n];
        this.far = Math.sqrt(n);
        this.acting = model.acting();
    }

    /**
     * Filters forward.
     *
     * @param count       steps, &gt;= 1
     * @param start       state before the first reading, by its index
     * @param variance    of each state then
     * @param readings    one row of readings for each step; a reading that is not a number is left out
     * @param scatter     variance of each reading
     */
    public void filter(int count, double[] start, double[] variance, double[][] readings, double[] scatter) {
        steps = count;
        means = room(means, count * n);
        predictedMeans = room(predictedMeans, count * n);
        covariances = room(covariances, count * n * n);
        predictedCovariances = room(predictedCovariances, count * n * n);
        crossCovariances = room(crossCovariances, count * n * n);
        surprise = room(surprise, count);
        System.arraycopy(start, 0, mean, 0, n);
        Arrays.fill(covariance, 0.0);
        for (int i = 0; i < n; i++) {
            covariance[i * n + i] = variance[i];
        }
        for (int step = 0; step < count; step++) {
            if (step > 0) {
                predict(step - 1);
            }
            System.arraycopy(mean, 0, predictedMeans, step * n, n);
            System.arraycopy(covariance, 0, predictedCovariances, step * n * n, n * n);
            surprise[step] = correct(step, readings[step], scatter);
            System.arraycopy(mean, 0, means, step * n, n);
            System.arraycopy(covariance, 0, covariances, step * n * n, n * n);
        }
    }

    /** Runs back over the steps of the last filtering; means and variances are those given all readings afterwards. */
    public void smooth() {
        for (int step = steps - 2; step >= 0; step--) {
            int vector = step * n;
            int matrix = step * n * n;
            System.arraycopy(predictedCovariances, matrix + n * n, root, 0, n * n);
            decompose(root);
            // rows of the gain: cross covariance times the inverse of the predicted covariance
            System.arraycopy(crossCovariances, matrix, work, 0, n * n);
            for (int row = 0; row < n; row++) {
                solve(root, work, row * n);
            }
            for (int i = 0; i < n; i++) {
                double sum = 0.0;
                for (int j = 0; j < n; j++) {
                    sum += work[i * n + j] * (means[vector + n + j] - predictedMeans[vector + n + j]);
                }
                means[vector + i] += sum;
            }
            // covariance: P + G (Ps - P-) G'
            for (int k = 0; k < n * n; k++) {
                root[k] = covariances[matrix + n * n + k] - predictedCovariances[matrix + n * n + k];
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double sum = 0.0;
                    for (int k = 0; k < n; k++) {
                        sum += work[i * n + k] * root[j * n + k]; // it is symmetric
                    }
                    covariance[i * n + j] = sum;
                }
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j <= i; j++) {
                    double sum = 0.0;
                    for (int k = 0; k < n; k++) {
                        sum += covariance[i * n + k] * work[j * n + k];
                    }
                    covariances[matrix + i * n + j] += sum;
                    covariances[matrix + j * n + i] = covariances[matrix + i * n + j];
                }
            }
        }
    }

    /** Returns the state's mean at a step: given the readings up to it or, once smoothed, all of them. */
    public double mean(int step, int state) {
        return means[step * n + state];
    }

    /** Returns the covariance of two states at a step. */
    public double covariance(int step, int state, int other) {
        return covariances[(step * n + state) * n + other];
    }

    /** Returns the square of the innovation over its covariance: chi-square with one degree of freedom for each reading. */
    public double surprise(int step) {
        return surprise[step];
    }

    private static double[] room(double[] held, int needed) {
        return held.length >= needed ? held : new double[needed];
    }

    private void predict(int step) {
        draw();
        for (int p = 0; p < 2 * n; p++) {
            move(step, p);
        }
        for (int i = 0; i < n; i++) {
            double sum = 0.0;
            for (int p = 0; p < 2 * n; p++) {
                sum += moved[p * n + i];
            }
            mean[i] = sum / (2 * n);
        }
        // points lie in pairs about the mean, along the columns of the root, which has zeros above its diagonal
        int at = step * n * n;
        double share = far / (2 * n);
        for (int j = 0; j < n; j++) {
            for (int p = 0; p < n; p++) {
                apart[p] = share * (moved[p * n + j] - moved[(n + p) * n + j]);
            }
            for (int i = 0; i < n; i++) {
                double mixed = 0.0;
                for (int p = 0; p <= i; p++) {
                    mixed += root[i * n + p] * apart[p];
                }
                crossCovariances[at + i * n + j] = mixed;
            }
        }
        // state by state, as they are added up
        int count = 2 * n;
        for (int p = 0; p < count; p++) {
            for (int i = 0; i < n; i++) {
                points[i * count + p] = moved[p * n + i] - mean[i];
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double own = 0.0;
                int ofI = i * count;
                int ofJ = j * count;
                for (int p = 0; p < count; p++) {
                    own += points[ofI + p] * points[ofJ + p];
                }
                covariance[i * n + j] = own / (2 * n);
                covariance[j * n + i] = covariance[i * n + j];
            }
        }
        model.noise(step, one);
        for (int i = 0; i < n; i++) {
            covariance[i * n + i] += one[i];
        }
    }

    /** Points that differ from others only in states that do not act on the rest move as those do. */
    private void move(int step, int p) {
        int column = p < n ? p : p - n;
        System.arraycopy(points, p * n, one, 0, n);
        if (column < acting || p == acting) {
            model.move(step, one);
        } else {
            System.arraycopy(moved, acting * n, one, 0, acting);
        }
        System.arraycopy(one, 0, moved, p * n, n);
    }

    private double correct(int step, double[] readings, double[] scatter) {
        draw();
        for (int p = 0; p < 2 * n; p++) {
            System.arraycopy(points, p * n, one, 0, n);
            model.read(step, one, reading);
            System.arraycopy(reading, 0, seen, p * m, m);
        }
        for (int a = 0; a < m; a++) {
            double sum = 0.0;
            for (int p = 0; p < 2 * n; p++) {
                sum += seen[p * m + a];
            }
            reading[a] = sum / (2 * n);
            innovation[a] = Double.isFinite(readings[a]) ? readings[a] - reading[a] : 0.0;
        }
        for (int a = 0; a < m; a++) {
            for (int b = 0; b < m; b++) {
                double sum = 0.0;
                for (int p = 0; p < 2 * n; p++) {
                    sum += (seen[p * m + a] - reading[a]) * (seen[p * m + b] - reading[b]);
                }
                boolean both = Double.isFinite(readings[a]) && Double.isFinite(readings[b]);
                spread[a * m + b] = both ? sum / (2 * n) + (a == b ? scatter[a] : 0.0) : a == b ? 1.0 : 0.0;
            }
            for (int i = 0; i < n; i++) {
                double sum = 0.0;
                for (int p = 0; p < 2 * n; p++) {
                    sum += (points[p * n + i] - mean[i]) * (seen[p * m + a] - reading[a]);
                }
                cross[i * m + a] = Double.isFinite(readings[a]) ? sum / (2 * n) : 0.0;
            }
        }
        return update();
    }

    private double update() {
        int size = m;
        decompose(spread, size);
        System.arraycopy(cross, 0, gain, 0, n * m);
        for (int i = 0; i < n; i++) {
            solve(spread, size, gain, i * m);
        }
        System.arraycopy(innovation, 0, reading, 0, m);
        solve(spread, size, reading, 0);
        double surprising = 0.0;
        for (int a = 0; a < m; a++) {
            surprising += reading[a] * innovation[a];
        }
        for (int i = 0; i < n; i++) {
            for (int a = 0; a < m; a++) {
                mean[i] += gain[i * m + a] * innovation[a];
            }
        }
        // P - K S K', with K S the cross covariance
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0.0;
                for (int a = 0; a < m; a++) {
                    sum += gain[i * m + a] * cross[j * m + a];
                }
                covariance[i * n + j] -= sum;
                covariance[j * n + i] = covariance[i * n + j];
            }
        }
        return surprising;
    }

    private void draw() {
        System.arraycopy(covariance, 0, root, 0, n * n);
        decompose(root);
        for (int p = 0; p < n; p++) {
            for (int i = 0; i < n; i++) {
                double away = i >= p ? far * root[i * n + p] : 0.0;
                points[p * n + i] = mean[i] + away;
                points[(n + p) * n + i] = mean[i] - away;
            }
        }
    }

    private void decompose(double[] matrix) {
        decompose(matrix, n);
    }

    private void solve(double[] lower, double[] values, int at) {
        solve(lower, n, values, at);
    }

    /** Puts the Cholesky root into the lower triangle. */
    private static void decompose(double[] matrix, int size) {
        for (int j = 0; j < size; j++) {
            double pivot = matrix[j * size + j];
            for (int k = 0; k < j; k++) {
                pivot -= matrix[j * size + k] * matrix[j * size + k];
            }
            double diagonal = Math.sqrt(Math.max(pivot, LEAST_PIVOT));
            matrix[j * size + j] = diagonal;
            for (int i = j + 1; i < size; i++) {
                double sum = matrix[i * size + j];
                for (int k = 0; k < j; k++) {
                    sum -= matrix[i * size + k] * matrix[j * size + k];
                }
                matrix[i * size + j] = sum / diagonal;
            }
        }
    }

    /** Solves for a vector in place, with the root of a symmetric matrix. */
    private static void solve(double[] lower, int size, double[] values, int at) {
        for (int i = 0; i < size; i++) {
            double sum = values[at + i];
            for (int k = 0; k < i; k++) {
                sum -= lower[i * size + k] * values[at + k];
            }
            values[at + i] = sum / lower[i * size + i];
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = values[at + i];
            for (int k = i + 1; k < size; k++) {
                sum -= lower[k * size + i] * values[at + k];
            }
            values[at + i] = sum / lower[i * size + i];
        }
    }
}
