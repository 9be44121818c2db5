package setwright.intake.mdf;

/**
 * How long a record of a channel group is.
 *
 * <p><b>Source:</b> ASAM MDF 4, CGBLOCK ({@code cg_data_bytes}, {@code cg_inval_bytes}) and record layout: record id, values,
 * invalidation bytes.
 *
 * @param dataBytes     of values, without the record id
 * @param invalidBytes  of invalidation bits, behind the values
 */
record RecordLayout(int dataBytes, int invalidBytes) {
    /** Records of cars have hundreds of bytes; of cameras, millions. */
    private static final long MOST_BYTES = 16L << 20;

    /** Makes a layout of the counts in a file. */
    static RecordLayout of(MdfFile file, long at, long dataBytes, long invalidBytes) {
        if (dataBytes + invalidBytes > MOST_BYTES) {
            throw file.damaged(at, "records of at most 16 MB", (dataBytes + invalidBytes) + " bytes");
        }
        return new RecordLayout((int) dataBytes, (int) invalidBytes);
    }

    /** Returns the length of a record without its id. */
    int recordBytes() {
        return dataBytes + invalidBytes;
    }
}
