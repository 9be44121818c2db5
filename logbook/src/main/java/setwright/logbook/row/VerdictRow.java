package setwright.logbook.row;

import java.time.Instant;

/**
 * What a trial showed so far.
 *
 * @param runs     numbers of the stints, in order, with commas
 * @param look     which look at the trial this was
 * @param looks    how many were planned
 * @param verdict  in words
 * @param reason   in a sentence
 */
public record VerdictRow(
        long id, long trialId, String runs, int look, int looks, String verdict, String reason, Instant madeAt) {}
