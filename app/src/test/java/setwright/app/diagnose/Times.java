package setwright.app.diagnose;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import setwright.app.diagnose.WrittenTable.Column;
import setwright.core.recording.Quantity;

/** Takes a run's samples at other times. */
final class Times {
    /** What goes in steps belongs to its row: between rows it has no value. */
    private static final List<Quantity> STEPS =
            List.of(Quantity.GEAR, Quantity.LAP_NUMBER, Quantity.LAP_TRIGGER, Quantity.LAP_DISTANCE);

    private Times() {}

    /**
     * Takes each sample a little earlier or later, on the straight line to its neighbour.
     *
     * @param share  of the time between rows that a sample moves by at most, below 0.5
     */
    static PackagedRun jittered(PackagedRun run, double share, long seed) {
        Random random = new Random(seed);
        int rows = run.table().rows();
        double[] place = new double[rows];
        for (int i = 0; i < rows; i++) {
            double off = share * (2.0 * random.nextDouble() - 1.0);
            // a step is known only from its row on, so that a row may come later but not before it
            place[i] = Math.min(rows - 1.0, i + Math.abs(off));
        }
        List<Column> columns = new ArrayList<>();
        for (Column column : run.table().columns()) {
            boolean steps = STEPS.stream()
                    .anyMatch(quantity ->
                            run.has(quantity) && run.header(quantity).equals(column.header()));
            columns.add(steps ? column : new Column(column.header(), between(column.values(), place)));
        }
        return run.with(new WrittenTable(columns));
    }

    private static double[] between(double[] values, double[] place) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            int before = Math.min(values.length - 2, (int) place[i]);
            double after = place[i] - before;
            out[i] = after == 0.0 ? values[before] : values[before] + after * (values[before + 1] - values[before]);
        }
        return out;
    }

    /**
     * Leaves out single rows by chance; never two in a row, since more would be a gap that is kept, and never one that starts a
     * lap: without positions nothing else tells where it began.
     */
    static PackagedRun thinned(PackagedRun run, double share, long seed) {
        Random random = new Random(seed);
        boolean[] gone = new boolean[run.table().rows()];
        for (int i = 1; i < gone.length - 1; i++) {
            gone[i] = random.nextDouble() < share && !gone[i - 1] && !startsLap(run, i);
        }
        return run.with(run.table().rows(row -> !gone[row]));
    }

    private static boolean startsLap(PackagedRun run, int row) {
        return Stream.of(Quantity.LAP_NUMBER, Quantity.LAP_TRIGGER)
                .filter(run::has)
                .map(run::get)
                .anyMatch(values -> values[row] != values[row - 1]);
    }

    /** Keeps every second row. */
    static PackagedRun halved(PackagedRun run, int first) {
        return run.with(run.table().rows(row -> row % 2 == first));
    }
}
