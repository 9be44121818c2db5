package setwright.intake.csv;

import java.nio.charset.Charset;
import java.util.List;

/**
 * How a text table is written.
 *
 * @param charset        of the text
 * @param gzip           whether the file is compressed
 * @param delimiter      between cells
 * @param decimalComma   whether numbers use a comma where others use a point
 * @param headerLine     line of the headers, counted from 1
 * @param firstDataLine  line of the first numbers, counted from 1
 * @param headers        as written, trimmed, one per column
 * @param units          from a row of units, or as many empty words
 * @param textColumn     per column, whether the first rows hold words rather than numbers
 */
record Dialect(
        Charset charset,
        boolean gzip,
        char delimiter,
        boolean decimalComma,
        int headerLine,
        int firstDataLine,
        List<String> headers,
        List<String> units,
        List<Boolean> textColumn) {}
