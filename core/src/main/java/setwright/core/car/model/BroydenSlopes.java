package setwright.core.car.model;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;

/**
 * The inverse of the derivatives of several equations, kept up to date from step to step by what each step showed: Broyden's first method (Broyden,
 * "A class of methods for solving nonlinear simultaneous equations", Mathematics of Computation 19, 1965) in the form of Sherman and
 * Morrison. A step then costs one look at the equations.
 */
final class BroydenSlopes {
    private static final double LEAST_DENOMINATOR = 1.0e-3;

    private final int count;
    private final double[][] inverse;
    private final double[] seen;
    private final double[] row;

    /**
     * Inverts derivatives.
     *
     * @param jacobian  of each equation (rows) by each unknown
     * @throws org.hipparchus.exception.MathRuntimeException when they are singular
     */
    BroydenSlopes(double[][] jacobian) {
        this.count = jacobian.length;
        this.inverse = new LUDecomposition(new Array2DRowRealMatrix(jacobian, true))
                .getSolver()
                .getInverse()
                .getData();
        this.seen = new double[count];
        this.row = new double[count];
    }

    /** Writes the change of the unknowns that would change the equations by {@code wanted}. */
    void change(double[] wanted, double[] out) {
        for (int i = 0; i < count; i++) {
            double sum = 0.0;
            for (int j = 0; j < count; j++) {
                sum += inverse[i][j] * wanted[j];
            }
            out[i] = sum;
        }
    }

    /** Learns from a step of the unknowns and the change of the equations that it brought. */
    void learn(double[] step, double[] brought) {
        change(brought, seen);
        double denominator = 0.0;
        double length = 0.0;
        for (int j = 0; j < count; j++) {
            double sum = 0.0;
            for (int i = 0; i < count; i++) {
                sum += step[i] * inverse[i][j];
            }
            row[j] = sum;
            denominator += step[j] * seen[j];
            length += step[j] * step[j];
        }
        if (Math.abs(denominator) < LEAST_DENOMINATOR * length) {
            return;
        }
        for (int i = 0; i < count; i++) {
            double share = (step[i] - seen[i]) / denominator;
            for (int j = 0; j < count; j++) {
                inverse[i][j] += share * row[j];
            }
        }
    }
}
