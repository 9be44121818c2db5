package setwright.logbook.row;

import java.time.Instant;

/**
 * What a trial showed so far.
 *
 * @param runs     numbers of the stints, in order, with commas
 * @param planShare  share of the planned runs that were driven, 0..1: so much of the error is spent
 * @param verdict  in words
 * @param reason   in a sentence
 */
public record VerdictRow(
        long id, long trialId, String runs, double planShare, String verdict, String reason, Instant madeAt) {}
