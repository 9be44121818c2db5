package setwright.intake.gather;

import java.util.stream.IntStream;
import setwright.core.numerics.Robust;
import setwright.intake.map.TimeColumn;
import setwright.intake.table.Table;

/** A table with the time of each row. */
final class TimedTable {
    private final Table table;
    private final int timeIndex;
    private final double[] timesS;
    private final double stepS;

    private TimedTable(Table table, int timeIndex, double[] timesS) {
        this.table = table;
        this.timeIndex = timeIndex;
        this.timesS = timesS;
        this.stepS = Robust.median(IntStream.range(1, timesS.length)
                .mapToDouble(i -> timesS[i] - timesS[i - 1])
                .toArray());
    }

    /**
     * Finds the time.
     *
     * @throws setwright.intake.problem.InputProblem when there is none
     */
    static TimedTable of(Table table) {
        TimeColumn time = TimeColumn.ofSlow(table);
        return new TimedTable(table, time.index(), time.timesS());
    }

    /** Returns the same with its clock put forward. */
    TimedTable later(double byS) {
        double[] moved = timesS.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += byS;
        }
        return new TimedTable(table, timeIndex, moved);
    }

    Table table() {
        return table;
    }

    int timeIndex() {
        return timeIndex;
    }

    /** Rising, s. Not to be changed. */
    double[] timesS() {
        return timesS;
    }

    /** The usual time between two rows, s. */
    double stepS() {
        return stepS;
    }

    double firstS() {
        return timesS[0];
    }

    double lastS() {
        return timesS[timesS.length - 1];
    }
}
