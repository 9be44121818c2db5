package setwright.logbook.row;

import java.time.Instant;
import java.util.OptionalDouble;

/**
 * A recording cut into laps: who drove which car, with which setup, where.
 *
 * @param laps      whole ones
 * @param goodLaps  that can be judged
 * @param bestS     quickest of the good laps, s
 * @param meanS     mean of the good laps, s
 */
public record StintRow(
        long id,
        long recordingId,
        long carId,
        long setupId,
        long driverId,
        long circuitId,
        int laps,
        int goodLaps,
        OptionalDouble bestS,
        OptionalDouble meanS,
        Instant addedAt) {}
