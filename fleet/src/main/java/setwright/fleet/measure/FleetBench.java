package setwright.fleet.measure;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import setwright.fleet.depot.TemporaryFolder;

/**
 * Makes a tree, judges it with the bare core and then with {@code fleet diagnose}, each in a fresh process with the same options and as many threads, and
 * prints both times and their ratio. Arguments: {@code --recordings N --laps N --rate HZ --threads N --tree FOLDER --turns N --keep}.
 */
public final class FleetBench {
    private static final String BARE = "--bare-core";

    private FleetBench() {}

    /** Runs. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (arguments.length == 3 && arguments[0].equals(BARE)) {
            System.out.println(BareCore.judge(Path.of(arguments[1]), Integer.parseInt(arguments[2])));
            return;
        }
        Map<String, String> options = options(List.of(arguments));
        int threads = number(options, "--threads", 2);
        InventedTree invented = new InventedTree(
                number(options, "--recordings", 60),
                number(options, "--laps", 6),
                number(options, "--rate", 50),
                number(options, "--every", 100),
                2);
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-fleetbench")) {
            Path tree = options.containsKey("--tree")
                    ? Path.of(options.get("--tree"))
                    : folder.path().resolve("tree");
            if (!Files.exists(tree)) {
                invented.write(tree);
            }
            System.out.printf(
                    Locale.ROOT,
                    "%s, %d recordings made, %d threads%n",
                    System.getProperty("java.vm.version"),
                    invented.recordings(),
                    threads);
            for (int turn = 0; turn < number(options, "--turns", 1); turn++) {
                Path out = folder.path().resolve("out" + turn);
                Taken bare = taken(FleetBench.class.getName(), BARE, tree.toString(), String.valueOf(threads));
                Taken fleet = taken(
                        "setwright.app.Main",
                        "fleet",
                        "diagnose",
                        "--in",
                        tree.toString(),
                        "--out",
                        out.toString(),
                        "--master",
                        "local[" + threads + "]");
                System.out.printf(
                        Locale.ROOT,
                        "bare core %.1f s, fleet %.1f s: %+.1f %%; processor time %.1f s and %.1f s: %+.1f %%%n",
                        bare.wallS(),
                        fleet.wallS(),
                        100.0 * (fleet.wallS() / bare.wallS() - 1.0),
                        bare.processorS(),
                        fleet.processorS(),
                        100.0 * (fleet.processorS() / bare.processorS() - 1.0));
            }
        }
    }

    private static Map<String, String> options(List<String> arguments) {
        Map<String, String> options = new TreeMap<>();
        for (int i = 0; i + 1 < arguments.size(); i += 2) {
            options.put(arguments.get(i), arguments.get(i + 1));
        }
        return options;
    }

    private static int number(Map<String, String> options, String name, int usual) {
        return Integer.parseInt(options.getOrDefault(name, String.valueOf(usual)));
    }

    /**
     * What a process took.
     *
     * @param wallS       from its start to its end, s
     * @param processorS  on all processors together, to half a second, s; tells more where other work goes on
     */
    private record Taken(double wallS, double processorS) {}

    private static Taken taken(String main, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
        command.addAll(List.of(arguments));
        long began = System.nanoTime();
        Process process = new ProcessBuilder(command).inheritIO().start();
        Duration processor = Duration.ZERO;
        do {
            processor = process.info().totalCpuDuration().orElse(processor);
        } while (!process.waitFor(500, TimeUnit.MILLISECONDS));
        double wallS = 1.0e-9 * (System.nanoTime() - began);
        // 4: nothing but recordings without enough evidence
        if (process.exitValue() != 0 && process.exitValue() != 4) {
            throw new IOException(main + " ended with code " + process.exitValue());
        }
        return new Taken(wallS, 1.0e-3 * processor.toMillis());
    }
}
