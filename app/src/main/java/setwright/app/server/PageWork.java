package setwright.app.server;

import java.util.Optional;
import setwright.app.logbook.StintDesk;
import setwright.app.predict.ChangePredictor;
import setwright.app.propose.ChangeProposer;
import setwright.app.watch.FolderWatch;
import setwright.logbook.Logbook;

/**
 * What the page works with.
 *
 * @param logbook        that it shows
 * @param desk           of the same logbook
 * @param proposer       says what to change
 * @param predictor      says what a change would do
 * @param longestUpload  bytes of a single file that the browser may send
 * @param watched        folder of which new files are read in by themselves
 */
public record PageWork(
        Logbook logbook,
        StintDesk desk,
        ChangeProposer proposer,
        ChangePredictor predictor,
        long longestUpload,
        Optional<FolderWatch> watched) {
    /** Bytes of a file that the browser may send, unless somebody says otherwise: a day at 400 Hz. */
    public static final long USUAL_UPLOAD = 2L << 30;
}
