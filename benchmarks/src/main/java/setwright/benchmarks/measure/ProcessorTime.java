package setwright.benchmarks.measure;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Processor time of a measured call, all threads together, with compiler and memory management. On a busy machine it tells more
 * than the clock; still, cores that are shared with others take longer for the same work.
 */
public final class ProcessorTime implements InternalProfiler {
    /** Under which its figures are found, ms for a call. */
    public static final String LABEL = "processor";

    private static final double NS_PER_MS = 1.0e6;

    private long before;

    /** Returns the figure of a result, ms for a call; NaN where it was not measured. */
    public static double of(RunResult result) {
        Result<?> found = result.getSecondaryResults().get(LABEL);
        return found == null ? Double.NaN : found.getScore();
    }

    @Override
    public String getDescription() {
        return "processor time of all threads";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = now();
    }

    @Override
    public Collection<ScalarResult> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        return List.of(new ScalarResult(
                LABEL, (now() - before) / NS_PER_MS / result.getMetadata().getAllOps(), "ms", AggregationPolicy.AVG));
    }

    private static long now() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }
}
