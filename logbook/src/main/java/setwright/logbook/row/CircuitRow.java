package setwright.logbook.row;

import java.time.Instant;

/**
 * A circuit.
 *
 * @param name      unique
 * @param document  reference line and corners, as a circuit file holds them
 * @param lengthM   of the line, m
 */
public record CircuitRow(long id, String name, String document, double lengthM, Instant addedAt) {}
