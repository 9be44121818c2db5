package setwright.app.server;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;

/** Recordings that differ a little from others, for tests. */
public final class Recordings {
    private Recordings() {}

    /** Returns a packed table without its last row, no longer packed. */
    public static byte[] withoutLastLine(Path packed) throws IOException {
        try (var in = new GZIPInputStream(Files.newInputStream(packed))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8).stripTrailing();
            return text.substring(0, text.lastIndexOf('\n') + 1).getBytes(StandardCharsets.UTF_8);
        }
    }
}
