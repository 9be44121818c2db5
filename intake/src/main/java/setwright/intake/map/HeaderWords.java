package setwright.intake.map;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.core.recording.Quantity;
import setwright.intake.table.TableColumn;

/**
 * A header taken apart: its words in lower case, and the spellings that may be a unit.
 *
 * <p>Words part at anything that is no letter or digit, at humps of mixed case, between letters and digits, and where a run of
 * letters is made of two known words ({@code yawrate}). A unit stands in a row of its own, in brackets, or last.
 *
 * @param words           in order, without a trailing unit
 * @param unitSpellings   most explicit first
 * @param explicitUnit    whether the first spelling stood in brackets or in a row of units
 */
record HeaderWords(List<String> words, List<String> unitSpellings, boolean explicitUnit) {
    private static final Pattern BRACKETS = Pattern.compile("[\\[({<]([^\\])}>]*)[\\])}>]");
    private static final Pattern PIECES =
            Pattern.compile("[A-Z]+(?![a-z])|[A-Z]?[\\p{Ll}]+|[A-Z]+|\\d+|[°º%µ]+|\\p{L}+");

    static HeaderWords of(TableColumn column) {
        return of(column.header(), column.unitRow());
    }

    static HeaderWords of(String header, String unitRow) {
        Set<String> units = new LinkedHashSet<>();
        String row = unitRow.replaceAll("^[\\[({<]|[\\])}>]$", "").strip();
        if (!row.isEmpty()) {
            units.add(row);
        }
        Matcher brackets = BRACKETS.matcher(header);
        while (brackets.find()) {
            if (!Units.spelled(brackets.group(1)).isEmpty()) {
                units.add(brackets.group(1));
            }
        }
        boolean explicit = !units.isEmpty();
        String bare = brackets.replaceAll(" ").strip();
        // What follows the last separator, whole: "m/s2", "rads", "01".
        String tail = bare.replaceAll("^.*[_\\s.,:|]", "");
        if (!tail.equals(bare) || bare.contains("/")) {
            units.add(tail);
        }
        boolean tailIsUnit =
                tail.length() < bare.length() && !Units.spelled(tail).isEmpty();
        List<String> words = pieces(tailIsUnit ? bare.substring(0, bare.length() - tail.length()) : bare);
        if (words.size() > 1) {
            units.add(words.get(words.size() - 1));
        }
        List<String> known = new ArrayList<>(units);
        return new HeaderWords(expand(words), known, explicit);
    }

    private static List<String> pieces(String text) {
        List<String> pieces = new ArrayList<>();
        Matcher matcher = PIECES.matcher(text);
        while (matcher.find()) {
            pieces.add(matcher.group().toLowerCase(Locale.ROOT));
        }
        return pieces;
    }

    private static List<String> expand(List<String> pieces) {
        List<String> words = new ArrayList<>();
        for (String piece : pieces) {
            words.addAll(Vocabulary.segment(piece));
        }
        return words;
    }

    /** Returns the unit that the header names for this quantity. */
    Optional<Unit> unitFor(Quantity quantity) {
        for (String spelling : unitSpellings) {
            Optional<Unit> unit = Units.spelled(spelling, quantity);
            if (unit.isPresent()) {
                return unit;
            }
        }
        return Optional.empty();
    }
}
