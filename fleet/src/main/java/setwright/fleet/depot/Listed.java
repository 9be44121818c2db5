package setwright.fleet.depot;

/**
 * A file of a depot.
 *
 * @param name        below the root, parts separated by {@code /}
 * @param bytes       its size
 * @param modifiedMs  when it was changed last, milliseconds since 1970 UTC
 */
public record Listed(String name, long bytes, long modifiedMs) {}
