package setwright.benchmarks.table;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.openjdk.jmh.runner.RunnerException;
import setwright.benchmarks.kernel.KernelRows;
import setwright.benchmarks.laps.FileShape;
import setwright.benchmarks.laps.TenLaps;
import setwright.benchmarks.laps.WrittenLaps;
import setwright.benchmarks.measure.Figure;
import setwright.benchmarks.measure.MarkdownTable;
import setwright.benchmarks.measure.PairedTimes;
import setwright.benchmarks.measure.RatioTable;
import setwright.benchmarks.measure.Scratch;
import setwright.benchmarks.measure.Spent;

/** One run that prints the whole table of ratios. */
public final class RatioRun {
    private static final long MEGABYTE = 1_000_000L;
    /** Above it a file is read a few times only. */
    private static final int LARGE_MEGABYTES = 200;

    private static final int ROUNDS_OF_LARGE = 3;
    /** Files up to some megabytes hold laps of their own only; larger ones repeat more. */
    private static final int MANY_LAPS = 30;

    private static final int QUESTIONS = 100;

    private final PrintStream out;
    private final Settings settings;
    private final List<String> notes = new ArrayList<>();
    private final List<Peak> peaks = new ArrayList<>();

    /**
     * What is measured.
     *
     * @param groups     of the table
     * @param megabytes  of the imported file
     * @param threads    that both sides may use
     * @param rounds     of each pair
     * @param quick      hardly warmed up and once only, to see that all works
     */
    public record Settings(Set<Group> groups, int megabytes, int threads, int rounds, boolean quick) {
        public Settings {
            groups = Set.copyOf(groups);
        }

        private int importRounds() {
            return megabytes > LARGE_MEGABYTES ? Math.min(rounds, ROUNDS_OF_LARGE) : rounds;
        }
    }

    private record Peak(String what, double bytes, PairedTimes times) {}

    /** Makes one that prints there. */
    public RatioRun(PrintStream out, Settings settings) {
        this.out = out;
        this.settings = settings;
    }

    /** Measures and prints. */
    public void print() throws IOException, InterruptedException, RunnerException {
        RatioTable table = new RatioTable(out);
        try (Scratch scratch = Scratch.make()) {
            for (Group group : Group.values()) {
                if (settings.groups().contains(group)) {
                    print(group, table, scratch.folder());
                }
            }
        }
        memory();
        out.println();
        notes.forEach(note -> out.println("- " + note));
    }

    private void print(Group group, RatioTable table, Path folder)
            throws IOException, InterruptedException, RunnerException {
        switch (group) {
            case START -> start(table, new WholeCommands(folder, settings.threads()));
            case IMPORT -> imports(table, folder);
            case DIAGNOSIS -> diagnosis(table, folder);
            case REPLAY -> {
                pair(table, "", Pair.Kind.REPLAY, folder, folder);
                PairedTimes lap = pair(Pair.Kind.LAP, folder, folder, settings.rounds());
                double drivenS = TenLaps.read().stint().goodLaps().get(0).timeS();
                table.alone(
                        Pair.Kind.LAP.words(),
                        lap.ours(),
                        "no reference; the lap takes " + Figure.time(drivenS) + " to drive");
            }
            case PAGE -> page(table, folder);
            case KERNELS -> notes.add(new KernelRows(table, settings.rounds(), settings.quick()).print(folder));
        }
    }

    private void start(RatioTable table, WholeCommands commands) throws IOException, InterruptedException {
        table.row(
                "`setwright --help`, from start to end",
                WholeCommands.turns(commands.setwright("--help"), commands.nothing(), settings.rounds()),
                "a Java machine that does nothing");
    }

