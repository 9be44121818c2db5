package setwright.app.scoreboard;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * One line of a case: truth beside answer.
 *
 * @param what    what is compared
 * @param truth   in words
 * @param answer  in words
 * @param counts  what the comparison adds to the totals; empty when it is shown only
 */
record Row(String what, String truth, String answer, Map<Measure, Count> counts) {
    Row {
        counts = new EnumMap<>(counts.isEmpty() ? new EnumMap<>(Measure.class) : counts);
    }

    static Row shown(String what, String truth, String answer) {
        return new Row(what, truth, answer, Map.of());
    }

    static Row counted(String what, String truth, String answer, Measure measure, Count count) {
        return new Row(what, truth, answer, Map.of(measure, count));
    }

    /** Returns how right the answer is, in words; empty where nothing is counted. */
    String right() {
        Optional<Map.Entry<Measure, Count>> first = counts.entrySet().stream().findFirst();
        return first.map(entry -> words(entry.getKey(), entry.getValue())).orElse("");
    }

    private static String words(Measure measure, Count count) {
        if (count.of() != 1) {
            return count.toString();
        }
        boolean wanted = measure.aim() != Measure.Aim.FEW;
        if (!wanted) {
            return count.hit() == 0 ? "yes" : "false alarm";
        }
        return count.hit() == 1 ? "yes" : "NO";
    }
}
