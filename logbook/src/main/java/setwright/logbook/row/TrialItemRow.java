package setwright.logbook.row;

/** An item that a trial changes; values as people write them. */
public record TrialItemRow(long trialId, String item, String fromValue, String toValue, String unit) {}
