package setwright.benchmarks.kernel;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** All kernels by the name under which the measuring processes find them. */
final class Kernels {
    private static final Map<String, Supplier<Kernel>> ALL = new LinkedHashMap<>();

    static {
        ALL.put("butterworth", Butterworth::new);
        ALL.put("savitzky_golay", SavitzkyGolay::new);
        ALL.put("spline", ReferenceLineSpline::new);
        ALL.put("quantiles", Quantiles::new);
        ALL.put("huber", HuberRegression::new);
        ALL.put("pair_slopes", PairSlopes::new);
        ALL.put("correlation", Correlation::new);
        ALL.put("resampling", Resampling::new);
        ALL.put("monotone", MonotoneCurve::new);
        ALL.put("unscented", SlipSmoother::new);
    }

    private Kernels() {}

    static List<String> names() {
        return List.copyOf(ALL.keySet());
    }

    /** Makes one anew, with its arrays. */
    static Kernel of(String name) {
        Supplier<Kernel> kernel = ALL.get(name);
        if (kernel == null) {
            throw new IllegalArgumentException("no kernel is called " + name + "; there are " + names());
        }
        return kernel.get();
    }
}
