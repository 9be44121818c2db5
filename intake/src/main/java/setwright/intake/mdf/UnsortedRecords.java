package setwright.intake.mdf;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The data of several channel groups, each record behind the id of its group.
 *
 * <p><b>Source:</b> ASAM MDF 4, record layout of unsorted data groups: id (little-endian), values, invalidation bytes; in a VLSD
 * channel group id, length (UINT32), that many bytes.
 */
final class UnsortedRecords {
    private static final int WINDOW_BYTES = 1 << 18;
    private static final int LENGTH_BYTES = 4;

    private final MdfFile file;
    private final DataGroupPlan plan;
    private final List<Piece> pieces;
    private final Map<Long, Integer> indices = new HashMap<>();

    /** Is told each record of fixed length. */
    interface Taker {
        /** Takes the record of the group with this place in the data group, whose values begin at {@code from}. */
        void take(int group, byte[] bytes, int from);
    }

    UnsortedRecords(MdfFile file, DataGroupPlan plan, DataPieces pieces) {
        this.file = file;
        this.plan = plan;
        this.pieces = pieces.values();
        if (pieces.apart()) {
            throw file.damaged(plan.at(), "values of one channel group, as they are stored by columns", "several");
        }
        for (int i = 0; i < plan.groups().size(); i++) {
            indices.put(plan.groups().get(i).recordId(), i);
        }
    }

    /** Returns how many bytes all records are, ids and all. */
    long bytes() {
        return DataPieces.length(file, pieces);
    }

    /**
     * Goes through all records.
     *
     * @param cutShort  tells whether the last record may lack its end
     * @return how many whole records each group has
     */
    long[] walk(Taker taker, boolean cutShort) {
        int[] lengths = plan.groups().stream()
                .mapToInt(group ->
                        group.variable() ? LENGTH_BYTES : group.layout().recordBytes())
                .toArray();
        int longest = 0;
        for (int length : lengths) {
            longest = Math.max(longest, length);
        }
        long[] counts = new long[lengths.length];
        Window window = new Window(new DataStream(file, pieces), plan.idBytes() + longest);
        while (window.has(1)) {
            if (!window.has(plan.idBytes())) {
                return end(counts, cutShort);
            }
            long id = window.number(plan.idBytes());
            Integer index = indices.get(id);
            if (index == null) {
                throw file.damaged(
                        plan.at(), "data whose records have an id of the group", "id " + Long.toUnsignedString(id));
            }
            if (!window.has(lengths[index])) {
                return end(counts, cutShort);
            }
            if (plan.groups().get(index).variable()) {
                if (!window.skip(window.number(LENGTH_BYTES))) {
                    return end(counts, cutShort);
                }
            } else {
                taker.take(index, window.bytes, window.position);
                window.position += lengths[index];
            }
            counts[index]++;
        }
        return counts;
    }

    private long[] end(long[] counts, boolean cutShort) {
        if (!cutShort) {
            throw file.damaged(plan.at(), "data that end with a record", "a part of one");
        }
        return counts;
    }

    /** A window on the stream that is moved on as it is used up. */
    private static final class Window {
        private final DataStream stream;
        private final byte[] bytes;
        private int position;
        private int end;

        Window(DataStream stream, int longest) {
            this.stream = stream;
            this.bytes = new byte[Math.max(WINDOW_BYTES, longest)];
        }

        boolean has(int count) {
            if (end - position < count) {
                System.arraycopy(bytes, position, bytes, 0, end - position);
                end -= position;
                position = 0;
                end += stream.read(bytes, end, bytes.length - end);
            }
            return end - position >= count;
        }

        long number(int length) {
            long value = 0;
            for (int i = length - 1; i >= 0; i--) {
                value = (value << 8) | (bytes[position + i] & 0xFF);
            }
            position += length;
            return value;
        }

        boolean skip(long count) {
            long left = count;
            while (left > 0) {
                int step = (int) Math.min(left, bytes.length);
                if (!has(step)) {
                    return false;
                }
                position += step;
                left -= step;
            }
            return true;
        }
    }
}
