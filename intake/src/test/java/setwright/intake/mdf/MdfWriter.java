package setwright.intake.mdf;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.Deflater;

/**
 * Writes measurement files for tests, from the last block to the first, so that each link is known when it is written. Apart
 * from the script of the fixtures and from the reader.
 */
public final class MdfWriter {
    private static final int FIRST_FREE = 168;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    /** How pieces of data are stored. */
    public enum Packing {
        PLAIN,
        DEFLATED,
        TRANSPOSED
    }

    /** Begins a file; identification and header are filled in last. */
    public MdfWriter() {
        out.writeBytes(new byte[FIRST_FREE]);
    }

    /** Returns where the next block will lie. */
    public long next() {
        return out.size();
    }

    /** Appends a block and returns where it lies. */
    public long block(String letters, long[] links, byte[] data) {
        final long at = out.size();
        int size = 24 + 8 * links.length + data.length;
        ByteBuffer bytes = little(size);
        bytes.put(("##" + letters).getBytes(StandardCharsets.US_ASCII))
                .putInt(0)
                .putLong(size)
                .putLong(links.length);
        for (long link : links) {
            bytes.putLong(link);
        }
        out.writeBytes(bytes.put(data).array());
        out.writeBytes(new byte[(8 - out.size() % 8) % 8]);
        return at;
    }

    public long text(String words) {
        return words.isEmpty() ? 0 : block("TX", new long[0], (words + "\0").getBytes(StandardCharsets.UTF_8));
    }

    public long conversion(int type, double[] values, long... references) {
        ByteBuffer data = little(24 + 8 * values.length);
        data.put((byte) type).put((byte) 0).putShort((short) 0);
        data.putShort((short) references.length)
                .putShort((short) values.length)
                .putDouble(0)
                .putDouble(0);
        Arrays.stream(values).forEach(data::putDouble);
        long[] links = new long[4 + references.length];
        System.arraycopy(references, 0, links, 4, references.length);
        return block("CC", links, data.array());
    }

    /** A channel's fields that matter here. */
    public record Channel(
            String name,
            String unit,
            int type,
            int sync,
            int dataType,
            int byteOffset,
            int bitOffset,
            int bits,
            int flags,
            int invalidBit) {}

    public long channel(long next, Channel channel, long composition, long conversion) {
        ByteBuffer data = little(72);
        data.put((byte) channel.type()).put((byte) channel.sync());
        data.put((byte) channel.dataType()).put((byte) channel.bitOffset());
        data.putInt(channel.byteOffset())
                .putInt(channel.bits())
                .putInt(channel.flags())
                .putInt(channel.invalidBit());
        long name = text(channel.name());
        long unit = text(channel.unit());
        return block("CN", new long[] {next, composition, name, 0, conversion, 0, unit, 0}, data.array());
    }

    public long group(long next, long channels, long id, long cycles, int dataBytes, int invalidBytes) {
        ByteBuffer data = little(32);
        data.putLong(id).putLong(cycles).putLong(0).putInt(dataBytes).putInt(invalidBytes);
        return block("CG", new long[] {next, channels, 0, 0, 0, 0}, data.array());
    }

    public long dataGroup(long next, long groups, long data, int idBytes) {
        return block("DG", new long[] {next, groups, data, 0}, new byte[] {(byte) idBytes, 0, 0, 0, 0, 0, 0, 0});
    }

    public long piece(byte[] data, Packing packing, int row) {
        return packing == Packing.PLAIN
                ? block("DT", new long[0], data)
                : zip("DT", data.length, packing == Packing.TRANSPOSED ? row : 0, deflated(data, packing, row));
    }

    /** A packed block that says what it is told to say. */
    public long zip(String kind, long length, int row, byte[] packed) {
        ByteBuffer bytes = little(24 + packed.length);
        bytes.put(kind.getBytes(StandardCharsets.US_ASCII))
                .put((byte) (row > 0 ? 1 : 0))
                .put((byte) 0);
        bytes.putInt(row).putLong(length).putLong(packed.length).put(packed);
        return block("DZ", new long[0], bytes.array());
    }

    static byte[] deflated(byte[] data, Packing packing, int row) {
        byte[] turned = data.clone();
        if (packing == Packing.TRANSPOSED) {
            int rows = data.length / row;
            for (int i = 0; i < rows * row; i++) {
                turned[i % row * rows + i / row] = data[i];
            }
        }
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        deflater.setInput(turned);
        deflater.finish();
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        byte[] window = new byte[1 << 16];
        while (!deflater.finished()) {
            packed.write(window, 0, deflater.deflate(window));
        }
        deflater.end();
        return packed.toByteArray();
    }

    /** Writes data as a list of pieces and returns its head. */
    public long list(byte[] data, int pieceBytes, Packing packing, int row) {
        List<Long> links = new ArrayList<>(List.of(0L));
        for (int at = 0; at < data.length; at += pieceBytes) {
            links.add(piece(Arrays.copyOfRange(data, at, Math.min(data.length, at + pieceBytes)), packing, row));
        }
        ByteBuffer fields = little(16).putInt(1).putInt(links.size() - 1).putLong(pieceBytes);
        long list = block("DL", links.stream().mapToLong(Long::longValue).toArray(), fields.array());
        return packing == Packing.PLAIN ? list : block("HL", new long[] {list}, new byte[8]);
    }

    /** Writes data in one block, or in a list whose pieces end anywhere. */
    public long anyhow(byte[] data, int row, Random random) {
        Packing packing = Packing.values()[random.nextInt(Packing.values().length)];
        int stored = random.nextInt(3);
        if (stored == 0) {
            return piece(data, packing, row);
        }
        if (stored == 1) {
            return list(data, 1 + random.nextInt(Math.max(1, data.length)), packing, row);
        }
        List<Long> links = new ArrayList<>(List.of(0L));
        ByteBuffer offsets = little(8 * (data.length + 1));
        for (int at = 0; at < data.length; ) {
            int end = Math.min(data.length, at + random.nextInt(data.length / 3 + 10));
            packing = Packing.values()[random.nextInt(Packing.values().length)];
            offsets.putLong(at);
            links.add(piece(Arrays.copyOfRange(data, at, end), packing, row));
            at = end;
            if (links.size() > 50) {
                links.add(piece(Arrays.copyOfRange(data, at, data.length), packing, row));
                offsets.putLong(at);
                at = data.length;
            }
        }
        ByteBuffer fields = little(8 * links.size()).putInt(0).putInt(links.size() - 1);
        fields.put(offsets.array(), 0, 8 * (links.size() - 1));
        return block("DL", links.stream().mapToLong(Long::longValue).toArray(), fields.array());
    }

    /** Returns the whole file. */
    public byte[] finish(long firstDataGroup) {
        ByteBuffer file = ByteBuffer.wrap(out.toByteArray()).order(ByteOrder.LITTLE_ENDIAN);
        file.put("MDF     4.10    tests   ".getBytes(StandardCharsets.US_ASCII)).putShort(28, (short) 410);
        file.position(64).put("##HD".getBytes(StandardCharsets.US_ASCII));
        file.putLong(72, 104).putLong(80, 6).putLong(88, firstDataGroup);
        return file.array();
    }

    static ByteBuffer little(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
