package setwright.core.car.setup;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import setwright.core.car.SetupItem;

/**
 * Which values an item can be turned to: whole steps away from its value, from its least one, and both ends of its range.
 *
 * @param item  of the sheet
 */
public record ItemRange(SetupItem item) {
    /** Sheets are written with few digits; a step is met when the rest is only rounding. */
    private static final double OF_A_STEP = 1.0e-6;

    /** Tells whether a value lies in the range, rounding aside. */
    public boolean holds(double value) {
        return value >= item.min() - OF_A_STEP * item.step() && value <= item.max() + OF_A_STEP * item.step();
    }

    /** Tells whether a value can be set. */
    public boolean reaches(double value) {
        return onStep(value - item.value())
                || onStep(value - item.min())
                || same(value, item.min())
                || same(value, item.max());
    }

    /** Tells whether two values differ by rounding only. */
    public boolean same(double one, double other) {
        return Math.abs(one - other) <= OF_A_STEP * item.step();
    }

    private boolean onStep(double difference) {
        double steps = difference / item.step();
        return Math.abs(steps - Math.rint(steps)) <= OF_A_STEP;
    }

    /** Returns the value so many steps away, without the rounding of binary fractions; empty beyond the range. */
    public OptionalDouble stepsAway(long steps) {
        double value = BigDecimal.valueOf(item.value())
                .add(BigDecimal.valueOf(item.step()).multiply(BigDecimal.valueOf(steps)))
                .round(new MathContext(12, RoundingMode.HALF_EVEN))
                .doubleValue();
        return holds(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Returns the value so many steps away, or fewer where the range ends before. */
    public double asFarAs(long steps) {
        long left = steps;
        while (left != 0 && stepsAway(left).isEmpty()) {
            left -= Long.signum(left);
        }
        return stepsAway(left).orElse(item.value());
    }

    /** Returns which values below and above can be reached, in words; the present one is no choice. */
    public String nearest(double value) {
        long below = (long) Math.floor((value - item.value()) / item.step());
        List<String> near = LongStream.of(below, below + 1)
                .mapToObj(this::stepsAway)
                .flatMapToDouble(OptionalDouble::stream)
                .filter(other -> !same(other, item.value()))
                .mapToObj(ItemRange::plain)
                .toList();
        return near.size() == 1 ? "the nearest is " + near.get(0) : "the nearest are " + String.join(" or ", near);
    }

    /** Returns range and step in words. */
    public String words() {
        String unit = item.unit().isEmpty() ? "" : " " + item.unit();
        return item.name() + " is at " + plain(item.value()) + unit + " and goes from " + plain(item.min()) + " to "
                + plain(item.max()) + unit + " in steps of " + plain(item.step());
    }

    /** Returns a value without trailing zeros. */
    public static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
