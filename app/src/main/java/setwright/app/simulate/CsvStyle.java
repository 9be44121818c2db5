package setwright.app.simulate;

/**
 * How a table is written.
 *
 * @param delimiter     between cells
 * @param decimalComma  whether numbers have a comma; the delimiter must then be another
 * @param unitsRow      whether units stand in a row of their own instead of in the header
 */
public record CsvStyle(char delimiter, boolean decimalComma, boolean unitsRow) {
    /** Commas between cells, units in brackets in the header. */
    public static final CsvStyle PLAIN = new CsvStyle(',', false, false);

    public CsvStyle {
        if (decimalComma && delimiter == ',') {
            throw new IllegalArgumentException("with a decimal comma, cells need another delimiter");
        }
    }
}
