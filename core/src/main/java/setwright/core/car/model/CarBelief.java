package setwright.core.car.model;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/** What is believed of a car's parameters: a normal distribution. */
public final class CarBelief {
    private final double[] middle;
    private final RealMatrix covariance;
    private final RealMatrix root;

    /**
     * Makes a belief.
     *
     * @param middle      by index of {@link Parameter}
     * @param covariance  square, positive definite
     */
    public CarBelief(double[] middle, double[][] covariance) {
        this.middle = middle.clone();
        this.covariance = new Array2DRowRealMatrix(covariance);
        this.root = new CholeskyDecomposition(this.covariance, 1.0e-9, 1.0e-14).getL();
    }

    /** Returns the belief before any lap. */
    public static CarBelief of(CarPrior prior) {
        double[] spread = prior.spread();
        double[][] covariance = new double[spread.length][spread.length];
        for (int i = 0; i < spread.length; i++) {
            covariance[i][i] = spread[i] * spread[i];
        }
        return new CarBelief(prior.middle(), covariance);
    }

    /** Returns the middle values, by index of {@link Parameter}. */
    public double[] middle() {
        return middle.clone();
    }

    /** Returns the middle of a parameter. */
    public double middle(Parameter parameter) {
        return middle[parameter.index()];
    }

    /** Returns the standard deviation of a parameter. */
    public double spread(Parameter parameter) {
        return Math.sqrt(covariance.getEntry(parameter.index(), parameter.index()));
    }

    /**
     * Draws cars.
     *
     * @param count  how many
     * @param seed   of the random numbers; the same seed gives the same cars
     * @return one row of parameters for each car
     */
    public double[][] draw(int count, long seed) {
        Random random = new Random(seed);
        double[][] out = new double[count][];
        double[] noise = new double[middle.length];
        for (int k = 0; k < count; k++) {
            for (int i = 0; i < noise.length; i++) {
                noise[i] = random.nextGaussian();
            }
            out[k] = root.operate(noise);
            for (int i = 0; i < noise.length; i++) {
                out[k][i] += middle[i];
            }
        }
        return out;
    }
}
