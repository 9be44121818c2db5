package setwright.logbook.row;

import java.time.Instant;

/**
 * What was proposed after a stint.
 *
 * @param item    to be changed; empty: leave the car alone
 * @param fromValue  value as people write it
 * @param toValue   the same
 * @param reason  in a sentence or two
 */
public record ProposalRow(
        long id,
        long stintId,
        String item,
        String fromValue,
        String toValue,
        String unit,
        String reason,
        Instant madeAt) {}
