package setwright.benchmarks.kernel;

import org.hipparchus.filtering.kalman.Measurement;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A reading as the library wants it.
 *
 * @param time   number of its step
 * @param value  sine of the angle
 */
record PendulumReading(double time, double value) implements Measurement {
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
        return MatrixUtils.createRealDiagonalMatrix(new double[] {SlipSmoother.SCATTER * SlipSmoother.SCATTER});
    }
}
