package setwright.logbook.row;

/**
 * A driver.
 *
 * @param name  unique
 */
public record DriverRow(long id, String name) {}
