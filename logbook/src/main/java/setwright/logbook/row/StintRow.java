package setwright.logbook.row;

import java.time.Instant;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A recording cut into laps: who drove which car, with which setup, where.
 *
 * @param laps      whole ones
 * @param goodLaps  that can be judged
 * @param bestS     quickest of the good laps, s
 * @param meanS     mean of the good laps, s
 * @param tyreAgeLaps   laps that the tyres had done before; empty when nobody said
 * @param trackCelsius  temperature of the track; empty when nobody said
 * @param fuelStartKg   fuel when it began, kg; empty when nobody said
 * @param goodOrder     whether people said that the car was in good order
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
        OptionalInt tyreAgeLaps,
        OptionalDouble trackCelsius,
        OptionalDouble fuelStartKg,
        boolean goodOrder,
        Instant addedAt) {}
