package setwright.app.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import setwright.core.trial.Looks;

/**
 * Which runs are to be held against each other.
 *
 * @param recordings  in the order in which they were driven, two at least
 * @param sheets      one for each recording, or two that take turns
 * @param map         channel map of all; without it one is proposed for each
 * @param circuit     circuit kept from another recording
 * @param together    why several items were changed at once; empty when only one may have been
 * @param looks       which look at the trial this is
 */
public record TrialRequest(
        List<Path> recordings,
        List<Path> sheets,
        Optional<Path> map,
        Optional<Path> circuit,
        Optional<String> together,
        Looks looks) {
    public TrialRequest {
        recordings = List.copyOf(recordings);
        sheets = List.copyOf(sheets);
    }

    /** Returns the sheet of a recording. */
    Path sheet(int recording) {
        return sheets.get(sheets.size() == recordings.size() ? recording : recording % sheets.size());
    }
}
