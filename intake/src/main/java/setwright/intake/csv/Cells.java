package setwright.intake.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Splits a line into cells and tells numbers from words. */
final class Cells {
    /** What loggers and spreadsheets write for "no value". */
    static final Set<String> MISSING = Set.of("", "nan", "na", "n/a", "null", "none", "-", "--", "#n/a", "inf", "-inf");

    private static final Pattern POINT = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final Pattern COMMA = Pattern.compile("[+-]?(\\d+,?\\d*|,\\d+)([eE][+-]?\\d+)?");

    private Cells() {}

    /** Splits by the delimiter, minding double quotes (RFC 4180). A run of blanks counts as one delimiter. */
    static List<String> split(String line, char delimiter) {
        return line.indexOf('"') < 0 ? cut(line, delimiter) : splitQuoted(line, delimiter);
    }

    private static List<String> cut(String line, char delimiter) {
        List<String> cells = new ArrayList<>();
        int from = 0;
        for (int to = line.indexOf(delimiter); to >= 0; to = line.indexOf(delimiter, from)) {
            cells.add(line.substring(from, to).strip());
            from = to + 1;
        }
        cells.add(line.substring(from).strip());
        return cells;
    }

    private static List<String> splitQuoted(String line, char delimiter) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                if (quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == delimiter && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    static boolean isMissing(String cell) {
        return MISSING.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    static boolean isNumber(String cell, boolean decimalComma) {
        return (decimalComma ? COMMA : POINT).matcher(cell).matches();
    }

    /** Tells whether a cell is a number only when its comma is read as the decimal mark. */
    static boolean needsDecimalComma(String cell) {
        return cell.indexOf(',') >= 0 && isNumber(cell, true);
    }
}
