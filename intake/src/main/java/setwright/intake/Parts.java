package setwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.MapEntry;
import setwright.intake.map.MapProposer;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/**
 * Cuts what was recorded for longer than any stint into as few parts as that allows, as even as stops let them be: an even cut leaves no
 * rest of a few laps that nothing can be told from.
 *
 * <p>Nothing that is judged lasts so long: tyres, fuel and often the driver are others after a stop. And what is held in memory at a
 * time stays bounded.
 */
final class Parts {
    /** No tank and no set of tyres of a circuit car lasts longer (common practice), s. */
    static final double LONGEST_S = 7200.0;

    /** Quicker than any stop in the pits, slower than the turn of a car that has spun (common practice), s. */
    static final double STOP_S = 10.0;

    private static final double STANDING_MPS = 1.0;
    /** Some laps, by which a speed is known, s. */
    private static final double PROBE_S = 1200.0;
    /** Enough rows to tell which column is the time. */
    private static final int PROBE_ROWS = 20_000;

    private final Table table;
    private final TableColumn time;
    private final double secondsPerUnit;
    private final double longestS;

    private Parts(Table table, MapEntry time, double longestS) {
        this.table = table;
        this.time = table.column(time.column()).orElseThrow();
        this.secondsPerUnit = time.unit().factor();
        this.longestS = longestS;
    }

    /**
     * Rows of a table.
     *
     * @param from   first
     * @param to     behind the last
     * @param atRest whether the car stands where it ends
     */
    record Part(int from, int to, boolean atRest) {}

    /**
     * Returns the parts, in order; one when the table is no longer than a stint may be, or nothing tells its time.
     *
     * @param longestS  longest time of a part, s
     */
    static List<Part> of(Table table, Optional<ChannelMap> given, Optional<CarSheet> car, double longestS) {
        List<Part> whole = List.of(new Part(0, table.rowCount(), true));
        Optional<MapEntry> time = time(table.part(0, Math.min(PROBE_ROWS, table.rowCount())), given);
        if (time.isEmpty()) {
            return whole;
        }
        Parts parts = new Parts(table, time.get(), longestS);
        if (parts.behind(0, longestS) == table.rowCount()) {
            return whole;
        }
        return parts.cut(parts.speed(given, car));
    }

    private static Optional<MapEntry> time(Table beginning, Optional<ChannelMap> given) {
        try {
            return Optional.of(MapProposer.time(beginning, given));
        } catch (InputProblem untimed) {
            return Optional.empty(); // whoever reads it says so
        }
    }

    /** The first row that is too late for so many seconds that begin in a row. */
    private int behind(int from, double mostS) {
        double begin = Double.NaN;
        for (int i = from; i < table.rowCount(); i++) {
            double seconds = time.get(i) * secondsPerUnit;
            begin = Double.isNaN(begin) ? seconds : begin;
            if (seconds - begin > mostS) {
                return i;
            }
        }
        return table.rowCount();
    }

    /** The speed, by the first stretch of rows that shows which column it is. */
    private Optional<MapEntry> speed(Optional<ChannelMap> given, Optional<CarSheet> car) {
        if (given.isPresent()) {
            return given.get().entry(Quantity.SPEED);
        }
        int to;
        for (int from = 0; from < table.rowCount(); from = to) {
            to = behind(from, PROBE_S);
            Optional<MapEntry> found = speed(table.part(from, to), car);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<MapEntry> speed(Table rows, Optional<CarSheet> car) {
        try {
            return MapProposer.propose(rows, car).map().entry(Quantity.SPEED);
        } catch (InputProblem unclear) {
            return Optional.empty(); // the car may not have left its place in that time
        }
    }

    private List<Part> cut(Optional<MapEntry> speed) {
        List<Part> parts = new ArrayList<>();
        int from = 0;
        for (int latest = behind(from, longestS); latest < table.rowCount(); latest = behind(from, longestS)) {
            int even = behind(from, evenS(from));
            OptionalInt stop = speed.isEmpty() ? OptionalInt.empty() : stopNearest(even, from, latest, speed.get());
            parts.add(new Part(from, stop.orElse(even), stop.isPresent()));
            from = stop.orElse(even);
        }
        parts.add(new Part(from, table.rowCount(), true));
        return parts;
    }

    /** How long each part would last if what follows a row were cut evenly, s; the longest where the clock does not tell. */
    private double evenS(int from) {
        double begin = Double.NaN;
        for (int i = from; Double.isNaN(begin) && i < table.rowCount(); i++) {
            begin = time.get(i) * secondsPerUnit;
        }
        double end = Double.NaN;
        for (int i = table.rowCount() - 1; Double.isNaN(end) && i >= from; i--) {
            end = time.get(i) * secondsPerUnit;
        }
        double restS = end - begin;
        return restS > longestS ? restS / Math.ceil(restS / longestS) : longestS;
    }

    /** The middle of that stop in some rows, not at their beginning, that is nearest to a row. */
    private OptionalInt stopNearest(int row, int from, int to, MapEntry entry) {
        TableColumn speed = table.column(entry.column()).orElseThrow();
        OptionalInt nearest = OptionalInt.empty();
        int end = to;
        for (int i = to - 1; i >= from; i--) {
            if (!(Math.abs(entry.toSi(speed.get(i))) < STANDING_MPS)) {
                if (end > i + 1 && (time.get(end - 1) - time.get(i + 1)) * secondsPerUnit >= STOP_S) {
                    int middle = (i + 1 + end) >>> 1;
                    if (nearest.isEmpty() || Math.abs(middle - row) < Math.abs(nearest.getAsInt() - row)) {
                        nearest = OptionalInt.of(middle);
                    }
                }
                end = i;
            }
        }
        return nearest;
    }
}
