package setwright.fleet.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import setwright.app.export.Column;
import setwright.app.export.Measure;
import setwright.fleet.tree.Recorded;

/** The ledger's columns. */
public final class LedgerTable {
    /** Header of the column that names a recording, in all tables. */
    public static final String RECORDING = "recording";

    static final String BYTES = "bytes";
    static final String MODIFIED = "modified";
    static final String INPUTS = "inputs";
    static final String STATUS = "status";
    static final String REASON = "reason";

    private LedgerTable() {}

    /** Returns the columns that stand in front in every table. */
    public static <R> List<Column<R>> front(Function<R, Recorded> recorded) {
        return List.of(
                Column.text(
                        RECORDING,
                        "path below the root of the tree",
                        row -> recorded.apply(row).path()),
                label("driver", "who drove", recorded, one -> one.labels().driver()),
                label("car", "what he drove", recorded, one -> one.labels().car()),
                label("date", "when", recorded, one -> one.labels().date()),
                label(
                        "session",
                        "which part of the day",
                        recorded,
                        one -> one.labels().session()));
    }

    private static <R> Column<R> label(
            String name, String words, Function<R, Recorded> recorded, Function<Recorded, String> value) {
        return Column.text(name, words + "; empty where no folder says so", row -> value.apply(recorded.apply(row)));
    }

    /** Returns all columns. */
    public static List<Column<LedgerRow>> columns() {
        List<Column<LedgerRow>> columns = new ArrayList<>(front(LedgerRow::recorded));
        columns.addAll(List.of(
                Column.whole(BYTES, "size of the file", row -> row.recorded().bytes()),
                Column.whole(
                        MODIFIED,
                        "when the file was changed last, milliseconds since 1970 UTC",
                        row -> row.recorded().modifiedMs()),
                Column.text(INPUTS, "digest of car sheet, channel map and circuit", LedgerRow::inputs),
                Column.text(
                        STATUS,
                        "judged, not enough evidence or failed",
                        row -> row.status().words()),
                Column.text("verdict", "what to do next; empty where there is none", LedgerRow::verdict),
                Column.text(REASON, "why that verdict, or why there is none", LedgerRow::reason),
                Column.truth(
                        "shared corners",
                        "whether corner numbers are those of the other recordings of this circuit",
                        LedgerRow::sharedCorners),
                Column.whole("laps", "laps found", LedgerRow::laps),
                Column.whole("judged laps", "of them judged", LedgerRow::judgedLaps),
                Column.number(
                        "median lap",
                        Measure.TIME,
                        "median time of the judged laps; empty without any",
                        LedgerRow::medianLapS),
                Column.number("taken", Measure.TIME, "time it took to judge", LedgerRow::seconds),
                Column.text("version", "of the program", LedgerRow::version)));
        return columns;
    }
}
