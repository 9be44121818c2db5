package setwright.intake.mdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import setwright.intake.problem.InputProblem;

/**
 * The first 64 bytes: kind of file, version, and whether the logger finished it.
 *
 * <p><b>Source:</b> ASAM MDF 4, IDBLOCK: {@code id_file} (8 letters), {@code id_vers} (8 letters), {@code id_prog} (8),
 * {@code id_ver} (UINT16 at byte 28), {@code id_unfin_flags} (UINT16 at byte 60), {@code id_custom_unfin_flags} (UINT16 at 62).
 *
 * @param version        such as 410 for 4.10
 * @param countsMissing  tells that the counts of records were never written, so that the data tell them
 */
record Identification(int version, boolean countsMissing) {
    static final int BYTES = 64;

    private static final String FINISHED = "MDF     ";
    private static final String UNFINISHED = "UnFinMF ";
    /** Bit 0: record counts were not updated. Bit 1: nor were those of reduced samples, which are not read. */
    private static final int COUNTS = 0b01;

    private static final int HARMLESS = 0b11;

    /** Tells whether a file begins as one of any version does. */
    static boolean begins(byte[] head) {
        String start = new String(head, 0, Math.min(head.length, FINISHED.length()), StandardCharsets.ISO_8859_1);
        return start.equals(FINISHED) || start.equals(UNFINISHED);
    }

    static Identification of(MdfFile file) {
        if (file.size() < BYTES) {
            throw file.damaged(file.size(), "64 bytes of identification", "the end of the file");
        }
        ByteBuffer block = file.description(0, BYTES);
        String start = letters(block, 0);
        if (!start.equals(FINISHED) && !start.equals(UNFINISHED)) {
            throw file.damaged(0, "\"MDF\"", "something else");
        }
        int version = block.getShort(28) & 0xFFFF;
        String written = letters(block, 8).strip();
        if (version < 400 || version > 499) {
            throw otherVersion(file, written, version);
        }
        int flags = block.getShort(60) & 0xFFFF;
        int custom = block.getShort(62) & 0xFFFF;
        boolean unfinished = start.equals(UNFINISHED);
        if (unfinished && (custom != 0 || (flags & ~HARMLESS) != 0)) {
            throw InputProblem.in(file.name())
                    .expected("a finished measurement file")
                    .found("one that the logger never finished (flags " + flags + " and " + custom + " at byte 60)")
                    .advice("Let the logger, or the program that came with it, finish or repair the file.")
                    .problem();
        }
        return new Identification(version, unfinished && (flags & COUNTS) != 0);
    }

    private static String letters(ByteBuffer block, int at) {
        byte[] letters = new byte[FINISHED.length()];
        block.get(at, letters);
        return new String(letters, StandardCharsets.ISO_8859_1);
    }

    private static InputProblem otherVersion(MdfFile file, String written, int version) {
        String digits = written.matches("[0-9.]{1,8}") ? written : String.valueOf(version);
        return InputProblem.in(file.name())
                .expected("a measurement file of MDF version 4")
                .found("version " + digits)
                .advice("Let the logger's program save it as MDF 4 or as CSV.")
                .problem();
    }
}
