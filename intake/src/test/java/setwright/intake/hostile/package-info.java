/**
 * Damaged and malicious files: whatever they hold, a reader answers with a table or with one message.
 */
@org.jspecify.annotations.NullMarked
package setwright.intake.hostile;
