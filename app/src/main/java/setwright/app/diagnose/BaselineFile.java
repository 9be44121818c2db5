package setwright.app.diagnose;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A recording of the same car in good order, on the same circuit.
 *
 * @param recording  its laps
 * @param car        the sheet that it was driven with; empty when it is that of the laps to be judged
 */
public record BaselineFile(Path recording, Optional<Path> car) {}
