package setwright.fleet.work;

import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.fleet.ledger.Status;

/**
 * What came of a recording.
 *
 * @param status  of the ledger
 * @param reason  why
 * @param answer  where there is one
 */
record Outcome(Status status, String reason, Optional<Answer> answer) {
    static Outcome failed(String reason) {
        return new Outcome(Status.FAILED, reason, Optional.empty());
    }
}
