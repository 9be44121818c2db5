package setwright.intake.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Damages files in the ways in which disks, lines, editors and enemies do. The same seed does the same damage. */
public final class Mutator {
    /** What readers of numbers, text, XML and YAML stumble over. */
    private static final List<String> NASTY = List.of(
            "\"",
            "\0",
            ",,,,,,,,",
            ";",
            "\t",
            "\r",
            "\n\n\n",
            "1e999",
            "-1e-999",
            "NaN",
            "inf",
            "0x1p3",
            "1_000",
            "１２",
            "1.234,56",
            "99999999999999999999999999",
            "\uFEFF",
            "\u202E",
            "&lt;",
            "<!--",
            "]]>",
            "<![CDATA[",
            "&x;",
            "*a",
            "&a [*a, *a]",
            "!!java.lang.Runtime",
            "- - - -",
            "{{{{",
            "$GPRMC,",
            "*7F",
            "=1+1",
            "../../etc");

    private final Random random;

    /** Makes one. */
    public Mutator(long seed) {
        this.random = new Random(seed);
    }

    /** Returns a file with one to four damages. */
    public byte[] damaged(byte[] whole, byte[] other) {
        byte[] out = whole;
        for (int i = random.nextInt(4); i >= 0; i--) {
            out = out.length == 0 ? other : once(out, other);
        }
        return out;
    }

    private byte[] once(byte[] bytes, byte[] other) {
        int at = place(bytes);
        return switch (random.nextInt(10)) {
            case 0 -> Arrays.copyOf(bytes, at);
            case 1 -> changed(bytes, at, (byte) (1 << random.nextInt(8)), true);
            case 2 -> changed(bytes, at, (byte) random.nextInt(256), false);
            case 3 -> spliced(bytes, at, new byte[0], Math.min(bytes.length, at + 1 + random.nextInt(64)));
            case 4 ->
                spliced(
                        bytes,
                        at,
                        Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + 1 + random.nextInt(512))),
                        at);
            case 5 -> spliced(bytes, at, NASTY.get(random.nextInt(NASTY.size())).getBytes(StandardCharsets.UTF_8), at);
            case 6 -> spliced(bytes, at, other, bytes.length);
            case 7 -> filled(bytes, at, (byte) (random.nextBoolean() ? 0xFF : 0));
            case 8 -> digits(bytes, at);
            default -> spliced(bytes, at, noise(), at);
        };
    }

    /** Half of the time in the beginning, where files say what they are. */
    private int place(byte[] bytes) {
        return random.nextInt(random.nextBoolean() ? bytes.length : Math.min(bytes.length, 512));
    }

    private static byte[] changed(byte[] bytes, int at, byte by, boolean turned) {
        byte[] out = bytes.clone();
        out[at] = (byte) (turned ? out[at] ^ by : by);
        return out;
    }

    private static byte[] spliced(byte[] bytes, int at, byte[] inside, int from) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + inside.length);
        out.write(bytes, 0, at);
        out.writeBytes(inside);
        out.write(bytes, from, bytes.length - from);
        return out.toByteArray();
    }

    /** Counts and links of eight bytes that are as great or as small as can be. */
    private static byte[] filled(byte[] bytes, int at, byte with) {
        byte[] out = bytes.clone();
        Arrays.fill(out, at, Math.min(out.length, at + 8), with);
        return out;
    }

    /** Every figure from here to the end of the line becomes a nine. */
    private static byte[] digits(byte[] bytes, int at) {
        byte[] out = bytes.clone();
        for (int i = at; i < out.length && out[i] != '\n'; i++) {
            out[i] = out[i] >= '0' && out[i] <= '9' ? (byte) '9' : out[i];
        }
        return out;
    }

    private byte[] noise() {
        byte[] noise = new byte[1 + random.nextInt(200)];
        random.nextBytes(noise);
        return noise;
    }
}
