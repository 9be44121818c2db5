package setwright.fleet.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.hadoop.conf.Configuration;
import setwright.fleet.depot.Depots;
import setwright.fleet.depot.TemporaryFolder;
import setwright.fleet.ledger.Ledger;

/**
 * Makes a tree, judges it with the bare core and then with {@code fleet diagnose}, each in a fresh process with the same options and on as many cores, and
 * prints both times and their ratio. Arguments: {@code --recordings N --laps N --rate HZ --every N --threads N --tree FOLDER --turns N}; {@code --workers N}
 * lets processes of their own work for the fleet, {@code --bare-every K} lets the bare core judge one recording in K and scales its time; {@code --drivers N
 * --of-each N} measures {@code fleet summary} instead, over invented tables.
 */
public final class FleetBench {
    private static final String BARE = "--bare-core";
    private static final Set<String> OPTIONS = Set.of(
            "--recordings",
            "--laps",
            "--rate",
            "--every",
            "--threads",
            "--tree",
            "--turns",
            "--workers",
            "--bare-every",
            "--drivers",
            "--of-each");

    private final Map<String, String> options;

    private FleetBench(Map<String, String> options) {
        this.options = options;
    }

    /** Runs. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (arguments.length == 5 && arguments[0].equals(BARE)) {
            BareCore.judge(Path.of(arguments[1]), Integer.parseInt(arguments[2]), Integer.parseInt(arguments[3]))
                    .write(Path.of(arguments[4]));
            return;
        }
        FleetBench bench = new FleetBench(options(List.of(arguments)));
        if (bench.options.containsKey("--drivers")) {
            new SummaryBench(bench.number("--drivers", 0), bench.number("--of-each", 4)).run();
        } else {
            bench.race();
        }
    }

    private void race() throws IOException, InterruptedException {
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-fleetbench")) {
            Path tree = options.containsKey("--tree")
                    ? Path.of(options.get("--tree"))
                    : folder.path().resolve("tree");
            if (!Files.exists(tree)) {
                new InventedTree(
                                number("--recordings", 60),
                                number("--laps", 6),
                                number("--rate", 50),
                                number("--every", 100),
                                2)
                        .write(tree);
            }
            for (int turn = 0; turn < number("--turns", 1); turn++) {
                race(tree, folder.path().resolve("out" + turn), folder.path().resolve("bare" + turn));
            }
        }
    }

    private void race(Path tree, Path out, Path answer) throws IOException, InterruptedException {
        int workers = number("--workers", 0);
        int cores = workers > 0 ? workers : number("--threads", 2);
        int every = number("--bare-every", 1);
        Taken sample = Taken.by(
                List.of(),
                FleetBench.class.getName(),
                BARE,
                tree.toString(),
                String.valueOf(cores),
                String.valueOf(every),
                answer.toString());
        BareAnswer judged = BareAnswer.read(answer);
        Taken bare = judged.scaled(sample);
        List<String> words =
                new ArrayList<>(List.of("fleet", "diagnose", "--in", tree.toString(), "--out", out.toString()));
        words.addAll(
                workers > 0
                        ? List.of("--workers", String.valueOf(workers))
                        : List.of("--master", "local[" + cores + "]"));
        Taken fleet = Taken.by(List.of(), "setwright.app.Main", words.toArray(new String[0]));
        Map<String, String> ends = new TreeMap<>();
        new Ledger(Depots.open(out.toString(), new Configuration(false)))
                .read()
                .forEach((path, done) -> ends.put(path, done.status().words()));
        System.out.printf(Locale.ROOT, "%s, %d cores%n", System.getProperty("java.vm.version"), cores);
        System.out.println("bare core, " + Ends.counted(judged.ends()));
        System.out.println("fleet" + (workers > 0 ? " with workers, " : ", ") + Ends.counted(ends));
        System.out.printf(
                Locale.ROOT,
                "bare core %.1f s%s, fleet %.1f s: %+.1f %%; processor time %.1f s%s and %.1f s: %+.1f %%%n",
                bare.wallS(),
                scaled(judged, sample.wallS()),
                fleet.wallS(),
                100.0 * (fleet.wallS() / bare.wallS() - 1.0),
                bare.processorS(),
                scaled(judged, sample.processorS()),
                fleet.processorS(),
                100.0 * (fleet.processorS() / bare.processorS() - 1.0));
        Ends.check(judged.ends(), ends, InventedTree.broken(tree));
    }

    private static String scaled(BareAnswer judged, double measuredS) {
        return judged.ends().size() == judged.all()
                ? ""
                : String.format(
                        Locale.ROOT,
                        " (scaled: %.1f s for %d of %d)",
                        measuredS,
                        judged.ends().size(),
                        judged.all());
    }

    private static Map<String, String> options(List<String> arguments) {
        Map<String, String> options = new TreeMap<>();
        for (int i = 0; i < arguments.size(); i += 2) {
            if (!OPTIONS.contains(arguments.get(i)) || i + 1 == arguments.size()) {
                throw new IllegalArgumentException(
                        arguments.get(i) + " is no option with a value; there are " + new TreeSet<>(OPTIONS));
            }
            options.put(arguments.get(i), arguments.get(i + 1));
        }
        return options;
    }

    private int number(String name, int usual) {
        return Integer.parseInt(options.getOrDefault(name, String.valueOf(usual)));
    }
}
