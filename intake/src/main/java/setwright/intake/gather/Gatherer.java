package setwright.intake.gather;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import setwright.intake.problem.InputProblem;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** Reads the files of a run and brings all they hold into one table. */
public final class Gatherer {
    /** Of the shorter; files that tell no common motion must lie this much over each other to be taken for one run. */
    private static final double SAME_CLOCK_SHARE = 0.9;

    private Gatherer() {}

    /**
     * Reads a run.
     *
     * @return one row for each moment of the quickest part, with what was done for it as remarks
     * @throws InputProblem when a file cannot be used, or nothing tells how two of them belong together
     */
    public static Table read(RecordingFiles files) {
        List<Table> main = Formats.read(files.main());
        if (main.size() == 1 && files.beside().isEmpty()) {
            return main.get(0);
        }
        List<String> remarks = new ArrayList<>();
        List<TimedTable> parts = new ArrayList<>(timed(main, remarks));
        TimedTable witness = telling(parts);
        double firstS = parts.stream().mapToDouble(TimedTable::firstS).min().orElseThrow();
        double lastS = parts.stream().mapToDouble(TimedTable::lastS).max().orElseThrow();
        for (Path file : files.beside()) {
            List<TimedTable> others = timed(Formats.read(file), remarks);
            double offset = offset(witness, telling(others), remarks);
            others.forEach(other -> parts.add(other.later(offset)));
        }
        TimedTable base = parts.stream()
                .min(Comparator.comparingDouble(TimedTable::stepS))
                .orElseThrow();
        return new Table(
                files.name(), together(base, parts, firstS, lastS), base.table().firstRow(), remarks);
    }

    /** Tables without a time say nothing, unless none has one. */
    private static List<TimedTable> timed(List<Table> tables, List<String> remarks) {
        List<TimedTable> timed = new ArrayList<>();
        Optional<InputProblem> why = Optional.empty();
        for (Table table : tables) {
            remarks.addAll(table.remarks());
            try {
                timed.add(TimedTable.of(table));
            } catch (InputProblem problem) {
                why = Optional.of(problem);
                remarks.add("Left out of " + table.file() + ": "
                        + String.join(
                                ", ",
                                table.columns().stream()
                                        .map(TableColumn::header)
                                        .toList())
                        + ", which have no time of their own.");
            }
        }
        if (timed.isEmpty()) {
            throw why.orElseThrow();
        }
        return timed;
    }

    /** The one that saw most of the motion. */
    private static TimedTable telling(List<TimedTable> tables) {
        return Witness.TELLING.stream()
                .flatMap(quantity -> tables.stream()
                        .filter(table -> Witness.of(table, quantity).isPresent()))
                .findFirst()
                .orElse(tables.get(0));
    }

    private static double offset(TimedTable main, TimedTable other, List<String> remarks) {
        Optional<ClockMatch> match = ClockMatch.find(main, other);
        if (match.isPresent()) {
            ClockMatch found = match.get();
            remarks.add(String.format(
                    Locale.ROOT,
                    "%s was put beside %s: its clock is %.2f s %s, by their %s (correlation %.4f over %.0f s).",
                    other.table().file(),
                    main.table().file(),
                    Math.abs(found.offsetS()),
                    found.offsetS() > 0.0 ? "behind" : "ahead",
                    found.quantity().words(),
                    found.correlation(),
                    found.commonS()));
            return found.offsetS();
        }
        double common = Math.min(main.lastS(), other.lastS()) - Math.max(main.firstS(), other.firstS());
        double shorter = Math.min(main.lastS() - main.firstS(), other.lastS() - other.firstS());
        if (!(common >= SAME_CLOCK_SHARE * shorter)) {
            throw InputProblem.in(other.table().file())
                    .expected("the clock of " + main.table().file()
                            + ", or a speed or position that tells by how much they" + " differ")
                    .found(String.format(
                            Locale.ROOT,
                            "times of %.1f to %.1f s beside %.1f to %.1f s, and no motion that both tell of",
                            other.firstS(),
                            other.lastS(),
                            main.firstS(),
                            main.lastS()))
                    .advice("Export both on one clock, or with the speed in both.")
                    .problem();
        }
        remarks.add(other.table().file() + " is taken to be on the clock of "
                + main.table().file() + ": nothing that both recorded could show a difference.");
        return 0.0;
    }

    private static List<TableColumn> together(TimedTable base, List<TimedTable> parts, double firstS, double lastS) {
        int from = 0;
        int to = base.timesS().length;
        while (from < to && base.timesS()[from] < firstS - base.stepS()) {
            from++;
        }
        while (to > from && base.timesS()[to - 1] > lastS + base.stepS()) {
            to--;
        }
        double[] times = Arrays.copyOfRange(base.timesS(), from, to);
        Set<String> taken = new HashSet<>();
        List<TableColumn> columns = new ArrayList<>();
        columns.add(TableColumn.of(free("time", taken), "s", times));
        for (TimedTable part : parts) {
            for (int i = 0; i < part.table().columns().size(); i++) {
                TableColumn column = part.table().columns().get(i);
                if (i != part.timeIndex()) {
                    double[] values = part == base
                            ? Arrays.copyOfRange(column.toArray(), from, to)
                            : OntoTimes.read(column, part, times);
                    columns.add(new TableColumn(
                            free(column.header(), taken),
                            column.unitRow(),
                            values,
                            column.firstBad(),
                            column.badCount()));
                }
            }
        }
        return columns;
    }

    /** A name that no other column has. */
    private static String free(String header, Set<String> taken) {
        String name = header;
        for (int i = 2; !taken.add(name); i++) {
            name = header + " #" + i;
        }
        return name;
    }
}
