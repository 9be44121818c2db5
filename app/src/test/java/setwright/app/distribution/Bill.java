package setwright.app.distribution;

import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The bill of materials of the program as built. */
final class Bill {
    private static final Path BUILT = Path.of("target").toAbsolutePath();

    private Bill() {}

    /** Leaves a test out when Maven did not write the bill, or wrote it for an earlier program. */
    static Path assumeCurrent() throws IOException {
        Path bill = BUILT.resolve("bom.xml");
        boolean current = Files.exists(bill)
                && Files.getLastModifiedTime(bill).compareTo(Files.getLastModifiedTime(BUILT.resolve("setwright.jar")))
                        >= 0;
        assumeThat(current)
                .as("no bill of materials of this build: Maven ran without -Pdistribution (./check runs with it)")
                .isTrue();
        return bill;
    }
}
