package setwright.fleet.ledger;

/**
 * What the ledger holds of a recording that was looked at.
 *
 * @param file        of the ledger that has its row
 * @param bytes       size of the recording then
 * @param modifiedMs  when it had been changed last
 * @param inputs      digest of its companions then
 * @param status      what came of it
 * @param reason      why
 */
public record Done(String file, long bytes, long modifiedMs, String inputs, Status status, String reason) {}
