package setwright.intake.track;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Lines of a file of any length in bounded memory: what is longer than a sentence can be is cut off. */
final class BoundedLines {
    /** NMEA 0183 allows 82 characters; receivers were seen to take more, and loggers put a stamp before them. */
    private static final int LONGEST = 400;

    private final InputStream in;

    BoundedLines(InputStream in) {
        this.in = in;
    }

    /** Returns the next line without its end; empty after the last. */
    Optional<String> next() throws IOException {
        StringBuilder line = new StringBuilder();
        int read = in.read();
        if (read < 0) {
            return Optional.empty();
        }
        while (read >= 0 && read != '\n') {
            if (read != '\r' && line.length() < LONGEST) {
                line.append((char) read);
            }
            read = in.read();
        }
        return Optional.of(line.toString());
    }
}
