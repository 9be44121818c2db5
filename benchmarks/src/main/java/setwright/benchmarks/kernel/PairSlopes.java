package setwright.benchmarks.kernel;

import java.util.List;
import java.util.Optional;
import org.hipparchus.stat.descriptive.rank.Percentile;
import setwright.core.numerics.Robust;

/** Median of the slopes between all pairs of points. */
final class PairSlopes implements Kernel {
    private static final int COUNT = 1000;

    private final double[] x = Signal.draw(COUNT, 6L);
    private final double[] y = Signal.draw(COUNT, 7L);

    @Override
    public String words() {
        return "Median slope between all pairs of 1,000 points";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(x, y);
    }

    @Override
    public double[] ours() {
        return new double[] {Robust.theilSen(x, y).slope()};
    }

    @Override
    public Optional<Library> hipparchus() {
        return Optional.of(Kernel.library("Hipparchus, Percentile of the slopes", this::percentile));
    }

    private double[] percentile() {
        double[] slopes = new double[COUNT * (COUNT - 1) / 2];
        int at = 0;
        for (int i = 0; i < COUNT; i++) {
            for (int j = 0; j < i; j++) {
                slopes[at++] = (y[i] - y[j]) / (x[i] - x[j]);
            }
        }
        return new double[] {new Percentile().evaluate(slopes, 50.0)};
    }
}
