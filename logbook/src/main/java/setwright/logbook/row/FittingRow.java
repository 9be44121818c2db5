package setwright.logbook.row;

import java.time.Instant;
import java.util.Optional;

/**
 * A setup that went onto its car.
 *
 * @param fromId  the one that was on it before; empty for the first
 */
public record FittingRow(long id, long setupId, Optional<Long> fromId, Instant fittedAt) {}
