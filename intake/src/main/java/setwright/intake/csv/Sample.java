package setwright.intake.csv;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;
import setwright.intake.problem.InputProblem;

/**
 * The first megabyte of a file as text, or a refusal: enough to tell a table from anything else on bounded memory.
 *
 * @param charset   found from the byte-order mark, from valid UTF-8, or else the common one-byte code of western systems
 * @param gzip      whether the file is compressed
 * @param lines     complete lines only, unless the file ends inside the sample
 * @param complete  whether the whole file is in the sample
 */
record Sample(Charset charset, boolean gzip, List<String> lines, boolean complete) {
    static final int SAMPLE_BYTES = 1 << 20;
    /** A table of a thousand columns with 60 characters each still fits. */
    static final int LONGEST_LINE = 1 << 16;

    private static final String NEEDS_TABLE = "a table of numbers as text with a header row (CSV, plain or gzip)";

    static Sample of(Path file) {
        String name = String.valueOf(file.getFileName());
        byte[] start;
        boolean gzip;
        boolean complete;
        if (Files.isDirectory(file)) {
            throw InputProblem.in(name)
                    .expected("a file")
                    .found("a folder")
                    .advice("Name one file.")
                    .problem();
        }
        try (InputStream raw = Files.newInputStream(file)) {
            byte[] head = raw.readNBytes(SAMPLE_BYTES);
            gzip = head.length > 2 && (head[0] & 0xFF) == 0x1F && (head[1] & 0xFF) == 0x8B;
            complete = head.length < SAMPLE_BYTES;
            start = head;
        } catch (NoSuchFileException e) {
            throw InputProblem.in(name)
                    .expected("a file of that name")
                    .found("none")
                    .advice("Check the path.")
                    .causedBy(e);
        } catch (IOException e) {
            throw unreadable(name, e);
        }
        if (gzip) {
            try (InputStream packed = new GZIPInputStream(Files.newInputStream(file))) {
                start = packed.readNBytes(SAMPLE_BYTES);
                complete = start.length < SAMPLE_BYTES;
            } catch (IOException e) {
                throw damaged(name, e);
            }
        }
        return fromBytes(name, start, gzip, complete);
    }

    /** A compressed file that ends too early or whose content was changed. */
    static InputProblem damaged(String name, Exception cause) {
        return InputProblem.in(name)
                .expected("a complete gzip file")
                .found("one that is cut short or damaged")
                .advice("Copy or export the file again.")
                .causedBy(cause);
    }

    private static InputProblem unreadable(String name, IOException cause) {
        return InputProblem.in(name)
                .expected("a readable file")
                .found(cause.getClass().getSimpleName())
                .advice("Check its permissions and the disk.")
                .causedBy(cause);
    }

    private static Sample fromBytes(String name, byte[] start, boolean gzip, boolean complete) {
        if (start.length == 0) {
            throw InputProblem.in(name)
                    .expected(NEEDS_TABLE)
                    .found("an empty file")
                    .advice("Export the recording again.")
                    .problem();
        }
        refuseKnownKinds(name, start);
        Charset charset = charset(start);
        boolean wide = charset.equals(StandardCharsets.UTF_16LE) || charset.equals(StandardCharsets.UTF_16BE);
        if (!wide && controlCharacters(start) > 0) {
            throw notText(name);
        }
        String text = new String(start, charset);
        if (!text.isEmpty() && text.charAt(0) == '\uFEFF') {
            text = text.substring(1);
        }
        if (wide && text.indexOf('\0') >= 0) {
            throw notText(name);
        }
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).length() > LONGEST_LINE) {
                throw InputProblem.in(name)
                        .row(i + 1L)
                        .expected(NEEDS_TABLE)
                        .found("a line of more than " + LONGEST_LINE + " characters")
                        .advice("This is no table with one sample per line.")
                        .problem();
            }
        }
        boolean whole = complete || text.endsWith("\n") || text.endsWith("\r");
        return new Sample(charset, gzip, whole ? lines : lines.subList(0, lines.size() - 1), complete);
    }

    private static InputProblem notText(String name) {
        return InputProblem.in(name)
                .expected(NEEDS_TABLE)
                .found("binary data")
                .advice("Export the recording as CSV from the program that wrote it.")
                .problem();
    }

    private static void refuseKnownKinds(String name, byte[] start) {
        String head = new String(start, 0, Math.min(start.length, 64), StandardCharsets.ISO_8859_1)
                .replace("\u00EF\u00BB\u00BF", "")
                .stripLeading();
        String kind = "";
        if (head.startsWith("{") || head.startsWith("[{") || head.startsWith("[\n") || head.startsWith("[\r")) {
            kind = "JSON";
        } else if (head.startsWith("<")) {
            kind = "XML or HTML";
        } else if (head.startsWith("PK\u0003\u0004")) {
            kind = "a ZIP archive or a spreadsheet";
        } else if (head.startsWith("PAR1")) {
            kind = "a Parquet file";
        } else if (head.startsWith("%PDF")) {
            kind = "a PDF document";
        }
        if (!kind.isEmpty()) {
            throw InputProblem.in(name)
                    .expected(NEEDS_TABLE)
                    .found(kind)
                    .advice("Export the recording as CSV.")
                    .problem();
        }
    }

    private static int controlCharacters(byte[] bytes) {
        int count = 0;
        for (byte b : bytes) {
            boolean blank = b == '\n' || b == '\r' || b == '\t' || b == '\f';
            count += b >= 0 && b < 0x20 && !blank ? 1 : 0;
        }
        return count;
    }

    private static Charset charset(byte[] bytes) {
        if (bytes.length > 1 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE) {
            return StandardCharsets.UTF_16LE;
        }
        if (bytes.length > 1 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF) {
            return StandardCharsets.UTF_16BE;
        }
        // The sample may end inside a character: leave up to three bytes out of the test.
        int length = bytes.length < SAMPLE_BYTES ? bytes.length : bytes.length - 3;
        while (length > 0 && length < bytes.length && (bytes[length] & 0xC0) == 0x80) {
            length--;
        }
        try {
            StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, 0, length));
            return StandardCharsets.UTF_8;
        } catch (CharacterCodingException e) {
            return Charset.forName("windows-1252");
        }
    }

    /** Returns the whole text of a file as bytes of the plain (uncompressed) file. */
    static InputStream open(Path file, boolean gzip) throws IOException {
        InputStream raw = Files.newInputStream(file);
        return gzip
                ? new Unpacked(String.valueOf(file.getFileName()), new GZIPInputStream(raw, 1 << 16), Files.size(file))
                : raw;
    }

    /** A line that is longer than any row of a table. */
    static InputProblem endless(String name) {
        return InputProblem.in(name)
                .expected(NEEDS_TABLE)
                .found("a line of more than " + LONGEST_LINE + " bytes")
                .advice("Export the recording again, one row a line.")
                .problem();
    }

    /** For tests: a sample of text held in memory. */
    static Sample ofText(String name, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        try (InputStream in = new ByteArrayInputStream(bytes)) {
            return fromBytes(name, in.readNBytes(SAMPLE_BYTES), false, bytes.length < SAMPLE_BYTES);
        } catch (IOException e) {
            throw new IllegalStateException("memory cannot fail to be read", e);
        }
    }
}
