package setwright.intake.mdf;

import java.nio.charset.Charset;

/**
 * What a channel's bytes in a record are.
 *
 * <p><b>Source:</b> ASAM MDF 4, CNBLOCK: {@code cn_type}, {@code cn_data_type}, {@code cn_byte_offset}, {@code cn_bit_offset},
 * {@code cn_bit_count}.
 */
sealed interface RawValue permits RawValue.Index, RawValue.Bits, RawValue.Real, RawValue.Words {
    /** Nothing is stored; the value is the index of the record, counted from 0. */
    record Index() implements RawValue {}

    /**
     * An integer of up to 64 bits.
     *
     * @param byteOffset  where its first byte lies in the record
     * @param bitOffset   its lowest bit, 0 to 7, after the bytes were brought into order
     * @param bitCount    1 to 64
     * @param signed      two's complement
     * @param bigEndian   most significant byte first
     */
    record Bits(int byteOffset, int bitOffset, int bitCount, boolean signed, boolean bigEndian) implements RawValue {}

    /**
     * A floating-point number of IEEE 754.
     *
     * @param byteOffset  where its first byte lies in the record
     * @param bytes       2, 4 or 8
     * @param bigEndian   most significant byte first
     */
    record Real(int byteOffset, int bytes, boolean bigEndian) implements RawValue {}

    /**
     * A text, ended by a zero or by its length.
     *
     * @param byteOffset  where its first byte lies in the record
     * @param bytes       how many
     * @param charset     which letters they are
     */
    record Words(int byteOffset, int bytes, Charset charset) implements RawValue {}
}
