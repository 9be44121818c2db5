package setwright.intake.mdf;

/** Whole records of one channel group in memory; a view that the next ones overwrite. */
final class RecordRun {
    private final byte[] values;
    private final int from;
    private final int stride;
    private final byte[] invalid;
    private final int invalidFrom;
    private final int invalidStride;
    private final int count;

    private RecordRun(
            byte[] values, int from, int stride, byte[] invalid, int invalidFrom, int invalidStride, int count) {
        this.values = values;
        this.from = from;
        this.stride = stride;
        this.invalid = invalid;
        this.invalidFrom = invalidFrom;
        this.invalidStride = invalidStride;
        this.count = count;
    }

    /** Makes a run of records that hold values and then invalidation bytes. */
    static RecordRun of(byte[] bytes, RecordLayout layout, int count) {
        return new RecordRun(bytes, 0, layout.recordBytes(), bytes, layout.dataBytes(), layout.recordBytes(), count);
    }

    /** Makes a run of records whose invalidation bytes are stored apart. */
    static RecordRun apart(byte[] values, byte[] invalid, RecordLayout layout, int count) {
        return new RecordRun(values, 0, layout.dataBytes(), invalid, 0, layout.invalidBytes(), count);
    }

    /** Returns the array that holds the values. */
    byte[] values() {
        return values;
    }

    /** Returns where in it the values of a record begin. */
    int at(int record) {
        return from + record * stride;
    }

    /** Returns the bytes from one record to the next. */
    int stride() {
        return stride;
    }

    /** Returns an invalidation bit, counted from the lowest of a record's first invalidation byte. */
    boolean isSet(int record, int bit) {
        return ((invalid[invalidFrom + record * invalidStride + bit / 8] >> (bit % 8)) & 1) == 1;
    }

    /** Returns how many records there are. */
    int count() {
        return count;
    }
}
