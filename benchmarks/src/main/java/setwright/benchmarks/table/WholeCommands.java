package setwright.benchmarks.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import setwright.benchmarks.laps.TenLaps;
import setwright.benchmarks.measure.FreshProcess;
import setwright.benchmarks.measure.JavaCommand;
import setwright.benchmarks.measure.PairedTimes;
import setwright.benchmarks.measure.Scratch;
import setwright.benchmarks.measure.Spent;

/** Commands as people give them, from start to end, each in a process of its own; so are their references. */
final class WholeCommands {
    private final Path folder;
    private final int threads;

    /**
     * Makes them.
     *
     * @param folder   to work in
     * @param threads  that both sides may use
     */
    WholeCommands(Path folder, int threads) {
        this.folder = folder;
        this.threads = threads;
    }

    /** A process, which leaves nothing behind that would help the next one. */
    @FunctionalInterface
    interface Once {
        Spent run() throws IOException, InterruptedException;
    }

    /** Lets both take turns; the first turn finds files and classes in the system's memory for the others and does not count. */
    static PairedTimes turns(Once ours, Once reference, int rounds) throws IOException, InterruptedException {
        List<Spent> one = new ArrayList<>();
        List<Spent> other = new ArrayList<>();
        for (int round = rounds > 1 ? -1 : 0; round < rounds; round++) {
            Spent mine = ours.run();
            Spent theirs = reference.run();
            if (round >= 0) {
                one.add(mine);
                other.add(theirs);
            }
        }
        return new PairedTimes(one, other);
    }

    /** The program with these words. */
    Once setwright(String... words) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(TenLaps.home(), "setwright")
                .toAbsolutePath()
                .normalize()
                .toString());
        command.addAll(List.of(words));
        return () -> FreshProcess.run(command, folder, environment());
    }

    /** The import of a file into a logbook that is gone afterwards. */
    Once add(Path file) {
        Path logbook = folder.resolve("logbook");
        Once add = setwright("add", file.toString(), "--car", car(), "--logbook", logbook.toString());
        return () -> {
            Spent spent = add.run();
            Scratch.remove(logbook);
            return spent;
        };
    }

    /** DuckDB in a Java machine, as our own program has it. */
    Once duck(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.add(String.valueOf(threads));
        return java(Duck.class, all);
    }

    /** A Java machine that does nothing. */
    Once nothing() {
        return java(Nothing.class, List.of());
    }

    private Once java(Class<?> main, List<String> arguments) {
        List<String> command = JavaCommand.of(List.of(JavaCommand.cores(threads)), main, arguments);
        return () -> FreshProcess.run(command, folder, Map.of());
    }

    private Map<String, String> environment() {
        return Map.of("SETWRIGHT_JAVA_OPTS", JavaCommand.cores(threads));
    }

    static String car() {
        return TenLaps.folder().resolve("car.yaml").toAbsolutePath().normalize().toString();
    }
}
