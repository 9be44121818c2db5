package setwright.intake.csv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import setwright.intake.problem.InputProblem;

/**
 * Finds the dialect of a text table from its first megabyte, or says why it is no table.
 *
 * <p>The delimiter is the one that cuts most lines into the same number of cells, most of them numbers. The header is the last
 * line of words before the numbers begin; a second line of words under it is taken as units when it is shorter in letters.
 */
final class Sniffer {
    private static final char[] DELIMITERS = {',', ';', '\t', '|', ' '};
    private static final int LINES_LOOKED_AT = 400;
    /** Lines that must agree on the number of cells: a few torn lines are a logger's fault, more are no table. */
    private static final double AGREEMENT = 0.8;

    private Sniffer() {}

    /** One reading of the lines; {@code words} counts the cells in rows of numbers that are neither number nor missing. */
    private record Shape(
            char delimiter, boolean decimalComma, int columns, int numericLines, int firstNumeric, int words) {}

    static Dialect sniff(String file, Sample sample) {
        List<String> lines = sample.lines();
        List<Integer> filled = new ArrayList<>();
        for (int i = 0; i < lines.size() && filled.size() < LINES_LOOKED_AT; i++) {
            if (!lines.get(i).isBlank()) {
                filled.add(i);
            }
        }
        if (filled.isEmpty()) {
            throw InputProblem.in(file)
                    .expected("a header row and rows of numbers")
                    .found("only blank lines")
                    .advice("Export the recording again.")
                    .problem();
        }
        Shape best = bestShape(lines, filled);
        if (best.numericLines() == 0) {
            throw noNumbers(file, lines, filled);
        }
        int first = best.firstNumeric();
        if (first == 0) {
            throw InputProblem.in(file)
                    .row(filled.get(0) + 1L)
                    .expected("a header row that names the columns")
                    .found("numbers in the first row")
                    .advice("Add a first line with one name (and unit) per column.")
                    .problem();
        }
        return dialect(file, sample, lines, filled, best);
    }

    private static Shape bestShape(List<String> lines, List<Integer> filled) {
        Shape best = new Shape(',', false, 0, 0, 0, 0);
        double bestScore = -1.0;
        for (char delimiter : DELIMITERS) {
            List<List<String>> cut = filled.stream()
                    .map(line -> Cells.split(lines.get(line), delimiter))
                    .toList();
            int columns = commonest(cut);
            if (columns < 2) {
                continue;
            }
            // without a comma in any cell, to read commas as decimal marks makes nothing a number
            boolean commas = delimiter != ','
                    || filled.stream().anyMatch(line -> lines.get(line).indexOf('"') >= 0);
            for (boolean comma : commas ? new boolean[] {false, true} : new boolean[] {false}) {
                Shape shape = shape(cut, columns, delimiter, comma);
                double score = shape.numericLines() * (1.0 + Math.log(Math.max(1, shape.columns())));
                boolean better = score > bestScore + 1.0e-9;
                // a file of mostly whole numbers reads well either way: the right comma leaves fewer words
                boolean equal = !better && score > bestScore - 1.0e-9;
                if (better || (equal && shape.words() < best.words())) {
                    best = shape;
                    bestScore = score;
                }
            }
        }
        return best;
    }

