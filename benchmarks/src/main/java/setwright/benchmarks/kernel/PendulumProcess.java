package setwright.benchmarks.kernel;

import org.hipparchus.filtering.kalman.unscented.UnscentedEvolution;
import org.hipparchus.filtering.kalman.unscented.UnscentedProcess;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** The pendulum as the library wants it. */
final class PendulumProcess implements UnscentedProcess<PendulumReading> {
    private final Pendulum pendulum = new Pendulum();

    @Override
    public UnscentedEvolution getEvolution(double before, RealVector[] states, PendulumReading reading) {
        RealVector[] moved = new RealVector[states.length];
        for (int p = 0; p < states.length; p++) {
            double[] state = states[p].toArray();
            pendulum.move(0, state);
            moved[p] = new ArrayRealVector(state, false);
        }
        return new UnscentedEvolution(reading.getTime(), moved);
    }

    @Override
    public RealMatrix getProcessNoiseMatrix(double before, RealVector state, PendulumReading reading) {
        double[] variance = new double[pendulum.states()];
        pendulum.noise(0, variance);
        return MatrixUtils.createRealDiagonalMatrix(variance);
    }

    @Override
    public RealVector[] getPredictedMeasurements(RealVector[] states, PendulumReading reading) {
        RealVector[] seen = new RealVector[states.length];
        for (int p = 0; p < states.length; p++) {
            seen[p] = new ArrayRealVector(new double[] {Math.sin(states[p].getEntry(0))}, false);
        }
        return seen;
    }

    @Override
    public RealVector getInnovation(
            PendulumReading reading, RealVector predicted, RealVector state, RealMatrix covariance) {
        return reading.getValue().subtract(predicted);
    }
}
