package setwright.benchmarks.kernel;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import setwright.core.numerics.Lag;

/** Correlation at each shift of a signal against another, over the samples that both have. */
final class Correlation implements Kernel {
    private static final int COUNT = 20_000;
    private static final int MOST = 50;

    private final double[] first = Signal.draw(COUNT, 8L);
    private final double[] second = Signal.draw(COUNT, 9L);

    @Override
    public String words() {
        return "Correlation of two signals of 20,000 samples at 101 shifts";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(first, second, new double[] {MOST});
    }

    @Override
    public double[] ours() {
        return Lag.profile(first, second, MOST);
    }

    @Override
    public Optional<Library> hipparchus() {
        return Optional.of(Kernel.library("Hipparchus, PearsonsCorrelation at each shift", this::pearson));
    }

    private double[] pearson() {
        double[] profile = new double[2 * MOST + 1];
        PearsonsCorrelation pearson = new PearsonsCorrelation();
        for (int shift = -MOST; shift <= MOST; shift++) {
            int from = Math.max(0, -shift);
            int to = Math.min(COUNT, COUNT - shift);
            profile[MOST + shift] = pearson.correlation(
                    Arrays.copyOfRange(first, from, to), Arrays.copyOfRange(second, from + shift, to + shift));
        }
        return profile;
    }
}