    private static int commonest(List<List<String>> cut) {
        Map<Integer, Integer> tally = new HashMap<>();
        cut.forEach(cells -> tally.merge(cells.size(), 1, Integer::sum));
        return tally.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    /** Counts the lines that this reading turns into numbers, all with the commonest number of cells. */
    private static Shape shape(List<List<String>> cut, int columns, char delimiter, boolean comma) {
        int numericLines = 0;
        int firstNumeric = -1;
        int words = 0;
        for (int i = 0; i < cut.size(); i++) {
            if (cut.get(i).size() == columns) {
                int numbers = 0;
                int wordsHere = 0;
                for (String cell : cut.get(i)) {
                    if (Cells.isNumber(cell, comma)) {
                        numbers++;
                    } else if (!Cells.isMissing(cell)) {
                        wordsHere++;
                    }
                }
                if (wordsHere == 0 ? numbers >= 1 : numbers >= 2 && numbers > wordsHere) {
                    numericLines++;
                    words += wordsHere;
                    firstNumeric = firstNumeric < 0 ? i : firstNumeric;
                }
            }
        }
        boolean agrees = firstNumeric >= 0 && numericLines >= AGREEMENT * (cut.size() - firstNumeric);
        return new Shape(delimiter, comma, columns, agrees ? numericLines : 0, Math.max(0, firstNumeric), words);
    }

    private static InputProblem noNumbers(String file, List<String> lines, List<Integer> filled) {
        // Names, and perhaps their units, but nothing under them.
        if (filled.size() <= 2 && bestSplit(lines.get(filled.get(0))) >= 2) {
            return InputProblem.in(file)
                    .row(filled.get(0) + 1L)
                    .expected("rows of numbers under the header")
                    .found("the header only")
                    .advice("Export the recording again, with its data.")
                    .problem();
        }
        return InputProblem.in(file)
                .row(filled.get(0) + 1L)
                .value(lines.get(filled.get(0)))
                .expected("a table of numbers as text with a header row (CSV, plain or gzip)")
                .advice("No delimiter (comma, semicolon, tab, bar, blank) cuts its lines into equal rows of numbers.")
                .problem();
    }

    private static int bestSplit(String line) {
        int most = 1;
        for (char delimiter : DELIMITERS) {
            most = Math.max(most, Cells.split(line, delimiter).size());
        }
        return most;
    }

    private static Dialect dialect(String file, Sample sample, List<String> lines, List<Integer> filled, Shape shape) {
        int first = shape.firstNumeric();
        List<String> above = Cells.split(lines.get(filled.get(first - 1)), shape.delimiter());
        List<String> headers = above;
        List<String> units = List.of();
        int headerIndex = first - 1;
        if (first >= 2) {
            List<String> higher = Cells.split(lines.get(filled.get(first - 2)), shape.delimiter());
            if (higher.size() == shape.columns() && looksLikeUnits(above)) {
                headers = higher;
                units = above;
                headerIndex = first - 2;
            }
        }
        int headerLine = filled.get(headerIndex) + 1;
        if (headers.size() != shape.columns()) {
            throw InputProblem.in(file)
                    .row(headerLine)
                    .expected(shape.columns() + " headers, one per column of numbers")
                    .found(Integer.toString(headers.size()))
                    .advice("Give every column a name.")
                    .problem();
        }
        List<String> named = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            named.add(headers.get(i).isEmpty() ? "column " + (i + 1) : headers.get(i));
        }
        refuseDuplicates(file, headerLine, named);
        List<String> unitRow = new ArrayList<>(units);
        while (unitRow.size() < named.size()) {
            unitRow.add("");
        }
        return new Dialect(
                sample.charset(),
                sample.gzip(),
                shape.delimiter(),
                shape.decimalComma(),
                headerLine,
                filled.get(first) + 1,
                named,
                unitRow,
                textColumns(lines, filled, shape));
    }

    /** Units are short: no cell longer than twelve characters once its brackets are gone. */
    private static boolean looksLikeUnits(List<String> cells) {
        boolean anyFilled = false;
        for (String cell : cells) {
            String bare = cell.replaceAll("[\\[\\](){}]", "");
            if (bare.length() > 12) {
                return false;
            }
            anyFilled |= !bare.isEmpty();
        }
        return anyFilled;
    }

    private static void refuseDuplicates(String file, int line, List<String> headers) {
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < headers.size(); i++) {
            Integer earlier = seen.putIfAbsent(headers.get(i).toLowerCase(Locale.ROOT), i);
            if (earlier != null) {
                throw InputProblem.in(file)
                        .row(line)
                        .column(headers.get(i))
                        .value(headers.get(i))
                        .expected("different names for all columns")
                        .found("the same name in columns " + (earlier + 1) + " and " + (i + 1))
                        .advice("Rename or remove one of them.")
                        .problem();
            }
        }
    }

    private static List<Boolean> textColumns(List<String> lines, List<Integer> filled, Shape shape) {
        int[] numbers = new int[shape.columns()];
        int[] words = new int[shape.columns()];
        for (int i = shape.firstNumeric(); i < filled.size(); i++) {
            List<String> cells = Cells.split(lines.get(filled.get(i)), shape.delimiter());
            for (int c = 0; c < Math.min(cells.size(), shape.columns()); c++) {
                if (Cells.isNumber(cells.get(c), shape.decimalComma())) {
                    numbers[c]++;
                } else if (!Cells.isMissing(cells.get(c))) {
                    words[c]++;
                }
            }
        }
        List<Boolean> text = new ArrayList<>();
        for (int c = 0; c < shape.columns(); c++) {
            text.add(words[c] > numbers[c]);
        }
        return text;
    }
}
