package setwright.benchmarks.kernel;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import setwright.core.numerics.UniformResampler;

/** Uneven samples onto an even time base of about their own rate. */
final class Resampling implements Kernel {
    private static final int COUNT = 100_000;
    private static final double RATE_HZ = 100.0;
    private static final double JITTER_S = 1.0e-4;
    private static final double GAP_S = 1.0;

    private final double[] times = new double[COUNT];
    private final double[] values = Signal.draw(COUNT, 10L);

    Resampling() {
        Random random = new Random(11L);
        for (int i = 1; i < COUNT; i++) {
            times[i] = i / RATE_HZ + JITTER_S * random.nextDouble();
        }
    }

    @Override
    public String words() {
        return "Uneven samples onto an even time base, 100,000 samples";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(times, values, new double[] {RATE_HZ}, new double[] {ours().length});
    }

    @Override
    public double[] ours() {
        return UniformResampler.onto(times, RATE_HZ, GAP_S).resample(values);
    }

    /** Ours takes a sample as it is when it lies within a hundredth of a step: so much of the greatest step, some 15 % of a value. */
    @Override
    public double tolerance() {
        return 1.5e-3;
    }

    @Override
    public Optional<Library> hipparchus() {
        return Optional.of(Kernel.library("Hipparchus, LinearInterpolator", this::interpolated));
    }

    private double[] interpolated() {
        PolynomialSplineFunction function = new LinearInterpolator().interpolate(times, values);
        int count = (int) Math.floor(times[COUNT - 1] * RATE_HZ + 1.0e-6) + 1;
        double[] out = new double[count];
        for (int i = 0; i < count; i++) {
            out[i] = function.value(Math.min(i / RATE_HZ, times[COUNT - 1]));
        }
        return out;
    }
}
