package setwright.intake.mdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.problem.InputProblem;

/** Files that were made to hang the reader, to fill the memory, or to be read wrongly. Each is refused with its place. */
class HostileFilesTest {
    private static final int ROWS = 100;
    private static final MdfWriter.Channel TIME = new MdfWriter.Channel("t", "s", 2, 1, 4, 0, 0, 64, 0, 0);
    private static final MdfWriter.Channel SPEED = new MdfWriter.Channel("v", "m/s", 0, 0, 4, 8, 0, 64, 0, 0);

    @TempDir
    private Path folder;

    private final MdfWriter writer = new MdfWriter();

    private String refusal(byte[] bytes) {
        try {
            Path file = Files.write(folder.resolve("bad.mf4"), bytes);
            InputProblem problem = catchThrowableOfType(InputProblem.class, () -> new MdfFormat().read(file));
            assertThat(problem).isNotNull();
            return problem.getMessage();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private long group(long cycles) {
        long speed = writer.channel(0, SPEED, 0, 0);
        return writer.group(0, writer.channel(speed, TIME, 0, 0), 0, cycles, 16, 0);
    }

    private String refusal(long cycles, long data) {
        return refusal(writer.finish(writer.dataGroup(0, group(cycles), data, 0)));
    }

    private static void patch(byte[] bytes, long at, long value) {
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putLong((int) at, value);
    }

    @Test
    void linksInALoop() {
        long data = writer.piece(new byte[16 * ROWS], MdfWriter.Packing.PLAIN, 16);
        long dataGroup = writer.dataGroup(writer.next(), group(ROWS), data, 0);
        byte[] bytes = writer.finish(dataGroup);
        patch(bytes, dataGroup + 24, dataGroup);
        assertThat(refusal(bytes)).contains("a second link", "byte " + dataGroup);
    }

    @Test
    void listOfDataInALoop() {
        long piece = writer.piece(new byte[16], MdfWriter.Packing.PLAIN, 16);
        ByteBuffer fields = MdfWriter.little(16).putInt(1).putInt(1).putLong(16);
        long list = writer.block("DL", new long[] {writer.next(), piece}, fields.array());
        assertThat(refusal(1, list)).contains("a second link");
    }

    @Test
    void oneBlockOfDataManyTimes() {
        long piece = writer.piece(new byte[16 * ROWS], MdfWriter.Packing.PLAIN, 16);
        ByteBuffer fields = MdfWriter.little(16).putInt(1).putInt(3).putLong(16 * ROWS);
        long list = writer.block("DL", new long[] {0, piece, piece, piece}, fields.array());
        assertThat(refusal(3 * ROWS, list)).contains("a second link");
    }

    @Test
    void conversionsInALoop() {
        long conversion = writer.conversion(7, new double[] {1.0}, writer.next(), writer.next());
        long time = writer.channel(0, TIME, 0, conversion);
        byte[] bytes = writer.finish(writer.dataGroup(0, writer.group(0, time, 0, 0, 8, 0), 0, 0));
        assertThat(refusal(bytes)).contains("conversions inside each other");
    }

    @Test
    void structuresWithoutAnEnd() {
        long channel = writer.channel(0, SPEED, 0, 0);
        for (int i = 0; i < 100_000; i++) {
            channel = writer.block("CN", new long[] {0, channel, 0, 0, 0, 0, 0, 0}, new byte[72]);
        }
        byte[] bytes = writer.finish(writer.dataGroup(0, writer.group(0, channel, 0, ROWS, 16, 0), 0, 0));
        assertThat(refusal(bytes)).contains("structures inside each other");
    }

    @Test
    void countsBeyondTheData() {
        for (long cycles : new long[] {ROWS + 1, 1L << 40, -1, Long.MIN_VALUE, (1L << 60) + ROWS}) {
            long data = writer.piece(new byte[16 * ROWS], MdfWriter.Packing.PLAIN, 16);
            assertThat(refusal(cycles, data)).contains("records of 16 bytes", "1600 bytes");
        }
    }

    /** Nothing is stored for virtual channels, so only the memory bounds their count. */
    @Test
    void countsBeyondTheMemory() {
        MdfWriter.Channel time = new MdfWriter.Channel("t", "s", 3, 1, 0, 0, 0, 0, 0, 0);
        for (long cycles : new long[] {1L << 40, -1, Integer.MAX_VALUE}) {
            long group = writer.group(0, writer.channel(writer.channel(0, time, 0, 0), time, 0, 0), 0, cycles, 0, 0);
            assertThat(refusal(writer.finish(writer.dataGroup(0, group, 0, 0)))).contains("fits into memory", "-Xmx");
        }
    }

    @Test
    void packedBytesThatClaimOrHoldTooMuch() {
        byte[] packed = MdfWriter.deflated(new byte[16 * ROWS], MdfWriter.Packing.DEFLATED, 0);
        assertThat(refusal(1L << 36, writer.zip("DT", 1L << 40, 0, packed))).contains("claim to hold");
        assertThat(refusal(ROWS - 1, writer.zip("DT", 16 * (ROWS - 1), 0, packed)))
                .contains("when unpacked", "more");
        assertThat(refusal(ROWS + 1, writer.zip("DT", 16 * (ROWS + 1), 0, packed)))
                .contains("when unpacked", "fewer");
        assertThat(refusal(ROWS + 1, writer.zip("DT", 16 * (ROWS + 1), 16, packed)))
                .contains("fewer");
        assertThat(refusal(ROWS, writer.zip("SD", 16 * ROWS, 0, packed))).contains("of kind DT");
        byte[] cut = Arrays.copyOf(packed, packed.length - 3);
        assertThat(refusal(ROWS, writer.zip("DT", 16 * ROWS, 0, cut))).contains("without an end");
        packed[packed.length - 1] ^= 1;
        assertThat(refusal(ROWS, writer.zip("DT", 16 * ROWS, 0, packed))).contains("cannot be unpacked");
    }

    /** Sixty-four megabytes of zeros in sixty-four kilobytes, rightly declared, but for a table that cannot be held. */
    @Test
    void aBombForATableThatCannotBeHeld() {
        byte[] packed = MdfWriter.deflated(new byte[64 << 20], MdfWriter.Packing.DEFLATED, 0);
        long channels = 0;
        long bits = 8L * (64 << 20);
        for (int k = 0; k < 3000; k++) {
            channels = writer.channel(channels, new MdfWriter.Channel("b", "", 0, 0, 0, 0, k % 8, 1, 0, 0), 0, 0);
        }
        MdfWriter.Channel time = new MdfWriter.Channel("t", "s", 2, 1, 0, 0, 0, 8, 0, 0);
        long group = writer.group(0, writer.channel(channels, time, 0, 0), 0, bits / 8, 1, 0);
        assertThat(refusal(writer.finish(writer.dataGroup(0, group, writer.zip("DT", bits / 8, 0, packed), 0))))
                .contains("fits into memory");
    }

    /** Rows longer than all data, and as long as a number can say: no matrix, and no loop over its columns. */
    @Test
    void transpositionByRowsWithoutAnEnd() throws IOException {
        byte[] packed = MdfWriter.deflated(new byte[16 * ROWS], MdfWriter.Packing.DEFLATED, 0);
        for (int row : new int[] {16 * ROWS + 1, Integer.MAX_VALUE}) {
            long data = writer.zip("DT", 16 * ROWS, row, packed);
            byte[] bytes = writer.finish(writer.dataGroup(0, group(ROWS), data, 0));
            assertThat(new MdfFormat()
                            .read(Files.write(folder.resolve("rows.mf4"), bytes))
                            .get(0)
                            .rowCount())
                    .isEqualTo(ROWS);
        }
    }

    /** A file of holes: a list of as many links as its length allows, which is more than the memory allows. */
    @Test
    void moreLinksThanMemory() throws IOException {
        long size = Math.min(Runtime.getRuntime().maxMemory() / 12, Integer.MAX_VALUE);
        long list = writer.block("DL", new long[0], new byte[8]);
        byte[] bytes = writer.finish(writer.dataGroup(0, group(ROWS), list, 0));
        patch(bytes, list + 8, size - list);
        patch(bytes, list + 16, (size - list - 32) / 8);
        Path file = Files.write(folder.resolve("holes.mf4"), bytes);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.allocate(1), size - 1);
        }
        assertThat(catchThrowableOfType(InputProblem.class, () -> new MdfFormat().read(file)))
                .hasMessageContaining("fit into memory");
    }

