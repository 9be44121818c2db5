package setwright.benchmarks.kernel;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import setwright.benchmarks.measure.JavaCommand;
import setwright.benchmarks.measure.PairedTimes;
import setwright.benchmarks.measure.ProcessorTime;
import setwright.benchmarks.measure.RatioTable;
import setwright.benchmarks.measure.Spent;

/** The rows of the table that are about kernels: checked to be the same, then timed in turn, each in fresh warm processes. */
public final class KernelRows {
    private static final double MS = 1.0e-3;
    private static final int ITERATIONS = 3;
    private static final long ITERATION_MS = 400;
    private static final long QUICK_MS = 20;

    private final RatioTable table;
    private final int rounds;
    private final boolean quick;

    /**
     * Makes them.
     *
     * @param rounds  of each in turn
     * @param quick   hardly warmed up, to see that all works
     */
    public KernelRows(RatioTable table, int rounds, boolean quick) {
        this.table = table;
        this.rounds = rounds;
        this.quick = quick;
    }

    /**
     * Measures and prints all.
     *
     * @param folder  for what is handed to SciPy
     * @return what there is to say of SciPy
     * @throws IllegalStateException when a library's result is another
     */
    public String print(Path folder) throws IOException, RunnerException {
        Optional<SciPy> scipy = SciPy.find(folder);
        for (String name : Kernels.names()) {
            print(name, Kernels.of(name), scipy);
        }
        return scipy.map(SciPy::versions)
                .orElse("No Python with SciPy was found (" + SciPy.PYTHON
                        + " names another one): kernels are compared with Hipparchus only.");
    }

    private void print(String name, Kernel kernel, Optional<SciPy> scipy) throws IOException, RunnerException {
        double[] result = kernel.ours();
        Optional<Kernel.Library> library = kernel.hipparchus();
        if (library.isPresent()) {
            KernelCheck.same(kernel, result, library.get().result(), "Hipparchus");
        }
        boolean handed = !kernel.inputs().isEmpty();
        List<Spent> ours = new ArrayList<>();
        List<Spent> hipparchus = new ArrayList<>();
        List<Spent> python = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            ours.add(measure(name, "ours"));
            if (library.isPresent()) {
                hipparchus.add(measure(name, "hipparchus"));
            }
            if (scipy.isPresent() && handed) {
                SciPy.Answer answer = scipy.get().run(name, kernel, MS * (quick ? QUICK_MS : ITERATION_MS));
                KernelCheck.same(
                        kernel,
                        result,
                        answer.result().stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray(),
                        "SciPy");
                python.add(answer.spent());
            }
        }
        if (library.isPresent()) {
            table.row(
                    kernel.words(),
                    new PairedTimes(ours, hipparchus),
                    library.get().words());
        }
        if (!python.isEmpty()) {
            table.row(kernel.words(), new PairedTimes(ours, python), "SciPy and NumPy, one core");
        }
    }

    private Spent measure(String name, String method) throws RunnerException {
        int warm = quick ? 1 : ITERATIONS;
        TimeValue time = TimeValue.milliseconds(quick ? QUICK_MS : ITERATION_MS);
        RunResult result = new Runner(new OptionsBuilder()
                        .verbosity(VerboseMode.SILENT)
                        .shouldFailOnError(true)
                        .include(KernelBenchmark.class.getName() + "." + method + "$")
                        .param("kernel", name)
                        .forks(1)
                        .warmupIterations(warm)
                        .measurementIterations(warm)
                        .warmupTime(time)
                        .measurementTime(time)
                        .jvmArgs(JavaCommand.OPTIONS.toArray(String[]::new))
                        .addProfiler(ProcessorTime.class)
                        .build())
                .runSingle();
        return new Spent(MS * result.getPrimaryResult().getScore(), MS * ProcessorTime.of(result), Double.NaN);
    }
}
