package setwright.intake.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.HeldNumbers;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/**
 * The column that tells the time of each row, found by its words or by its steady rise.
 */
public final class TimeColumn {
    /** Slowest and fastest rates of a logger that make sense, Hz. */
    private static final double SLOWEST_HZ = 2.0;

    /** A fuel level once in ten seconds still tells something. */
    private static final double SLOWEST_BESIDE_HZ = 0.1;

    private static final double FASTEST_HZ = 5000.0;
    /** The steps of a clock scatter little about their median; a distance or a fuel level does not rise like that. */
    private static final double STEADY = 0.3;

    /** By so many a clock is told from anything else that never falls. */
    private static final int TELLING_ROWS = 100_000;

    private final int index;
    private final Unit unit;
    private final double[] timesS;
    private final String physics;

    private TimeColumn(int index, Unit unit, double[] timesS, String physics) {
        this.index = index;
        this.unit = unit;
        this.timesS = timesS;
        this.physics = physics;
    }

    /** Returns its place among the table's columns. */
    public int index() {
        return index;
    }

    Unit unit() {
        return unit;
    }

    /** One per row, s, rising; equal stamps (a clock coarser than the rate) are spread evenly. */
    public double[] timesS() {
        return timesS;
    }

    /** Why, by the data. */
    String physics() {
        return physics;
    }

    /**
     * Finds the time of a table that is put beside another and may be slow, such as one position or temperature a second.
     *
     * @throws InputProblem when it has none
     */
    public static TimeColumn ofSlow(Table table) {
        return find(table, Optional.empty(), SLOWEST_BESIDE_HZ);
    }

    static TimeColumn find(Table table, Optional<MapEntry> given) {
        return find(table, given, SLOWEST_HZ);
    }

    private static TimeColumn find(Table table, Optional<MapEntry> given, double slowestHz) {
        int best = -1;
        double bestScore = 0.0;
        double[] scores = table.columns().parallelStream()
                .mapToDouble(column -> given.isEmpty()
                        ? score(column)
                        : column.header().equals(given.get().column()) ? 1.0 : 0.0)
                .toArray();
        for (int i = 0; i < scores.length; i++) {
            if (scores[i] > bestScore) {
                best = i;
                bestScore = scores[i];
            }
        }
        if (best < 0) {
            throw InputProblem.in(table.file())
                    .expected("a column with the time of each row, rising by the same step")
                    .found("none among " + headers(table))
                    .advice("Export the time as well, or name its column in a channel map.")
                    .problem();
        }
        TableColumn column = table.columns().get(best);
        double[] raw = refuseFalling(table, column);
        double step = Robust.median(steps(raw));
        Unit unit = given.map(MapEntry::unit).orElseGet(() -> unit(column, step, slowestHz));
        double rate = 1.0 / (step * unit.factor());
        if (!(rate >= slowestHz && rate <= FASTEST_HZ)) {
            throw InputProblem.in(table.file())
                    .column(column.header())
                    .expected(Search.text("between %.4g", slowestHz) + " and " + (int) FASTEST_HZ + " rows a second")
                    .found(Search.text("%.4g rows a second when read in %s", rate, unit))
                    .advice("Correct the unit of time in the channel map, or export at a higher rate.")
                    .problem();
        }
        double[] seconds = new double[raw.length];
        for (int i = 0; i < raw.length; i++) {
            seconds[i] = raw[i] * unit.factor();
        }
        String physics = Search.text("it never falls and steps by %.4g %s", step, unit);
        return new TimeColumn(best, unit, spread(seconds), physics);
    }

    private static Map<Quantity, Double> wordsOf(TableColumn column) {
        return Vocabulary.scores(HeaderWords.of(column));
    }

    private static double score(TableColumn column) {
        double words = wordsOf(column).getOrDefault(Quantity.TIME, 0.0);
        return risesSteadily(column) ? 1.0 + words : words >= 0.5 && mostlyRises(column) ? words : 0.0;
    }

    private static boolean mostlyRises(TableColumn column) {
        double[] steps = steps(Robust.finite(column.toArray()));
        long rising = java.util.Arrays.stream(steps).filter(step -> step >= 0.0).count();
        return column.finiteCount() > 1 && rising > 0.5 * steps.length;
    }

