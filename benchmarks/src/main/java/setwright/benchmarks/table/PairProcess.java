package setwright.benchmarks.table;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import setwright.benchmarks.laps.TenLaps;
import setwright.benchmarks.measure.FreshProcess;
import setwright.benchmarks.measure.JavaCommand;
import setwright.benchmarks.measure.PairedTimes;
import setwright.benchmarks.measure.Spent;

/** A process in which a pair takes turns, first to warm up, then on the clock. */
public final class PairProcess {
    private static final int WARM_UP = 3;
    private static final int FIGURES = 4;

    private PairProcess() {}

    /** {@code KIND FILE FOLDER THREADS WARM-UP ROUNDS}: writes a line of figures for each round. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[2]);
        Pair pair =
                Pair.Kind.valueOf(arguments[0]).prepare(Path.of(arguments[1]), folder, Integer.parseInt(arguments[3]));
        try (PrintStream out = new PrintStream(Files.newOutputStream(times(folder)), true, StandardCharsets.UTF_8)) {
            PairedTimes times = run(pair, Integer.parseInt(arguments[4]), Integer.parseInt(arguments[5]));
            for (int i = 0; i < times.ours().size(); i++) {
                Spent ours = times.ours().get(i);
                Spent reference = times.reference().get(i);
                out.println(ours.wallS() + " " + ours.processorS() + " " + reference.wallS() + " "
                        + reference.processorS());
            }
        }
        System.exit(0); // pools of the core and DuckDB's threads may outlive us
    }

    /** Lets both take turns in this process. */
    static PairedTimes run(Pair pair, int warmUp, int rounds) throws Exception {
        List<Spent> ours = new ArrayList<>();
        List<Spent> reference = new ArrayList<>();
        for (int round = -warmUp; round < rounds; round++) {
            Spent one = Spent.on(pair::ours).over(pair.oursAtOnce());
            Spent other = Spent.on(pair::reference);
            if (round >= 0) {
                ours.add(one);
                reference.add(other);
            }
        }
        return new PairedTimes(ours, reference);
    }

    /** Starts one and returns what it measured. */
    static PairedTimes start(Pair.Kind kind, Path file, Path folder, int threads, int rounds, boolean quick)
            throws IOException, InterruptedException {
        FreshProcess.run(
                JavaCommand.of(
                        List.of(JavaCommand.cores(threads), "-D" + TenLaps.HOME + "=" + TenLaps.home()),
                        PairProcess.class,
                        List.of(
                                kind.name(),
                                file.toString(),
                                folder.toString(),
                                String.valueOf(threads),
                                String.valueOf(quick ? 0 : WARM_UP),
                                String.valueOf(rounds))),
                folder,
                Map.of());
        List<Spent> ours = new ArrayList<>();
        List<Spent> reference = new ArrayList<>();
        for (String line : Files.readAllLines(times(folder))) {
            String[] figures = line.split(" ", FIGURES);
            ours.add(new Spent(Double.parseDouble(figures[0]), Double.parseDouble(figures[1]), Double.NaN));
            reference.add(new Spent(Double.parseDouble(figures[2]), Double.parseDouble(figures[3]), Double.NaN));
        }
        return new PairedTimes(ours, reference);
    }

    private static Path times(Path folder) {
        return folder.resolve("times.txt");
    }
}
