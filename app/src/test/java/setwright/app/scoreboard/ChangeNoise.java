package setwright.app.scoreboard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.stat.descriptive.rank.Median;

/**
 * How far chance moves the true change of balance in one cell, from the truth's own symmetry.
 *
 * <p>The truth files do not give this noise. But an item turned up and turned down by about the same should do about the
 * opposite, so that what both have in common, {@code s = (h- d+ + h+ d-) / (h+ + h-)} for turns of sizes {@code h+} and
 * {@code h-}, is no effect of the item: it is chance, the curvature of the effect, and the chance in the reference run that
 * every difference is taken against. Its size over all items is {@code 1.4826 median |s|}. With the same chance in every run, of
 * variance v, a difference of two runs carries 2 v, and s, half of two runs' and all of the reference's, 1.5 v: one standard
 * deviation of a difference is sqrt(4/3) times that size.
 * The median is that of the sizes, not of the distances from the middle: an offset common to all items is the reference run's
 * chance and belongs to the noise. 1.4826 makes it a standard deviation where chance is normal (robust statistics, the usual
 * factor for a median absolute deviation).
 *
 * <p>An effect is clear of it beyond two standard deviations, and at least 0.01 deg: the files round to 0.001 deg, and a
 * hundredth is far below anything a driver or these laps can show.
 */
final class ChangeNoise {
    private static final double NORMAL = 1.4826;
    private static final double OF_A_DIFFERENCE = Math.sqrt(4.0 / 3.0);
    private static final double STANDARD_DEVIATIONS = 2.0;
    private static final double LEAST_DEG = 0.01;
    /** Of fewer items the middle one says little; our choice. */
    private static final int FEWEST_PAIRS = 5;

    private ChangeNoise() {}

    /** Returns the size in deg beyond which an effect is clear of chance; empty when too few items were turned both ways. */
    static OptionalDouble clearAboveDeg(List<Truth.Change> changes, ChangeCell cell) {
        double[] sizes = changes.stream()
                .filter(up -> up.spins() == 0 && up.to() > up.from())
                .flatMap(up -> opposite(changes, up).flatMap(down -> common(up, down, cell)).stream())
                .mapToDouble(Math::abs)
                .toArray();
        return sizes.length < FEWEST_PAIRS
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(
                        STANDARD_DEVIATIONS * OF_A_DIFFERENCE * NORMAL * new Median().evaluate(sizes), LEAST_DEG));
    }

    private static Optional<Truth.Change> opposite(List<Truth.Change> changes, Truth.Change up) {
        return changes.stream()
                .filter(down -> down.item().equals(up.item()) && down.spins() == 0 && down.to() < down.from())
                .findFirst();
    }

    private static Optional<Double> common(Truth.Change up, Truth.Change down, ChangeCell cell) {
        OptionalDouble plus = up.balanceDeg(cell);
        OptionalDouble minus = down.balanceDeg(cell);
        if (plus.isEmpty() || minus.isEmpty()) {
            return Optional.empty();
        }
        double sizeUp = up.to() - up.from();
        double sizeDown = down.from() - down.to();
        return Optional.of((sizeDown * plus.getAsDouble() + sizeUp * minus.getAsDouble()) / (sizeUp + sizeDown));
    }
}
