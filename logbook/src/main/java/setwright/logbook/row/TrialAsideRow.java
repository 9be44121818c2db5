package setwright.logbook.row;

/**
 * A stint that somebody left out of a trial.
 *
 * @param why  in words
 */
public record TrialAsideRow(long trialId, long stintId, String why) {}
