package setwright.core.car.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

final class Symmetric3Test {
    @Test
    void solvesAsTheLibraryDoes() {
        long seed = 20_261_201L;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double[][] root = new double[3][3];
            for (double[] row : root) {
                for (int k = 0; k < 3; k++) {
                    row[k] = random.nextGaussian();
                }
            }
            RealMatrix square = new Array2DRowRealMatrix(root).multiplyTransposed(new Array2DRowRealMatrix(root));
            for (int k = 0; k < 3; k++) {
                square.addToEntry(k, k, 0.1); // positive definite, and its condition bounded
            }
            double[] right = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
            double[] expected = new LUDecomposition(square)
                    .getSolver()
                    .solve(new ArrayRealVector(right))
                    .toArray();
            double[] entries = {
                square.getEntry(0, 0),
                square.getEntry(0, 1),
                square.getEntry(0, 2),
                square.getEntry(1, 1),
                square.getEntry(1, 2),
                square.getEntry(2, 2)
            };
            Symmetric3.solve(entries, right);
            // condition up to some hundreds times rounding
            assertThat(right).as("seed %d, case %d", seed, i).containsExactly(expected, within(1.0e-10));
        }
    }
}