    private static boolean risesSteadily(TableColumn column) {
        if (falls(column)) {
            return false;
        }
        double[] values = Robust.finite(
                column.part(0, Math.min(TELLING_ROWS, column.size())).toArray());
        if (values.length < 2) {
            return false;
        }
        double[] steps = steps(values);
        double median = Robust.median(steps);
        return median > 0.0 && Robust.scaledMad(steps) <= STEADY * median && !isRowNumber(column, steps);
    }

    private static boolean falls(TableColumn column) {
        double latest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < column.size(); i++) {
            double value = column.get(i);
            if (value < latest) {
                return true;
            }
            latest = Double.isNaN(value) ? latest : value;
        }
        return false;
    }

    /** A column that counts rows says nothing about seconds, unless its words do. */
    private static boolean isRowNumber(TableColumn column, double[] steps) {
        boolean counts = java.util.Arrays.stream(steps).allMatch(step -> step == 1.0);
        return counts && !wordsOf(column).containsKey(Quantity.TIME);
    }

    private static double[] steps(double[] values) {
        double[] steps = new double[Math.max(0, values.length - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = values[i + 1] - values[i];
        }
        // Equal stamps come from a coarse clock; the mean step is then the better measure.
        long zero = java.util.Arrays.stream(steps).filter(step -> step == 0.0).count();
        if (2 * zero > steps.length) {
            double mean = (values[values.length - 1] - values[0]) / steps.length;
            java.util.Arrays.fill(steps, mean);
        }
        return steps;
    }

    private static double[] refuseFalling(Table table, TableColumn column) {
        double[] values = column.toArray();
        double latest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < values.length; i++) {
            if (values[i] < latest) {
                throw InputProblem.in(table.file())
                        .row(table.lineOf(i))
                        .column(column.header())
                        .value(Double.toString(values[i]))
                        .expected("a time not before " + latest + ", which an earlier line says")
                        .found(Double.toString(values[i]))
                        .advice(
                                "Cut the file there: it seems to hold more than one recording, or its rows are out of order.")
                        .problem();
            }
            latest = Double.isNaN(values[i]) ? latest : values[i];
        }
        return fillMissing(values);
    }

    /** A row without a time was still taken between its neighbours. */
    private static double[] fillMissing(double[] values) {
        if (HeldNumbers.finite(values) == values.length) {
            return values;
        }
        double step = Robust.median(steps(values));
        double[] out = values.clone();
        for (int i = 0; i < out.length; i++) {
            if (Double.isNaN(out[i])) {
                int next = i;
                while (next < out.length && Double.isNaN(out[next])) {
                    next++;
                }
                double before = i > 0 ? out[i - 1] : values[next] - (next + 1) * step;
                double rise = next < out.length ? (values[next] - before) / (next - i + 1) : step;
                for (int k = i; k < next; k++) {
                    out[k] = before + rise * (k - i + 1);
                }
            }
        }
        return out;
    }

    private static Unit unit(TableColumn column, double step, double slowestHz) {
        List<Unit> fitting = new ArrayList<>();
        Optional<Unit> declared = HeaderWords.of(column).unitFor(Quantity.TIME);
        declared.ifPresent(fitting::add);
        fitting.addAll(Units.of(Dimension.TIME));
        for (Unit unit : fitting) {
            double rate = 1.0 / (step * unit.factor());
            if (rate >= slowestHz && rate <= FASTEST_HZ) {
                return unit;
            }
        }
        return fitting.get(0);
    }

    private static double[] spread(double[] times) {
        double[] out = times.clone();
        int i = 0;
        while (i < out.length) {
            int next = i + 1;
            while (next < out.length && times[next] == times[i]) {
                next++;
            }
            int size = next - i;
            double span = next < out.length ? times[next] - times[i] : 0.0;
            for (int k = 1; k < size; k++) {
                out[i + k] = times[i] + span * k / size;
            }
            i = next;
        }
        return out;
    }

    private static String headers(Table table) {
        return String.join(
                ", ", table.columns().stream().map(TableColumn::header).toList());
    }
}
