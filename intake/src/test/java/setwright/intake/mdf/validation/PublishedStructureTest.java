package setwright.intake.mdf.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;

/**
 * A file put together byte by byte at the places that the standard gives.
 *
 * <p><b>Source:</b> ASAM MDF 4.1, block structures (values from memory): IDBLOCK 64 bytes with the version number at byte 28;
 * each block's header 24 bytes (id 4, reserved 4, length 8, link count 8); HDBLOCK at byte 64, 6 links, 104 bytes; DGBLOCK
 * 4 links, 64 bytes; CGBLOCK 6 links, 104 bytes; CNBLOCK 8 links, 160 bytes; CCBLOCK 4 links and 80 + 8 n bytes; DTBLOCK no
 * link. Numbers of IEEE 754-2008 binary16: 0x3C00 is 1, 0xC000 is -2, 0x7BFF is 65504, 0x0001 is 2^-24, 0x0400 is 2^-14.
 */
class PublishedStructureTest {
    private static final int[] HALVES = {0x3C00, 0xC000, 0x7BFF, 0x0001, 0x0400};
    private static final int DG = 168;
    private static final int CG = 232;
    private static final int TIME = 336;
    private static final int HALF = 496;
    private static final int NAME = 656;
    private static final int CC = 688;
    private static final int DT = 784;

    @TempDir
    private Path folder;

    @Test
    void aFileByTheBook() throws IOException {
        ByteBuffer file = ByteBuffer.allocate(DT + 24 + 4 * HALVES.length).order(ByteOrder.LITTLE_ENDIAN);
        file.put(0, letters("MDF     4.10    book    ")).putShort(28, (short) 410);
        header(file, 64, "HD", 104, 6).putLong(88, DG);
        header(file, DG, "DG", 64, 4).putLong(DG + 32, CG).putLong(DG + 40, DT).put(DG + 56, (byte) 0);
        header(file, CG, "CG", 104, 6).putLong(CG + 32, TIME);
        file.putLong(CG + 72, 0)
                .putLong(CG + 80, HALVES.length)
                .putInt(CG + 96, 4)
                .putInt(CG + 100, 0);
        header(file, TIME, "CN", 160, 8)
                .putLong(TIME + 24, HALF)
                .putLong(TIME + 40, NAME)
                .putLong(TIME + 56, CC);
        file.put(TIME + 88, (byte) 2)
                .put(TIME + 89, (byte) 1)
                .put(TIME + 90, (byte) 0)
                .put(TIME + 91, (byte) 0);
        file.putInt(TIME + 92, 0).putInt(TIME + 96, 16);
        header(file, HALF, "CN", 160, 8).putLong(HALF + 40, NAME);
        file.put(HALF + 88, (byte) 0)
                .put(HALF + 90, (byte) 4)
                .putInt(HALF + 92, 2)
                .putInt(HALF + 96, 16);
        header(file, NAME, "TX", 29, 0).put(NAME + 24, letters("axis"));
        header(file, CC, "CC", 96, 4).put(CC + 56, (byte) 1).putShort(CC + 62, (short) 2);
        file.putDouble(CC + 80, 100.0).putDouble(CC + 88, 0.5);
        header(file, DT, "DT", 24 + 4 * HALVES.length, 0);
        for (int i = 0; i < HALVES.length; i++) {
            file.putShort(DT + 24 + 4 * i, (short) i).putShort(DT + 26 + 4 * i, (short) HALVES[i]);
        }
        List<Table> tables = Formats.read(Files.write(folder.resolve("book.mf4"), file.array()));
        assertThat(tables).hasSize(1);
        Table table = tables.get(0);
        assertThat(table.remarks()).isEmpty();
        assertThat(table.columns().get(0).header()).isEqualTo("axis");
        assertThat(table.columns().get(0).unitRow()).isEqualTo("s");
        assertThat(table.columns().get(0).toArray()).containsExactly(100.0, 100.5, 101.0, 101.5, 102.0);
        assertThat(table.columns().get(1).header()).isEqualTo("axis (2)");
        assertThat(table.columns().get(1).toArray())
                .containsExactly(1.0, -2.0, 65504.0, Math.scalb(1.0, -24), Math.scalb(1.0, -14));
    }

    private static ByteBuffer header(ByteBuffer file, int at, String letters, long length, long links) {
        return file.put(at, letters("##" + letters)).putLong(at + 8, length).putLong(at + 16, links);
    }

    private static byte[] letters(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
