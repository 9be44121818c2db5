package setwright.intake.mdf;

import java.util.List;

/**
 * The data of a single channel group: its records one after the other, without ids.
 *
 * <p><b>Source:</b> ASAM MDF 4, record layout of sorted data groups; with column-oriented storage (4.20) the invalidation bytes
 * form a stream of their own.
 */
final class SortedRecords {
    private final MdfFile file;
    private final GroupPlan plan;
    private final DataPieces pieces;

    SortedRecords(MdfFile file, GroupPlan plan, DataPieces pieces) {
        this.file = file;
        this.plan = plan;
        this.pieces = pieces;
    }

    /** Returns how many whole records there are, by the length of the data. */
    long count() {
        int length = valueBytes();
        return length == 0 ? plan.cycles() : DataPieces.length(file, pieces.values()) / length;
    }

    /** Refuses data that are not as long as the file's count of records says. */
    void check() {
        check(pieces.values(), valueBytes());
        if (pieces.apart()) {
            check(pieces.invalid(), plan.layout().invalidBytes());
        }
    }

    private void check(List<Piece> stored, int length) {
        long bytes = DataPieces.length(file, stored);
        if (length == 0 ? bytes != 0 : bytes % length != 0 || bytes / length != plan.cycles()) {
            throw file.damaged(
                    plan.at(),
                    Long.toUnsignedString(plan.cycles()) + " records of " + length + " bytes for the channel group",
                    bytes + " bytes of data");
        }
    }

    /** Reads the records. */
    void read(GroupColumns into, int rows) {
        RecordLayout layout = plan.layout();
        DataStream values = new DataStream(file, pieces.values());
        DataStream invalid = new DataStream(file, pieces.invalid());
        int most = into.runRecords();
        byte[] bytes = new byte[most * valueBytes()];
        byte[] bits = new byte[pieces.apart() ? most * layout.invalidBytes() : 0];
        for (int done = 0; done < rows; ) {
            int count = Math.min(most, rows - done);
            values.read(bytes, 0, count * valueBytes());
            if (pieces.apart()) {
                invalid.read(bits, 0, count * layout.invalidBytes());
                into.add(RecordRun.apart(bytes, bits, layout, count));
            } else {
                into.add(RecordRun.of(bytes, layout, count));
            }
            done += count;
        }
    }

    private int valueBytes() {
        return pieces.apart() ? plan.layout().dataBytes() : plan.layout().recordBytes();
    }
}
