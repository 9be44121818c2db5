package setwright.benchmarks;

import java.io.PrintStream;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.util.Statistics;

/** How times grow with the number of laps. */
final class Growth {
    private Growth() {}

    /**
     * Prints a table, and what each further lap costs.
     *
     * @param kind  first or warm
     */
    static void print(PrintStream out, Collection<RunResult> results, String kind, double loadBefore) {
        out.printf(
                Locale.ROOT,
                "%n%s runs; %d cores, load %.2f before and %.2f after%n%-8s %5s %9s %9s %9s %10s%n",
                kind,
                Runtime.getRuntime().availableProcessors(),
                loadBefore,
                Benchmarks.load(),
                "part",
                "laps",
                "mean",
                "least",
                "most",
                "processor");
        List<RunResult> sorted = results.stream()
                .sorted(Comparator.comparing((RunResult result) -> label(result))
                        .thenComparingInt(Growth::laps))
                .toList();
        for (int i = 0; i < sorted.size(); i++) {
            RunResult result = sorted.get(i);
            Statistics times = result.getPrimaryResult().getStatistics();
            double processor = Benchmarks.processor(result);
            out.printf(
                    Locale.ROOT,
                    "%-8s %5d %7.0fms %7.0fms %7.0fms %8.0fms",
                    label(result),
                    laps(result),
                    times.getMean(),
                    times.getMin(),
                    times.getMax(),
                    processor);
            if (i > 0 && label(sorted.get(i - 1)).equals(label(result))) {
                RunResult fewer = sorted.get(i - 1);
                out.printf(
                        Locale.ROOT,
                        "   %.0f ms of processor time for each lap more",
                        (processor - Benchmarks.processor(fewer)) / (laps(result) - laps(fewer)));
            }
            out.println();
        }
    }

    private static String label(RunResult result) {
        return result.getPrimaryResult().getLabel();
    }

    private static int laps(RunResult result) {
        return Integer.parseInt(result.getParams().getParam("laps"));
    }
}
