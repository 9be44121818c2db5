package setwright.intake.csv;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** Whole lines of a plain table, and how they become numbers. Mutable; for one thread. */
final class PlainBlock {
    /** Ten to a power that a double holds exactly: one division then rounds as it should (W. D. Clinger, PLDI 1990). */
    private static final double[] EXACT_TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18
    };

    /** Whole numbers up to here are exact as well. */
    private static final long LARGEST_EXACT = 1L << 53;

    private final byte[] bytes;
    private final byte delimiter;
    private final boolean decimalComma;
    private final boolean[] text;
    private final int width;
    private double[][] values;
    private int rows;
    private int at;
    private boolean plain = true;

    PlainBlock(byte[] bytes, Dialect dialect) {
        this.bytes = bytes;
        this.delimiter = (byte) dialect.delimiter();
        this.decimalComma = dialect.decimalComma();
        this.width = dialect.headers().size();
        this.text = new boolean[width];
        for (int c = 0; c < width; c++) {
            text[c] = dialect.textColumn().get(c);
        }
        this.values = new double[width][256];
    }

    /** Returns one array per column; empty when a line is not plain. */
    Optional<double[][]> parse() {
        while (plain && at < bytes.length) {
            if (!blank()) {
                row();
            }
        }
        if (!plain) {
            return Optional.empty();
        }
        for (int c = 0; c < width; c++) {
            values[c] = Arrays.copyOf(values[c], rows);
        }
        return Optional.of(values);
    }

    /** Steps over an empty line. */
    private boolean blank() {
        int end = bytes[at] == '\r' && at + 1 < bytes.length ? at + 1 : at;
        if (bytes[end] != '\n') {
            return false;
        }
        at = end + 1;
        return true;
    }

    private void row() {
        if (rows == values[0].length) {
            // the rest of the block holds about as long lines as its beginning
            int grown = (int) Math.max(rows + 256L, (long) (1.05 * rows * bytes.length / Math.max(1, at)));
            for (int c = 0; c < width; c++) {
                values[c] = Arrays.copyOf(values[c], grown);
            }
        }
        for (int c = 0; c < width && plain; c++) {
            values[c][rows] = text[c] ? word() : number();
            boolean last = c == width - 1;
            if (at < bytes.length && bytes[at] == delimiter && !last) {
                at++;
            } else {
                plain = plain && last && endOfLine();
            }
        }
        rows++;
    }

    private boolean endOfLine() {
        if (at < bytes.length && bytes[at] == '\r') {
            at++;
        } else if (at == bytes.length) {
            return true;
        }
        if (at < bytes.length && bytes[at] == '\n') {
            at++;
            return true;
        }
        return false;
    }

    /** Steps over a cell of a column of words, which counts for nothing. */
    private double word() {
        cellEnd();
        return Double.NaN;
    }

    private double number() {
        byte[] bytes = this.bytes; // the first compiler would fetch a field at each character
        int length = bytes.length;
        int start = at;
        int i = at;
        while (i < length && bytes[i] == ' ') {
            i++;
        }
        boolean negative = i < length && bytes[i] == '-';
        if (i < length && (negative || bytes[i] == '+')) {
            i++;
        }
        long mantissa = 0L;
        int digits = 0;
        int decimals = -1;
        for (; i < length; i++) {
            int b = bytes[i];
            if (b >= '0' && b <= '9') {
                mantissa = 10L * mantissa + (b - '0');
                digits++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if (decimals < 0 && (b == '.' || (decimalComma && b == ',' && delimiter != ','))) {
                decimals = 0;
            } else {
                break;
            }
        }
        while (i < length && bytes[i] == ' ') {
            i++;
        }
        boolean ended = i == length || bytes[i] == delimiter || bytes[i] == '\n' || bytes[i] == '\r';
        // eighteen digits fit into a long
        if (!ended || digits == 0 || digits > 18 || mantissa > LARGEST_EXACT) {
            at = start;
            return unusual();
        }
        at = i;
        double size = decimals > 0 ? mantissa / EXACT_TEN[decimals] : mantissa;
        return negative ? -size : size;
    }

    /** A cell without a value, or a number with an exponent or many digits. */
    private double unusual() {
        int start = at;
        int end = cellEnd();
        String cell = new String(bytes, start, end - start, StandardCharsets.ISO_8859_1);
        if (Cells.isMissing(cell)) {
            return Double.NaN;
        }
        String point = decimalComma ? cell.strip().replace(',', '.') : cell.strip();
        double value = Cells.isNumber(point, false) ? Double.parseDouble(point) : Double.NaN;
        plain = plain && Double.isFinite(value);
        return value;
    }

    private int cellEnd() {
        while (at < bytes.length && bytes[at] != delimiter && bytes[at] != '\n' && bytes[at] != '\r') {
            plain = plain && bytes[at] != '"';
            at++;
        }
        return at;
    }
}
