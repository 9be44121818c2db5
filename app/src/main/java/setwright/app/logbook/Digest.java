package setwright.app.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** SHA-256 (FIPS 180-4): tells whether two files are the same, and whether one was changed. */
final class Digest {
    private Digest() {}

    /**
     * Returns the digest of files that belong together: of one file its own, else that of their digests, in the order given.
     *
     * @throws IOException when one cannot be read
     */
    static String of(List<Path> files) throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path file : files) {
            all.append(of(file));
        }
        return files.size() == 1
                ? all.toString()
                : HexFormat.of().formatHex(sha256().digest(all.toString().getBytes(StandardCharsets.US_ASCII)));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * Returns the digest of a file, in hexadecimal digits.
     *
     * @throws IOException when it cannot be read
     */
    static String of(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
