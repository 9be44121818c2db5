package setwright.benchmarks.kernel;

import java.util.List;
import setwright.core.numerics.ZeroPhaseLowPass;

/** Low-pass forward and backward. Hipparchus has none. */
final class Butterworth implements Kernel {
    private static final int COUNT = 100_000;
    private static final double CUT_OFF_HZ = 5.0;
    private static final double RATE_HZ = 100.0;

    private final double[] signal = Signal.draw(COUNT, 1L);

    @Override
    public String words() {
        return "Butterworth low-pass of order 4, forward and backward, 100,000 samples";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(signal, new double[] {CUT_OFF_HZ}, new double[] {RATE_HZ});
    }

    @Override
    public double[] ours() {
        return ZeroPhaseLowPass.butterworth(4, CUT_OFF_HZ, RATE_HZ).apply(signal);
    }
}
