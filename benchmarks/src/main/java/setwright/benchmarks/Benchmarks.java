package setwright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.profile.StackProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;
import setwright.benchmarks.growth.GrowthRun;
import setwright.benchmarks.laps.TenLaps;
import setwright.benchmarks.measure.JavaCommand;
import setwright.benchmarks.measure.Machine;
import setwright.benchmarks.measure.ProcessorTime;
import setwright.benchmarks.table.RatioRun;

/** The command {@code ./benchmark}: measures and prints tables. */
public final class Benchmarks {
    private static final String HELP = """
            Usage: ./benchmark [--table] [--only GROUPS] [--megabytes N] [--threads N] [--rounds N] [--quick]
                   ./benchmark --growth [--warm] [--record] [--rounds N] [--quick]
                   ./benchmark --stint | --laps | --logbook [--quick] [--profile]

            Prints Markdown: the table of ratios, ours over a reference that does the same or less. Both take turns, so that what
            else the machine does meets both; medians of the rounds, with the least and the most.

              --table        the table of ratios; so it is without any option
              --only GROUPS  some of its groups: start,import,diagnosis,replay,page,kernels
              --megabytes N  size of the imported file, 20 unless given; 500 and 2000 are worth a look
              --threads N    cores that both sides may use, all unless given
              --rounds N     turns of each, 5 unless given (growth: 3)

              --growth       the whole diagnosis from a file, by laps, rows per second and columns; prints tables, and writes CSV and
                             drawings into benchmarks/target/performance
              --warm         in Java machines that are warm, else in ones that have just started
              --record       writes them into docs/performance

              --stint        what a person waits for after ten laps: diagnosis, fit, and prediction of 40 candidate changes
                             with 200 draws of the car's parameters; and all of --laps
              --laps         quasi-steady laps: the envelope of a car, that of a neighbouring setup, a lap of 5 km at steps of 2 m,
                             a sweep of 60 setups; and a second of driving, the whole car in time with its driver
              --logbook      a logbook of 10,000 stints: listed, and searched
              --profile      samples where the prediction spends its time, and prints that too

              --quick        one short run each, to see that all works; its figures say little
              -h, --help     shows this text

            Figures of the clock hold only while nothing else runs: the load of the machine is printed before and after.
            """;
    private static final int USAGE = 2;
    private static final int TABLE_ROUNDS = 5;
    private static final int GROWTH_ROUNDS = 3;

    private Benchmarks() {}

    /** Runs the command. */
    public static void main(String[] arguments) throws RunnerException, IOException, InterruptedException {
        try {
            run(Wishes.read(List.of(arguments)));
        } catch (Wishes.Wrong e) {
            System.err.println("benchmark: " + e.getMessage());
            System.exit(USAGE);
        }
    }

    private static void run(Wishes wishes) throws RunnerException, IOException, InterruptedException {
        Path home = Path.of(TenLaps.home());
        if (wishes.task() == Wishes.Task.HELP) {
            System.out.print(HELP);
            return;
        }
        double load = Machine.load();
        System.out.println("Machine: " + Machine.words(home) + ".");
        System.out.printf(Locale.ROOT, "Load when it began: %.2f.%n", load);
        switch (wishes.task()) {
            case TABLE ->
                new RatioRun(
                                System.out,
                                new RatioRun.Settings(
                                        wishes.groups(),
                                        wishes.megabytes(),
                                        wishes.threads(),
                                        rounds(wishes, TABLE_ROUNDS),
                                        wishes.quick()))
                        .print();
            case GROWTH ->
                new GrowthRun(
                                System.out,
                                home.resolve(wishes.record() ? "docs/performance" : "benchmarks/target/performance"),
                                rounds(wishes, GROWTH_ROUNDS),
                                wishes.warm(),
                                wishes.quick())
                        .print();
            case STINT -> print(System.out, measure(wishes.quick(), false), load, wishes.quick());
            case LAPS -> print(System.out, measure(wishes.quick(), true), load, wishes.quick());
            case LOGBOOK ->
                print(
                        System.out,
                        new Runner(options(wishes.quick())
                                        .include(LogbookBenchmark.class.getName())
                                        .build())
                                .run(),
                        load,
                        wishes.quick());
            case HELP -> {}
        }
        if (wishes.profile()) {
            System.out.print(profile(wishes.quick()));
        }
        System.out.printf(Locale.ROOT, "%nLoad when it ended: %.2f.%n", Machine.load());
    }

    private static int rounds(Wishes wishes, int usual) {
        if (wishes.rounds() > 0) {
            return wishes.rounds();
        }
        return wishes.quick() ? 1 : usual;
    }

    private static Collection<RunResult> measure(boolean quick, boolean lapsOnly) throws RunnerException {
        ChainedOptionsBuilder options =
                options(quick).include(LapBenchmark.class.getName()).include(DriveBenchmark.class.getName());
        return new Runner((lapsOnly ? options : options.include(StintBenchmark.class.getName())).build()).run();
    }

    private static ChainedOptionsBuilder options(boolean quick) {
        return new OptionsBuilder()
                .verbosity(VerboseMode.SILENT)
                .shouldFailOnError(true)
                .forks(quick ? 1 : 2)
                .warmupIterations(quick ? 0 : 3)
                .measurementIterations(quick ? 1 : 5)
                .jvmArgs(JavaCommand.OPTIONS.toArray(String[]::new))
                .addProfiler(ProcessorTime.class)
                .jvmArgsAppend("-D" + TenLaps.HOME + "=" + TenLaps.home());
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
                Machine.load(),
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
                    ProcessorTime.of(result),
                    times.getN(),
                    Double.isNaN(diagnosis) ? "-" : String.format(Locale.ROOT, "%.3f", times.getMean() / diagnosis));
        }
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
}
