package setwright.core.car;

/**
 * One item of a setup turned from one value to another, in the sheet's own unit.
 *
 * @param item  name on the sheet
 * @param from  value before
 * @param to    value after
 */
public record SetupChange(String item, double from, double to) {}
