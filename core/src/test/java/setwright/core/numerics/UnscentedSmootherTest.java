package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.filtering.kalman.KalmanSmoother;
import org.hipparchus.filtering.kalman.Measurement;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.unscented.UnscentedEvolution;
import org.hipparchus.filtering.kalman.unscented.UnscentedKalmanFilter;
import org.hipparchus.filtering.kalman.unscented.UnscentedProcess;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposer;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.JulierUnscentedTransform;
import org.junit.jupiter.api.Test;

/** Against the library's filter and smoother, which this class is a quicker form of. */
final class UnscentedSmootherTest {
    private static final double ROUND_OFF = 1.0e-9;
    private static final int STEPS = 120;
    private static final double NOISE = 0.02;
    private static final double SCATTER = 0.05;

    /** A pendulum with friction that is not known: three states, of which the sine of the angle is read. */
    private static final class Pendulum implements UnscentedSmoother.Model {
        @Override
        public int states() {
            return 3;
        }

        @Override
        public int readings() {
            return 1;
        }

        @Override
        public void move(int step, double[] state) {
            double rate = state[1];
            state[1] += 0.05 * (-9.0 * Math.sin(state[0]) - state[2] * rate);
            state[0] += 0.05 * state[1];
        }

        @Override
        public void read(int step, double[] state, double[] reading) {
            reading[0] = Math.sin(state[0]);
        }

        @Override
        public void noise(int step, double[] variance) {
            variance[0] = 1.0e-6;
            variance[1] = NOISE * NOISE;
            variance[2] = 1.0e-6;
        }
    }

    private record Reading(double time, double value) implements Measurement {
        @Override
        public double getTime() {
            return time;
        }

        @Override
        public RealVector getValue() {
            return new ArrayRealVector(new double[] {value});
        }

        @Override
        public RealMatrix getCovariance() {
            return MatrixUtils.createRealDiagonalMatrix(new double[] {SCATTER * SCATTER});
        }
    }

    private static final class Process implements UnscentedProcess<Reading> {
        private final Pendulum pendulum = new Pendulum();

        @Override
        public UnscentedEvolution getEvolution(double before, RealVector[] states, Reading reading) {
            RealVector[] moved = new RealVector[states.length];
            for (int p = 0; p < states.length; p++) {
                double[] state = states[p].toArray();
                pendulum.move(0, state);
                moved[p] = new ArrayRealVector(state);
            }
            return new UnscentedEvolution(reading.getTime(), moved);
        }

        @Override
        public RealMatrix getProcessNoiseMatrix(double before, RealVector state, Reading reading) {
            double[] variance = new double[3];
            pendulum.noise(0, variance);
            return MatrixUtils.createRealDiagonalMatrix(variance);
        }

        @Override
        public RealVector[] getPredictedMeasurements(RealVector[] states, Reading reading) {
            return IntStream.range(0, states.length)
                    .mapToObj(p -> (RealVector) new ArrayRealVector(new double[] {Math.sin(states[p].getEntry(0))}))
                    .toArray(RealVector[]::new);
        }

        @Override
        public RealVector getInnovation(
                Reading reading, RealVector predicted, RealVector state, RealMatrix covariance) {
            return reading.getValue().subtract(predicted);
        }
    }

    @Test
    void filters_and_smooths_as_the_library_does() {
        Random random = new Random(11L);
        double[] truth = {0.8, 0.0, 0.4};
        Pendulum pendulum = new Pendulum();
        double[][] readings = new double[STEPS][1];
        for (int k = 0; k < STEPS; k++) {
            if (k > 0) {
                pendulum.move(0, truth);
                truth[1] += NOISE * random.nextGaussian();
            }
            readings[k][0] = Math.sin(truth[0]) + SCATTER * random.nextGaussian();
        }
        double[] start = {0.5, 0.1, 0.2};
        double[] variance = {0.1, 0.1, 0.05};

        // the library moves before its first reading: it starts from the state corrected with ours
        UnscentedSmoother own = new UnscentedSmoother(pendulum);
        own.filter(STEPS, start, variance, readings, new double[] {SCATTER * SCATTER});
        double[] first = {own.mean(0, 0), own.mean(0, 1), own.mean(0, 2)};
        double[][] firstCovariance = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                firstCovariance[i][j] = own.covariance(0, i, j);
            }
        }
        CholeskyDecomposer decomposer = new CholeskyDecomposer(1.0e-15, 1.0e-15);
        UnscentedKalmanFilter<Reading> library = new UnscentedKalmanFilter<>(
                decomposer,
                new Process(),
                new ProcessEstimate(0.0, new ArrayRealVector(first), new Array2DRowRealMatrix(firstCovariance)),
                new JulierUnscentedTransform(3, 0.0));
        KalmanSmoother smoother = new KalmanSmoother(decomposer);
        library.setObserver(smoother);
        for (int k = 1; k < STEPS; k++) {
            ProcessEstimate estimate = library.estimationStep(new Reading(k, readings[k][0]));
            for (int i = 0; i < 3; i++) {
                assertThat(own.mean(k, i)).isCloseTo(estimate.getState().getEntry(i), within(ROUND_OFF));
                for (int j = 0; j < 3; j++) {
                    assertThat(own.covariance(k, i, j))
                            .isCloseTo(estimate.getCovariance().getEntry(i, j), within(ROUND_OFF));
                }
            }
        }
        own.smooth();
        List<ProcessEstimate> smoothed = smoother.backwardsSmooth();
        assertThat(smoothed).hasSize(STEPS);
        for (int k = 0; k < STEPS; k++) {
            for (int i = 0; i < 3; i++) {
                assertThat(own.mean(k, i)).isCloseTo(smoothed.get(k).getState().getEntry(i), within(ROUND_OFF));
                assertThat(own.covariance(k, i, i))
                        .isCloseTo(smoothed.get(k).getCovariance().getEntry(i, i), within(ROUND_OFF));
            }
        }
    }

    @Test
    void a_reading_that_is_missing_changes_nothing() {
        UnscentedSmoother smoother = new UnscentedSmoother(new Pendulum());
        double[][] missing = {{Double.NaN}};
        smoother.filter(1, new double[] {0.5, 0.1, 0.2}, new double[] {0.1, 0.2, 0.05}, missing, new double[] {0.01});
        assertThat(smoother.mean(0, 0)).isEqualTo(0.5);
        assertThat(smoother.covariance(0, 1, 1)).isCloseTo(0.2, within(ROUND_OFF));
        assertThat(smoother.surprise(0)).isZero();
    }
}
