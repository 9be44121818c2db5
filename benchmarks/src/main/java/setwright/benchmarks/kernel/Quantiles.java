package setwright.benchmarks.kernel;

import java.util.List;
import java.util.Optional;
import org.hipparchus.stat.descriptive.rank.Percentile;
import setwright.core.numerics.Robust;

/** Median, median absolute deviation and a quantile, each from the samples as they come. */
final class Quantiles implements Kernel {
    private static final int COUNT = 100_000;
    private static final double SHARE = 0.9;

    private final double[] signal = Signal.draw(COUNT, 4L);

    @Override
    public String words() {
        return "Median, median absolute deviation, 90 % quantile of 100,000 samples";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(signal, new double[] {SHARE});
    }

    @Override
    public double[] ours() {
        return new double[] {
            Robust.median(signal), Robust.scaledMad(signal) / Robust.MAD_TO_SIGMA, Robust.quantile(signal, SHARE)
        };
    }

    @Override
    public Optional<Library> hipparchus() {
        return Optional.of(Kernel.library("Hipparchus, Percentile", this::percentiles));
    }

    private double[] percentiles() {
        Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        double median = percentile.evaluate(signal, 50.0);
        double[] apart = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            apart[i] = Math.abs(signal[i] - median);
        }
        return new double[] {median, percentile.evaluate(apart, 50.0), percentile.evaluate(signal, 100.0 * SHARE)};
    }
}
