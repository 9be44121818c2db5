package setwright.app.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Text that is kept as a file and follows from the program; {@code -Dsetwright.docs=write} writes it anew. */
public final class KeptText {
    private KeptText() {}

    /** Fails when a file does not hold just this text. */
    public static void assertHolds(Path file, String text) throws IOException {
        if (System.getProperty("setwright.docs", "").equals("write")) {
            Files.writeString(file, text);
        }
        assertThat(file)
                .as("run again with -Dsetwright.docs=write and look at the difference")
                .exists()
                .content()
                .isEqualTo(text);
    }
}
