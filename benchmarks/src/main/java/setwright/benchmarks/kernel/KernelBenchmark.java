package setwright.benchmarks.kernel;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One kernel, ours or by Hipparchus, in a warm Java machine. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class KernelBenchmark {
    /** As {@link Kernels} calls it. */
    @Param("butterworth")
    public String kernel = "butterworth";

    private Kernel chosen;
    private Kernel.Library library;

    /** Makes its arrays. */
    @Setup
    public void prepare() {
        chosen = Kernels.of(kernel);
        library = chosen.hipparchus().orElseGet(() -> Kernel.library("none", () -> new double[0]));
    }

    @Benchmark
    public double[] ours() {
        return chosen.ours();
    }

    @Benchmark
    public double[] hipparchus() {
        return library.result();
    }
}
