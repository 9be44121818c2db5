package setwright.benchmarks.kernel;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.filtering.kalman.KalmanSmoother;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.unscented.UnscentedKalmanFilter;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposer;
import org.hipparchus.util.JulierUnscentedTransform;
import setwright.core.numerics.UnscentedSmoother;

/** Unscented filter and smoother on a pendulum of unknown friction: three states, one reading. */
final class SlipSmoother implements Kernel {
    static final int STEPS = 2000;
    static final double SCATTER = 0.05;

    private static final double[] START = {0.5, 0.1, 0.2};
    private static final double[] VARIANCE = {0.1, 0.1, 0.05};
    private static final double LEAST_PIVOT = 1.0e-15;

    private final double[][] readings = new double[STEPS][1];
    private final double[] first;
    private final double[][] firstCovariance;

    SlipSmoother() {
        Random random = new Random(14L);
        double[] truth = {0.8, 0.0, 0.4};
        Pendulum pendulum = new Pendulum();
        for (int k = 0; k < STEPS; k++) {
            pendulum.move(k, truth);
            truth[1] += Pendulum.NOISE * random.nextGaussian();
            readings[k][0] = Math.sin(truth[0]) + SCATTER * random.nextGaussian();
        }
        // The library moves before its first reading: it starts from the state that ours has corrected with it.
        UnscentedSmoother once = filtered(1);
        first = new double[] {once.mean(0, 0), once.mean(0, 1), once.mean(0, 2)};
        firstCovariance = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                firstCovariance[i][j] = once.covariance(0, i, j);
            }
        }
    }

    @Override
    public String words() {
        return "Unscented filter and smoother, 3 states, 2,000 steps";
    }

    @Override
    public List<double[]> inputs() {
        return List.of();
    }

    private UnscentedSmoother filtered(int count) {
        UnscentedSmoother smoother = new UnscentedSmoother(new Pendulum());
        smoother.filter(count, START, VARIANCE, readings, new double[] {SCATTER * SCATTER});
        return smoother;
    }

    @Override
    public double[] ours() {
        UnscentedSmoother smoother = filtered(STEPS);
        smoother.smooth();
        double[] means = new double[3 * STEPS];
        for (int i = 0; i < means.length; i++) {
            means[i] = smoother.mean(i / 3, i % 3);
        }
        return means;
    }

    @Override
    public double tolerance() {
        return 1.0e-7; // thousands of steps add up their rounding
    }

    @Override
    public Optional<Library> hipparchus() {
        return Optional.of(Kernel.library("Hipparchus, UnscentedKalmanFilter and KalmanSmoother", this::library));
    }

    private double[] library() {
        CholeskyDecomposer decomposer = new CholeskyDecomposer(LEAST_PIVOT, LEAST_PIVOT);
        UnscentedKalmanFilter<PendulumReading> filter = new UnscentedKalmanFilter<>(
                decomposer,
                new PendulumProcess(),
                new ProcessEstimate(0.0, new ArrayRealVector(first), new Array2DRowRealMatrix(firstCovariance)),
                new JulierUnscentedTransform(3, 0.0));
        KalmanSmoother smoother = new KalmanSmoother(decomposer);
        filter.setObserver(smoother);
        for (int k = 1; k < STEPS; k++) {
            filter.estimationStep(new PendulumReading(k, readings[k][0]));
        }
        List<ProcessEstimate> smoothed = smoother.backwardsSmooth();
        double[] means = new double[3 * STEPS];
        for (int i = 0; i < means.length; i++) {
            means[i] = smoothed.get(i / 3).getState().getEntry(i % 3);
        }
        return means;
    }
}
