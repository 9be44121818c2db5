package setwright.app.scoreboard;

import java.util.Collection;
import java.util.stream.Collectors;

/** Lists in words. */
final class Words {
    private Words() {}

    /** Returns {@code 1 4 7}; {@code none} for an empty list. */
    static String numbers(Collection<Integer> numbers) {
        return numbers.isEmpty()
                ? "none"
                : numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** Returns {@code entry or mid}. */
    static String choice(Collection<String> words) {
        return String.join(" or ", words);
    }
}
