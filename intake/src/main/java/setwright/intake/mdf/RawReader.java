package setwright.intake.mdf;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Reads the raw numbers of one channel from a run of records. */
final class RawReader {
    private static final VarHandle INT_LITTLE =
            MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle LONG_LITTLE =
            MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle LONG_BIG = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.BIG_ENDIAN);

    private RawReader() {}

    /** Reads integers; those of more than 53 bits are rounded to the nearest double. */
    static void bits(RawValue.Bits layout, RecordRun run, double[] into, int at) {
        byte[] bytes = run.values();
        int place = run.at(0) + layout.byteOffset();
        int width = (layout.bitOffset() + layout.bitCount() + 7) / 8;
        int shift = 64 - layout.bitCount();
        for (int i = 0; i < run.count(); i++) {
            long low = layout.bigEndian()
                    ? big(bytes, place, width, layout.bitOffset())
                    : little(bytes, place, width, layout.bitOffset());
            long top = low << shift;
            into[at + i] = layout.signed() ? top >> shift : unsigned(top >>> shift);
            place += run.stride();
        }
    }

    /** The bits from {@code offset} on, of up to nine bytes. */
    private static long little(byte[] bytes, int place, int width, int offset) {
        if (width == 8) {
            return (long) LONG_LITTLE.get(bytes, place) >>> offset;
        }
        long value = 0;
        for (int k = Math.min(width, 8) - 1; k >= 0; k--) {
            value = (value << 8) | (bytes[place + k] & 0xFF);
        }
        value >>>= offset;
        return width == 9 ? value | (bytes[place + 8] & 0xFFL) << (64 - offset) : value;
    }

    private static long big(byte[] bytes, int place, int width, int offset) {
        int last = place + width - 1;
        if (width == 8) {
            return (long) LONG_BIG.get(bytes, place) >>> offset;
        }
        long value = 0;
        for (int k = width == 9 ? 1 : 0; k < width; k++) {
            value = (value << 8) | (bytes[place + k] & 0xFF);
        }
        value >>>= offset;
        return width == 9 ? value | (bytes[last - 8] & 0xFFL) << (64 - offset) : value;
    }

    private static double unsigned(long value) {
        // Halved with the lost bit kept, so that doubling rounds as the whole number would.
        return value >= 0 ? value : ((value >>> 1) | (value & 1)) * 2.0;
    }

    /** Reads floating-point numbers. */
    static void real(RawValue.Real layout, RecordRun run, double[] into, int at) {
        byte[] bytes = run.values();
        int place = run.at(0) + layout.byteOffset();
        boolean swapped = layout.bigEndian();
        for (int i = 0; i < run.count(); i++) {
            into[at + i] = switch (layout.bytes()) {
                case 2 -> half(swapped ? big(bytes, place, 2, 0) : little(bytes, place, 2, 0));
                case 4 -> {
                    int bits = (int) INT_LITTLE.get(bytes, place);
                    yield Float.intBitsToFloat(swapped ? Integer.reverseBytes(bits) : bits);
                }
                default -> {
                    long bits = (long) LONG_LITTLE.get(bytes, place);
                    yield Double.longBitsToDouble(swapped ? Long.reverseBytes(bits) : bits);
                }
            };
            place += run.stride();
        }
    }

    /** IEEE 754-2008, binary16: 1 bit of sign, 5 of exponent (bias 15), 10 of fraction. */
    private static double half(long bits) {
        int exponent = (int) (bits >> 10) & 0x1F;
        int fraction = (int) bits & 0x3FF;
        double size;
        if (exponent == 0) {
            size = Math.scalb((double) fraction, -24);
        } else if (exponent == 31) {
            size = fraction == 0 ? Double.POSITIVE_INFINITY : Double.NaN;
        } else {
            size = Math.scalb((double) (fraction + 0x400), exponent - 25);
        }
        return (bits & 0x8000) == 0 ? size : -size;
    }
}