    private void imports(RatioTable table, Path folder) throws IOException, InterruptedException {
        Path file = WrittenLaps.drive(settings.megabytes() > LARGE_MEGABYTES ? MANY_LAPS : TenLaps.LAPS)
                .writeBytes(folder, settings.megabytes() * MEGABYTE);
        double bytes = (double) Files.size(file);
        String size = ", " + Figure.size(bytes);
        WholeCommands commands = new WholeCommands(folder, settings.threads());
        Path copied = folder.resolve("copied.parquet");
        PairedTimes add = WholeCommands.turns(
                commands.add(file), commands.duck("copy", file.toString(), copied.toString()), settings.importRounds());
        table.row(
                "`setwright add`, whole command" + size,
                add,
                "DuckDB, COPY of read_csv to Parquet, zstd, whole process, same threads");
        PairedTimes map = WholeCommands.turns(
                commands.setwright("map", file.toString(), "--car", WholeCommands.car()),
                commands.duck("read", file.toString()),
                settings.importRounds());
        table.row(
                "`setwright map`, whole command" + size,
                map,
                "DuckDB, read_csv into a table in memory, whole process, same threads");
        peaks.add(new Peak("`setwright add` against DuckDB's copy", bytes, add));
        peaks.add(new Peak("`setwright map` against DuckDB's table", bytes, map));
        for (Pair.Kind kind : List.of(Pair.Kind.IMPORT, Pair.Kind.READ)) {
            table.row(
                    kind.words() + ", warm" + size,
                    pair(kind, file, folder, settings.importRounds()),
                    kind.reference());
        }
        Files.delete(file);
    }

    private void diagnosis(RatioTable table, Path folder) throws IOException, InterruptedException {
        WrittenLaps laps = WrittenLaps.drive(settings.quick() ? TenLaps.LAPS : MANY_LAPS);
        WholeCommands commands = new WholeCommands(folder, settings.threads());
        for (int count : settings.quick() ? List.of(3) : List.of(TenLaps.LAPS, MANY_LAPS)) {
            Path file = laps.write(folder, FileShape.of(count));
            String size = ", " + count + " laps, " + Figure.size((double) Files.size(file));
            pair(table, ", warm" + size, Pair.Kind.SCAN, file, folder);
            pair(table, ", warm" + size, Pair.Kind.DIAGNOSIS, file, folder);
            PairedTimes diagnose = WholeCommands.turns(
                    commands.setwright("diagnose", file.toString(), "--car", WholeCommands.car()),
                    commands.duck("read", file.toString()),
                    settings.rounds());
            table.row(
                    "`setwright diagnose`, whole command" + size,
                    diagnose,
                    "DuckDB, read_csv into a table in memory, whole process, same threads");
            peaks.add(new Peak("`setwright diagnose` against DuckDB's table", (double) Files.size(file), diagnose));
            Files.delete(file);
        }
    }

    private void page(RatioTable table, Path folder) throws IOException, InterruptedException {
        Path file = WrittenLaps.drive(TenLaps.LAPS).write(folder, FileShape.of(TenLaps.LAPS));
        Path logbook = folder.resolve("page");
        new WholeCommands(folder, settings.threads())
                .setwright("add", file.toString(), "--car", WholeCommands.car(), "--logbook", logbook.toString())
                .run();
        try (PageLatency page = new PageLatency(logbook, settings.threads())) {
            int questions = settings.quick() ? 2 : QUESTIONS;
            for (boolean rough : new boolean[] {true, false}) {
                page.measure(settings.quick() ? 1 : QUESTIONS / 2, rough);
                PairedTimes times = page.measure(questions, rough);
                table.row(
                        (rough
                                        ? "Page, what-if while an item is dragged (40 draws)"
                                        : "Page, what-if in full (200 draws)")
                                + ", over HTTP; 95 % within " + Figure.time(PageLatency.slowTwentieth(times.ours())),
                        times,
                        "a request to the same server that calculates nothing");
            }
        }
        Scratch.remove(logbook);
        Files.delete(file);
    }

    private void pair(RatioTable table, String size, Pair.Kind kind, Path file, Path folder)
            throws IOException, InterruptedException {
        table.row(kind.words() + size, pair(kind, file, folder, settings.rounds()), kind.reference());
    }

    private PairedTimes pair(Pair.Kind kind, Path file, Path folder, int rounds)
            throws IOException, InterruptedException {
        return PairProcess.start(kind, file, folder, settings.threads(), rounds, settings.quick());
    }

    private void memory() {
        if (peaks.isEmpty()) {
            return;
        }
        MarkdownTable table = new MarkdownTable(
                out, "most memory held", "file", "ours", "over file size", "reference", "over file size");
        for (Peak peak : peaks) {
            double ours = PairedTimes.of(peak.times().ours(), Spent::peakBytes).most();
            double theirs =
                    PairedTimes.of(peak.times().reference(), Spent::peakBytes).most();
            table.row(
                    peak.what(),
                    Figure.size(peak.bytes()),
                    Figure.size(ours),
                    Figure.digits(ours / peak.bytes()),
                    Figure.size(theirs),
                    Figure.digits(theirs / peak.bytes()));
        }
    }
}
