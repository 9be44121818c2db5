package setwright.logbook.row;

import java.time.Instant;
import java.util.Optional;

/**
 * A sentence of the story.
 *
 * @param kind     what it tells of
 * @param carId    the car that it is about, when it is about one
 * @param stintId  the stint that it is about, when it is about one
 */
public record EntryRow(
        long id, Instant writtenAt, String kind, Optional<Long> carId, Optional<Long> stintId, String words) {}
