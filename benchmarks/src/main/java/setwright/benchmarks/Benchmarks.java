package setwright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.openjdk.jmh.profile.StackProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;

/** The command {@code ./benchmark}: measures and prints a table. */
public final class Benchmarks {
    private static final String HELP = """
            Usage: ./benchmark [--laps] [--growth] [--logbook] [--quick] [--profile]

            Measures what a person waits for after a stint of ten laps: the diagnosis, the car fitted to the laps, and the
            prediction of 40 candidate changes with 200 draws of the car's parameters; and quasi-steady laps: the envelope of a
            car, that of a neighbouring setup, a lap of 5 km at steps of 2 m, and a sweep of 60 setups; and a second of driving, the
            whole car in time with its driver. Prints a table.

              --laps     the quasi-steady laps and the driving alone
              --growth   the whole diagnosis alone, from a file of 40 columns at 100 rows a second to the answer, by the number of
                         laps: in a Java machine that has just started, and in one that is warm
              --logbook  a logbook of 10,000 stints alone: listed, and searched
              --quick    one short run each, to see that all works; its figures say little
              --profile  samples where the prediction spends its time, and prints that too
              -h, --help shows this text

            The figures hold only while nothing else runs: the table shows the load of the machine, and the processor time of
            all threads together beside the time on the clock.
            """;
    private static final Set<String> OPTIONS = Set.of("--laps", "--growth", "--logbook", "--quick", "--profile");
    /** As ./setwright starts the program. */
    private static final String[] JVM = {"-XX:+UseSerialGC", "-XX:MaxRAMPercentage=50"};

    private static final int USAGE = 2;
    private static final int FIRST_RUNS = 5;

    private Benchmarks() {}

    /** Runs the command. */
    public static void main(String[] arguments) throws RunnerException, IOException {
        List<String> words = Arrays.asList(arguments);
        if (words.contains("-h") || words.contains("--help")) {
            System.out.print(HELP);
            return;
        }
        for (String word : words) {
            if (!OPTIONS.contains(word)) {
                System.err.println("benchmark: unknown option " + word
                        + "; options are --laps, --growth, --logbook, --quick, --profile and --help");
                System.exit(USAGE);
            }
        }
        boolean quick = words.contains("--quick");
        double load = load();
        if (words.contains("--growth")) {
            Path folder = Files.createTempDirectory("setwright-benchmark");
            try {
                WrittenLaps.write(folder, WrittenLaps.LAPS);
                Growth.print(System.out, growth(quick, folder, true), "first", load);
                Growth.print(System.out, growth(quick, folder, false), "warm", load());
            } finally {
                for (int laps : WrittenLaps.LAPS) {
                    Files.deleteIfExists(WrittenLaps.file(folder, laps));
                }
                Files.deleteIfExists(folder);
            }
            return;
        }
        Collection<RunResult> results = words.contains("--logbook")
                ? new Runner(options(quick)
                                .include(LogbookBenchmark.class.getName())
                                .build())
                        .run()
                : measure(quick, words.contains("--laps"));
        print(System.out, results, load, quick);
        if (words.contains("--profile")) {
            System.out.print(profile(quick));
        }
    }

    private static Collection<RunResult> measure(boolean quick, boolean lapsOnly) throws RunnerException {
        ChainedOptionsBuilder options =
                options(quick).include(LapBenchmark.class.getName()).include(DriveBenchmark.class.getName());
        return new Runner((lapsOnly ? options : options.include(StintBenchmark.class.getName())).build()).run();
    }

    /** A first run each in fresh Java machines, or warm ones. */
    private static Collection<RunResult> growth(boolean quick, Path folder, boolean first) throws RunnerException {
        ChainedOptionsBuilder options = options(quick)
                .include(DiagnosisBenchmark.class.getName())
                .jvmArgsAppend(
                        "-D" + TenLaps.HOME + "=" + System.getProperty(TenLaps.HOME, ".."),
                        "-D" + WrittenLaps.FOLDER + "=" + folder);
        if (first) {
            options.forks(quick ? 1 : FIRST_RUNS)
                    .warmupIterations(0)
                    .measurementIterations(1)
                    .jvmArgs(Stream.concat(Stream.of(JVM), Stream.of("-XX:TieredStopAtLevel=1"))
                            .toArray(String[]::new));
        }
        return new Runner(options.build()).run();
    }

    private static ChainedOptionsBuilder options(boolean quick) {
        return new OptionsBuilder()
                .verbosity(VerboseMode.SILENT)
                .shouldFailOnError(true)
                .forks(quick ? 1 : 2)
                .warmupIterations(quick ? 0 : 3)
                .measurementIterations(quick ? 1 : 5)
                .jvmArgs(JVM)
                .addProfiler(ProcessorTime.class)
                .jvmArgsAppend("-D" + TenLaps.HOME + "=" + System.getProperty(TenLaps.HOME, ".."));
    }

    private static void print(PrintStream out, Collection<RunResult> results, double loadBefore, boolean quick) {
        double diagnosis = results.stream()
                .filter(result -> name(result).equals("diagnose"))
                .mapToDouble(result -> result.getPrimaryResult().getStatistics().getMean())
                .findFirst()
                .orElse(Double.NaN);
        out.printf(
                Locale.ROOT,
                "%d cores, Java %s, load %.2f before and %.2f after%s%n%n",
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("java.version"),
                loadBefore,
                load(),
                quick ? "; --quick, so not warmed up" : "");
        out.printf(
                "%-10s %9s %9s %9s %10s %5s %15s%n",
                "part", "mean", "least", "most", "processor", "runs", "over diagnosis");
        for (RunResult result : results) {
            Statistics times = result.getPrimaryResult().getStatistics();
            out.printf(
                    Locale.ROOT,
                    "%-10s %7.1fms %7.1fms %7.1fms %8.0fms %5d %15s%n",
                    name(result),
                    times.getMean(),
                    times.getMin(),
                    times.getMax(),
                    processor(result),
                    times.getN(),
                    Double.isNaN(diagnosis) ? "-" : String.format(Locale.ROOT, "%.3f", times.getMean() / diagnosis));
        }
    }

    static double processor(RunResult result) {
        Result<?> found = result.getSecondaryResults().get(ProcessorTime.LABEL);
        return found == null ? Double.NaN : found.getScore();
    }

    private static String name(RunResult result) {
        return result.getPrimaryResult().getLabel();
    }

    private static String profile(boolean quick) throws RunnerException {
        RunResult result = new Runner(options(quick)
                        .forks(1)
                        .include(StintBenchmark.class.getName() + ".predict")
                        .addProfiler(StackProfiler.class, "lines=1;top=25;period=5")
                        .build())
                .runSingle();
        return result.getSecondaryResults().values().stream()
                .filter(found -> !found.getLabel().equals(ProcessorTime.LABEL))
                .map(found -> found.extendedInfo())
                .reduce("", String::concat);
    }

    /** Processes that want a core, mean of the last minute; negative where the system does not tell. */
    static double load() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    }
}
