package setwright.app.logbook;

import java.util.List;
import setwright.app.trial.TrialAnswer;
import setwright.logbook.row.TrialRow;

/**
 * A trial of the logbook with what it shows so far.
 *
 * @param trial    as it was planned
 * @param answer   what it shows
 * @param look     which look at it this is
 * @param looks    how many its plan has
 * @param aside    runs that do not count, each with why in a sentence
 */
public record JudgedTrial(TrialRow trial, TrialAnswer answer, int look, int looks, List<String> aside) {
    public JudgedTrial {
        aside = List.copyOf(aside);
    }
}