    @Test
    void valuesBeyondTheirRecord() {
        MdfWriter.Channel beyond = new MdfWriter.Channel("v", "", 0, 0, 0, 15, 1, 8, 0, 0);
        long group = writer.group(0, writer.channel(0, beyond, 0, 0), 0, ROWS, 16, 0);
        assertThat(refusal(writer.finish(writer.dataGroup(0, group, 0, 0)))).contains("values inside their records");
        MdfWriter.Channel bit = new MdfWriter.Channel("v", "", 0, 0, 0, 0, 0, 8, 2, 8);
        group = writer.group(0, writer.channel(0, bit, 0, 0), 0, ROWS, 16, 1);
        assertThat(refusal(writer.finish(writer.dataGroup(0, group, 0, 0)))).contains("an invalidation bit");
    }

    @Test
    void recordIdsThatAreUnknownOrShared() {
        byte[] data = new byte[17];
        data[0] = 5;
        long piece = writer.piece(data, MdfWriter.Packing.PLAIN, 17);
        assertThat(refusal(writer.finish(writer.dataGroup(0, group(1), piece, 1))))
                .contains("id 5");
        long one = group(1);
        long two = writer.group(one, 0, 0, 1, 16, 0);
        assertThat(refusal(writer.finish(writer.dataGroup(0, two, piece, 1)))).contains("that of another group");
        assertThat(refusal(writer.finish(writer.dataGroup(0, two, piece, 0)))).contains("share their data");
        assertThat(refusal(writer.finish(writer.dataGroup(0, two, piece, 3)))).contains("3 bytes");
    }

