package setwright.app.diagnose;

import java.io.IOException;
import setwright.app.evidence.Answer;

/** From files to an answer. */
public interface Diagnoser {
    /** How many steps are told to the progress. */
    int STEPS = 4;

    /**
     * Reads what the request names, judges it, and writes what the request wants kept.
     *
     * @throws IOException when a file cannot be read or written
     */
    Answer diagnose(DiagnoseRequest request, Progress progress) throws IOException;
}
