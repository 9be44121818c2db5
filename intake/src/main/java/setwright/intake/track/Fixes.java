package setwright.intake.track;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;
import setwright.intake.engine.Engine;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** Gathers fixes, then makes a table of them. */
final class Fixes {
    private static final String[] HEADERS = {"time", "latitude", "longitude", "speed", "altitude"};
    private static final String[] UNITS = {"s", "deg", "deg", "m/s", "m"};

    private final String file;
    private final String source;
    private double[][] values = new double[HEADERS.length][1024];
    private int count;

    /**
     * Begins.
     *
     * @param file    what messages call it
     * @param source  what the fixes stand in, in the plural, for messages
     */
    Fixes(String file, String source) {
        this.file = file;
        this.source = source;
    }

    void add(Fix fix) {
        if (count >= Engine.mostRows(HEADERS.length)) {
            throw InputProblem.in(file)
                    .expected("a track that fits into memory")
                    .found("more than " + count + " positions")
                    .advice("Cut the file into shorter tracks.")
                    .problem();
        }
        if (count == values[0].length) {
            for (int i = 0; i < values.length; i++) {
                values[i] = Arrays.copyOf(values[i], count + count / 2);
            }
        }
        double[] row = {fix.timeS(), fix.latitudeDeg(), fix.longitudeDeg(), fix.speedMps(), fix.altitudeM()};
        for (int i = 0; i < row.length; i++) {
            values[i][count] = row[i];
        }
        count++;
    }

    /** Moves all that was gathered so far in time. */
    void shift(double byS) {
        for (int i = 0; i < count; i++) {
            values[0][i] += byS;
        }
    }

    /**
     * Returns the table, without the columns that nothing was said of.
     *
     * @throws InputProblem when there are fewer than two positions
     */
    Table table() {
        DoublePredicate finite = Double::isFinite;
        long places = Arrays.stream(values[1], 0, count).filter(finite).count();
        if (places < 2) {
            throw InputProblem.in(file)
                    .expected("positions with their times")
                    .found(places == 0 ? "none in its " + source : "one")
                    .advice("Take the track of the whole run; a receiver needs a view of the sky.")
                    .problem();
        }
        List<TableColumn> columns = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            double[] cut = Arrays.copyOf(values[i], count);
            if (Arrays.stream(cut).anyMatch(finite)) {
                columns.add(TableColumn.of(HEADERS[i], UNITS[i], cut));
            }
        }
        return new Table(file, columns, 1);
    }
}
