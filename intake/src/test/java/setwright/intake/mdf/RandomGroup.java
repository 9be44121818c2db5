package setwright.intake.mdf;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A channel group of random channels and random records, with the numbers that these mean. Bits are set one by one. */
final class RandomGroup {
    final List<MdfWriter.Channel> channels = new ArrayList<>();
    final List<double[]> linear = new ArrayList<>();
    final List<double[]> expected = new ArrayList<>();
    final byte[][] records;
    final int dataBytes;
    final int invalidBytes;

    private final Random random;

    RandomGroup(Random random, String name) {
        this.random = random;
        int rows = 2 + random.nextInt(200);
        int count = 1 + random.nextInt(7);
        int at = random.nextInt(3);
        for (int k = 0; k <= count; k++) {
            at = add(k == 0 ? "time" : name + k, k == 0, at) + random.nextInt(3);
        }
        this.dataBytes = at;
        this.invalidBytes = random.nextInt(3);
        this.records = new byte[rows][dataBytes + invalidBytes];
        for (byte[] record : records) {
            random.nextBytes(record);
        }
        for (int k = 0; k < channels.size(); k++) {
            fill(k);
        }
    }

    private int add(String name, boolean master, int at) {
        int kind = random.nextInt(6);
        int bits = kind < 4 ? 1 + random.nextInt(64) : 16 << random.nextInt(3);
        int bitOffset = kind < 4 ? random.nextInt(8) : 0;
        boolean canBeInvalid = random.nextInt(3) == 0;
        channels.add(new MdfWriter.Channel(
                name,
                random.nextBoolean() ? "u" : "",
                master ? 2 : 0,
                master ? 1 : 0,
                kind,
                at,
                bitOffset,
                bits,
                canBeInvalid ? 2 : 0,
                random.nextInt(8)));
        linear.add(random.nextBoolean() ? new double[] {random.nextGaussian(), random.nextGaussian()} : new double[0]);
        return at + (bitOffset + bits + 7) / 8;
    }

    private void fill(int k) {
        MdfWriter.Channel channel = channels.get(k);
        double[] values = new double[records.length];
        for (int i = 0; i < values.length; i++) {
            BigInteger stored = new BigInteger(channel.bits(), random);
            double raw;
            if (channel.dataType() < 4) {
                boolean negative = channel.dataType() >= 2 && stored.testBit(channel.bits() - 1);
                raw = (negative ? stored.subtract(BigInteger.ONE.shiftLeft(channel.bits())) : stored).doubleValue();
            } else {
                raw = channel.bits() == 16 ? random.nextInt(2048) / 64.0 : random.nextGaussian();
                raw = channel.bits() == 32 ? (float) raw : raw;
                long bits = switch (channel.bits()) {
                    case 16 -> half(raw);
                    case 32 -> Float.floatToRawIntBits((float) raw) & 0xFFFF_FFFFL;
                    default -> Double.doubleToRawLongBits(raw);
                };
                stored = new BigInteger(Long.toUnsignedString(bits));
            }
            put(records[i], channel, stored);
            double[] line = linear.get(k);
            values[i] = line.length == 0 ? raw : line[1] * raw + line[0];
            int bit = 8 * dataBytes + channel.invalidBit();
            if (channel.flags() != 0 && invalidBytes > 0 && (records[i][bit / 8] >> bit % 8 & 1) == 1) {
                values[i] = Double.NaN;
            }
        }
        if (invalidBytes == 0) {
            channels.set(
                    k,
                    new MdfWriter.Channel(
                            channel.name(),
                            channel.unit(),
                            channel.type(),
                            channel.sync(),
                            channel.dataType(),
                            channel.byteOffset(),
                            channel.bitOffset(),
                            channel.bits(),
                            0,
                            0));
        }
        expected.add(values);
    }

    /** Bits of a binary16 number that is exact: multiples of 1/64 up to 32. */
    private static long half(double value) {
        if (value == 0.0) {
            return 0;
        }
        int exponent = Math.getExponent(value);
        return (long) (exponent + 15) << 10 | (long) ((value / Math.scalb(1.0, exponent) - 1.0) * 1024);
    }

    private static void put(byte[] record, MdfWriter.Channel channel, BigInteger stored) {
        int bytes = (channel.bitOffset() + channel.bits() + 7) / 8;
        boolean bigEndian = channel.dataType() % 2 == 1;
        for (int k = 0; k < channel.bits(); k++) {
            int bit = channel.bitOffset() + k;
            int at = channel.byteOffset() + (bigEndian ? bytes - 1 - bit / 8 : bit / 8);
            int mask = 1 << bit % 8;
            record[at] = (byte) (stored.testBit(k) ? record[at] | mask : record[at] & ~mask);
        }
    }

    /** Writes the group without its data. */
    long write(MdfWriter writer, long next, long id) {
        long channel = 0;
        for (int k = channels.size() - 1; k >= 0; k--) {
            long conversion = linear.get(k).length == 0 ? 0 : writer.conversion(1, linear.get(k));
            channel = writer.channel(channel, channels.get(k), 0, conversion);
        }
        return writer.group(next, channel, id, records.length, dataBytes, invalidBytes);
    }
}