    @Test
    void otherPacking() {
        byte[] packed = MdfWriter.deflated(new byte[16 * ROWS], MdfWriter.Packing.DEFLATED, 0);
        long zip = writer.zip("DT", 16 * ROWS, 16, packed);
        byte[] bytes = writer.finish(writer.dataGroup(0, group(ROWS), zip, 0));
        bytes[(int) zip + 26] = 4;
        assertThat(refusal(bytes)).contains("packing of type 4", "unpacked");
    }

    @Test
    void aFileThatWasCutShort() {
        long group = writer.group(0, writer.channel(writer.channel(0, SPEED, 0, 0), TIME, 0, 0), 0, ROWS, 16, 0);
        long dataGroup = writer.dataGroup(0, group, writer.next() + 64, 0);
        writer.piece(new byte[16 * ROWS], MdfWriter.Packing.PLAIN, 16);
        byte[] bytes = writer.finish(dataGroup);
        assertThat(refusal(Arrays.copyOf(bytes, bytes.length - 600)))
                .contains("data of 1624 bytes at byte", "1024 bytes to the end of the file", "copy it from the logger");
    }

    @Test
    void almostNothing() {
        byte[] whole = writer.finish(0);
        for (int length : new int[] {8, 63, 64, 80, 88, 167, 168}) {
            assertThat(refusal(Arrays.copyOf(whole, length))).contains("expected");
        }
        InputProblem missing =
                catchThrowableOfType(InputProblem.class, () -> new MdfFormat().read(folder.resolve("none.mf4")));
        assertThat(missing).hasMessageContaining("no such file");
    }
}
