package setwright.logbook.row;

import java.time.Instant;

/**
 * A setup that went onto its car.
 *
 * @param undoes  whether this went back to what was on it before the last change
 * @param why     it was put on; empty when nobody said
 */
public record FittingRow(long id, long setupId, boolean undoes, String why, Instant fittedAt) {}
