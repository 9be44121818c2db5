package setwright.benchmarks.kernel;

import java.util.Arrays;
import java.util.List;
import setwright.core.numerics.LocalPolynomial;

/** Slope by a sliding parabola, away from the ends, which are treated in different ways. Hipparchus has none. */
final class SavitzkyGolay implements Kernel {
    private static final int COUNT = 100_000;
    private static final int HALF = 20;
    private static final double STEP_S = 0.01;

    private final double[] signal = Signal.draw(COUNT, 2L);

    @Override
    public String words() {
        return "Savitzky-Golay slope, 41 samples wide, of 100,000 samples";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(signal, new double[] {HALF}, new double[] {STEP_S});
    }

    @Override
    public double[] ours() {
        double[] slope = LocalPolynomial.of(HALF, 2).derivative(signal, STEP_S);
        return Arrays.copyOfRange(slope, HALF, COUNT - HALF);
    }
}
