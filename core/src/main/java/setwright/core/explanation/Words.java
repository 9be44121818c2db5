package setwright.core.explanation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import setwright.core.car.setup.SetupDifference;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.SpeedRange;

/** Turns of phrase that several reasons share. */
final class Words {
    private Words() {}

    static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    static String degrees(double rad) {
        double degrees = Math.toDegrees(rad);
        return format("%.2f deg", Math.abs(degrees) < 0.005 ? 0.0 : degrees);
    }

    static String percent(double share) {
        return Math.round(100.0 * share) + " %";
    }

    /** Probabilities are never certain. */
    static String probability(double p) {
        return format("%.2f", Math.min(0.99, Math.max(0.01, p)));
    }

    static String of(int some, int all, String one, String many) {
        return some + " of " + all + " " + (all == 1 ? one : many);
    }

    static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    static String corners(List<Integer> numbers) {
        return numbers.size() == 1 ? "corner " + numbers.get(0) : "corners " + list(numbers);
    }

    /** {@code 2, 4 and 7}. */
    static String list(List<?> items) {
        if (items.size() < 2) {
            return items.stream().map(String::valueOf).collect(Collectors.joining());
        }
        return items.subList(0, items.size() - 1).stream().map(String::valueOf).collect(Collectors.joining(", "))
                + " and " + items.get(items.size() - 1);
    }

    static String place(Phase phase) {
        return switch (phase) {
            case BRAKING -> "under braking";
            case ENTRY -> "on entry";
            case MID -> "mid-corner";
            case EXIT -> "on the exit";
        };
    }

    static String place(Phase phase, SpeedRange speed) {
        return place(phase)
                + switch (speed) {
                    case ALL -> "";
                    case LOW -> " in the slower corners";
                    case HIGH -> " in the faster corners";
                };
    }

    /** What the laps are held against. */
    static String reference(Diagnosis diagnosis) {
        return diagnosis.grounds().baseline().map(good -> "in the baseline").orElse("on a balanced car");
    }

    static String axle(BalanceSign sign) {
        return sign == BalanceSign.UNDERSTEER ? "front" : "rear";
    }

    static String item(String name) {
        return name.replace('_', ' ');
    }

    /** What was changed since the baseline: {@code front bar 3 to 5}. */
    static String changes(List<SetupDifference> changes) {
        return list(changes.stream()
                .map(change -> change.words()
                        + (change.from().isEmpty()
                                ? " new on the sheet"
                                : change.to().isEmpty()
                                        ? " no more on the sheet"
                                        : " " + change.from() + " to " + change.to()))
                .toList());
    }

    /** A setting as it stands on a sheet. */
    static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
