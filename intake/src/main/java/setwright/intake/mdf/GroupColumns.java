package setwright.intake.mdf;

import java.util.List;
import setwright.intake.table.TableColumn;

/** Collects the records of one channel group in its columns. */
final class GroupColumns {
    /** Records come by the hundred, so that each channel is read in a loop of its own. */
    private static final int RUN_BYTES = 1 << 14;

    private final GroupPlan plan;
    private final List<ColumnBuilder> columns;
    private final int runRecords;
    private byte[] run = new byte[0];
    private int held;

    GroupColumns(GroupPlan plan, int rows) {
        this.plan = plan;
        this.columns = plan.channels().stream()
                .map(channel -> new ColumnBuilder(channel, rows))
                .toList();
        this.runRecords = (int) runRecords(plan, rows);
    }

    private static long runRecords(GroupPlan plan, long rows) {
        return Math.max(1, Math.min(rows, RUN_BYTES / Math.max(1, plan.layout().recordBytes())));
    }

    /** Returns how much memory reading a group takes, bytes. */
    static double bytes(GroupPlan plan, long rows) {
        return (double) Double.BYTES * rows * plan.channels().size()
                + (double) runRecords(plan, rows) * plan.layout().recordBytes();
    }

    GroupPlan plan() {
        return plan;
    }

    /** Returns how many records are best added at once. */
    int runRecords() {
        return runRecords;
    }

    /** Takes whole records. */
    void add(RecordRun records) {
        columns.forEach(column -> column.add(records));
    }

    /** Takes one record; {@link #flush} must follow the last. */
    void add(byte[] bytes, int from) {
        int length = plan.layout().recordBytes();
        if (run.length == 0) {
            run = new byte[runRecords * length];
        }
        System.arraycopy(bytes, from, run, held * length, length);
        held++;
        if (held == runRecords) {
            flush();
        }
    }

    /** Moves records that came one by one into the columns. */
    void flush() {
        add(RecordRun.of(run, plan.layout(), held));
        held = 0;
    }

    List<TableColumn> columns() {
        return columns.stream().map(ColumnBuilder::column).toList();
    }
}
