package setwright.app.truthbench;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/** Runs random cases with a known truth and prints how often the answers are right; started by {@code ./truthbench}. */
public final class TruthBench {
    private TruthBench() {}

    /** Runs the bench; see {@link BenchOptions} for the arguments. */
    public static void main(String[] args) {
        if (List.of(args).equals(List.of("--floor"))) {
            BenchFloor.run().write();
            System.err.println("truthbench: wrote " + BenchFloor.file().getFileName());
            return;
        }
        Optional<BenchOptions> read = BenchOptions.read(List.of(args));
        if (read.isEmpty()) {
            System.err.println(BenchOptions.USAGE);
            System.exit(2);
        }
        BenchOptions options = read.orElseThrow();
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (options.hands()) {
            HandsRun.of(options, line -> System.err.println("truthbench: " + line))
                    .print(out);
            return;
        }
        AtomicInteger done = new AtomicInteger();
        BenchRun run;
        try {
            run = BenchRun.of(
                    options,
                    line -> System.err.println(
                            "truthbench: " + done.incrementAndGet() + "/" + options.cases() + " " + line));
        } catch (IllegalStateException e) {
            System.err.println("truthbench: " + e.getMessage());
            System.exit(3);
            return;
        }
        out.println("seed " + options.seed() + ", " + run.outcomes().size() + " cases, " + run.lost()
                + " stints lost and driven again, " + run.undriveable().size() + " cases left out: "
                + run.undriveable());
        print(run.outcomes(), out);
        if (options.record()) {
            Path page = BenchPage.record(run, options);
            System.err.println("truthbench: wrote " + page.getFileName()
                    + "; read what is written by hand below the tables again and put it right");
        }
    }

    private static void print(List<Outcome> outcomes, PrintStream out) {
        out.println(BenchTables.cases(outcomes).text());
        BenchPage.tables(outcomes).forEach((title, table) -> {
            out.println(title + "\n");
            out.println(table.text());
        });
    }
}
