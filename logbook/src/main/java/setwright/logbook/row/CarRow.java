package setwright.logbook.row;

import java.time.Instant;

/**
 * A car.
 *
 * @param name  unique
 */
public record CarRow(long id, String name, Instant addedAt) {}
