package setwright.logbook.row;

import java.time.Instant;

/**
 * What was found in a stint.
 *
 * @param verdict     in words
 * @param repeatable  whether the driving repeats
 */
public record DiagnosisRow(long id, long stintId, String verdict, boolean repeatable, Instant madeAt) {}
