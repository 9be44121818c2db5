package setwright.fleet.batch;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** A short text that stands for contents: equal for equal ones, and for no others that one will ever meet. */
public final class Digest {
    /** 96 bits. */
    private static final int DIGITS = 24;

    private Digest() {}

    /** Returns the digest of parts; where one ends and the next begins counts. */
    public static String of(List<byte[]> parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                digest.update(
                        ByteBuffer.allocate(Integer.BYTES).putInt(part.length).array());
                digest.update(part);
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Returns the digest of texts. */
    static String ofTexts(List<String> parts) {
        return of(parts.stream()
                .map(part -> part.getBytes(StandardCharsets.UTF_8))
                .toList());
    }
}
