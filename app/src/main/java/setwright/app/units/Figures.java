package setwright.app.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes values as people read them.
 *
 * @param units  of speed and distance
 * @param minus  the minus sign: a true one where the medium has it, else a hyphen
 */
public record Figures(UnitSystem units, String minus) {
    /** Shown where a value is not known. */
    public static final String UNKNOWN = "unknown";

    private static final Pattern MINUS = Pattern.compile("(?<=[\\s(]|^)-(?=[0-9])");
    private static final Pattern SPEED = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)(\\s)km/h");

    private static final MathContext SIX_DIGITS = new MathContext(6);

    /** Between a figure and its unit, so that no line breaks there: a no-break space. */
    public static final char KEPT_TOGETHER = '\u00a0';

    /** Figures for a page, with a true minus sign. */
    public static Figures forPage(UnitSystem units) {
        return new Figures(units, "\u2212");
    }

    /** Figures for a terminal, in ASCII. */
    public static Figures forTerminal(UnitSystem units) {
        return new Figures(units, "-");
    }

    /** Returns the value with so many decimals. */
    public String number(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return UNKNOWN;
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
        return value < 0.0 && !isZero(text) ? minus + text : text;
    }

    /** Returns the value with at most six significant digits and no trailing zeros. */
    public String plain(double value) {
        if (!Double.isFinite(value)) {
            return UNKNOWN;
        }
        String text =
                new BigDecimal(Math.abs(value), SIX_DIGITS).stripTrailingZeros().toPlainString();
        return value < 0.0 ? minus + text : text;
    }

    /** Returns the value as above, in brackets when negative, so that it may stand behind an operator. */
    public String inFormula(double value) {
        String text = plain(value);
        return text.startsWith(minus) ? "(" + text + ")" : text;
    }

    /** Returns the value with its sign in front even when positive; zero has none. */
    public String signed(double value, int decimals) {
        String text = number(value, decimals);
        return value > 0.0 && Double.isFinite(value) && !isZero(text) ? "+" + text : text;
    }

    /** Returns what stands between a value before and after. */
    public String arrow() {
        return minus.equals("-") ? "->" : "\u2192";
    }

    /** Returns how sure something is, in whole per cent; never all of it. */
    public String sureness(double probability) {
        return probability >= 0.995 ? "over 99" + KEPT_TOGETHER + "%" : percent(probability);
    }

    private static String joined(String value, String unit) {
        return value + KEPT_TOGETHER + unit;
    }

    private static boolean isZero(String text) {
        return text.chars().noneMatch(c -> c >= '1' && c <= '9');
    }

    /** Returns an angle given in rad as signed deg, with unit. */
    public String degrees(double rad) {
        return joined(signed(Math.toDegrees(rad), 2), "deg");
    }

    /** Returns an angle's size given in rad, in deg, with unit. */
    public String degreesSize(double rad) {
        return joined(number(Math.abs(Math.toDegrees(rad)), 2), "deg");
    }

    /** Returns a time in s with so many decimals and unit. */
    public String seconds(double seconds, int decimals) {
        return joined(number(seconds, decimals), "s");
    }

    /** Returns a speed given in m/s, with unit. */
    public String speed(double mps) {
        return joined(number(units.speed(mps), 0), units.speedUnit());
    }

    /** Returns a distance given in m, with unit. */
    public String distance(double metres) {
        return joined(number(units.distance(metres), 1), units.distanceUnit());
    }

    /** Returns a share 0..1 in whole per cent. */
    public String percent(double share) {
        return joined(number(100.0 * share, 0), "%");
    }

    /** Returns a probability with two decimals; never a certainty, since none is. */
    public String probability(double probability) {
        if (probability > 0.99) {
            return "over 0.99";
        }
        return probability < 0.01 ? "under 0.01" : number(probability, 2);
    }

    /** Returns a lap time as minutes and seconds with thousandths. */
    public String lapTime(double seconds) {
        if (!Double.isFinite(seconds)) {
            return UNKNOWN;
        }
        long thousandths = Math.round(seconds * 1000.0);
        return String.format(
                Locale.ROOT, "%d:%02d.%03d", thousandths / 60_000, thousandths / 1000 % 60, thousandths % 1000);
    }

    /** Returns numbers as a list in words: {@code 1, 4 and 7}. */
    public static String list(List<Integer> numbers) {
        return words(numbers.stream().map(String::valueOf).toList());
    }

    /** Returns words as a list: {@code a, b and c}. */
    public static String words(List<String> items) {
        if (items.size() < 2) {
            return String.join("", items);
        }
        return items.subList(0, items.size() - 1).stream().collect(Collectors.joining(", ")) + " and "
                + items.get(items.size() - 1);
    }

    /** Returns {@code corner 4} or {@code corners 1, 4 and 7}. */
    public static String corners(List<Integer> numbers) {
        return (numbers.size() == 1 ? "corner " : "corners ") + list(numbers);
    }

    /** Returns {@code lap 4} or {@code laps 1, 4 and 7}. */
    public static String laps(List<Integer> numbers) {
        return (numbers.size() == 1 ? "lap " : "laps ") + list(numbers);
    }

    /** Returns the words with their first letter large. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Returns the words with their first letter small, to stand within a sentence. */
    public static String uncapital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    /** Returns the text as a sentence: first letter large, a full stop at the end. */
    public static String sentence(String text) {
        String trimmed = text.strip();
        if (trimmed.isEmpty()) {
            return "";
        }
        String first = capital(trimmed);
        return first.endsWith(".") || first.endsWith("?") || first.endsWith("!") ? first : first + ".";
    }

    /** Returns what the core says as a sentence, in the units and with the minus that are shown. */
    public String told(String text) {
        return shown(sentence(text));
    }

    /**
     * Returns words of the core, which speaks of km/h and writes a plain minus, as they are shown.
     *
     * @param text  in metric units
     */
    public String shown(String text) {
        String signs = MINUS.matcher(text).replaceAll(minus);
        return units == UnitSystem.METRIC
                ? signs
                : SPEED.matcher(signs)
                        .replaceAll(found -> String.format(
                                        Locale.ROOT,
                                        "%.0f",
                                        units.speed(Double.parseDouble(found.group(1)) / UnitSystem.METRIC.speed(1.0)))
                                + found.group(2)
                                + units.speedUnit());
    }
}
