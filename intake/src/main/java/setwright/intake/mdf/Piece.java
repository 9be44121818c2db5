package setwright.intake.mdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import setwright.intake.problem.InputProblem;

/**
 * A run of data bytes that lies in one place of the file, plain or packed.
 *
 * <p><b>Source:</b> ASAM MDF 4, DTBLOCK, DVBLOCK, DIBLOCK (data only) and DZBLOCK: {@code dz_org_block_type} (2 letters),
 * {@code dz_zip_type} (UINT8), one reserved byte, {@code dz_zip_parameter} (UINT32), {@code dz_org_data_length} and
 * {@code dz_data_length} (UINT64), then a stream of RFC 1950.
 *
 * @param at        first stored byte
 * @param stored    how many bytes are stored
 * @param length    how many they are unpacked
 * @param packing   how they are packed
 * @param rowBytes  length of a row when they are transposed
 */
record Piece(long at, long stored, long length, Packing packing, int rowBytes) {
    private static final int ZIP_HEADER_BYTES = 24;
    /** The most that RFC 1951 packs into a byte, by the technical notes of zlib's authors: 1032 to 1; one row for the ends. */
    private static final long MOST_RATIO = 1032;

    /** How bytes are packed. */
    enum Packing {
        PLAIN,
        DEFLATED,
        /** Rows became columns first, so that like bytes lie side by side. */
        TRANSPOSED
    }

    /** Tells whether a packed block was one of this kind before it was packed. */
    static boolean isKind(Block packed, String kind) {
        return new String(packed.data(kind.length()).array(), StandardCharsets.ISO_8859_1).equals(kind);
    }

    /**
     * Reads what a block of data holds.
     *
     * @param kind  the letters that the block has, or had before it was packed
     */
    static Piece of(MdfFile file, Block block, String kind) {
        if (!block.id().equals("DZ")) {
            return new Piece(block.dataAt(), block.dataLength(), block.dataLength(), Packing.PLAIN, 1);
        }
        ByteBuffer fields = block.data(ZIP_HEADER_BYTES);
        if (!isKind(block, kind)) {
            throw file.damaged(block.at(), "packed data of kind " + kind, "another kind");
        }
        int type = fields.get(2) & 0xFF;
        if (type > 1) {
            throw InputProblem.in(file.name())
                    .expected("data packed by deflate at byte " + block.at())
                    .found("packing of type " + type)
                    .advice("Let the logger's program save the recording unpacked, or as MDF 4.20 or earlier.")
                    .problem();
        }
        long length = fields.getLong(8);
        long stored = fields.getLong(16);
        if (stored < 0 || stored > block.dataLength() - ZIP_HEADER_BYTES) {
            throw file.damaged(block.at(), "packed bytes inside their block", Long.toUnsignedString(stored) + " bytes");
        }
        if (length < 0 || length > MOST_RATIO * (stored + 1)) {
            throw file.damaged(
                    block.at(), "packed data", stored + " bytes that claim to hold " + Long.toUnsignedString(length));
        }
        long row = fields.getInt(4) & 0xFFFF_FFFFL;
        boolean transposed = type == 1;
        if (transposed && (row == 0 || row > Integer.MAX_VALUE)) {
            throw file.damaged(block.at(), "transposed data with a length of row", "rows of " + row + " bytes");
        }
        return new Piece(
                block.dataAt() + ZIP_HEADER_BYTES,
                stored,
                length,
                transposed ? Packing.TRANSPOSED : Packing.DEFLATED,
                transposed ? (int) row : 1);
    }
}
