package setwright.core.simulation.logger;

/**
 * One column of a recording as it stands in the file.
 *
 * @param name      header
 * @param unit      in which the values are
 * @param decimals  digits after the point
 * @param values    one for each row, NaN where the logger dropped out
 */
@SuppressWarnings("ArrayRecordComponent") // long columns, written once
public record LoggedColumn(String name, String unit, int decimals, double[] values) {}
