package setwright.intake.mdf;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * For each number or range of numbers a text or another conversion.
 *
 * <p><b>Source:</b> ASAM MDF 4, CCBLOCK, types 7 (value to text or scale) and 8 (range to text or scale); the last reference is
 * for all other numbers. A text that is itself a number counts as that number; one that is not is no number (a bad cell), and
 * no text at all an empty cell.
 */
final class ScaleTable implements Conversion {
    private final Ranges ranges;
    private final List<Conversion> scales;
    private final Conversion otherwise;

    ScaleTable(Ranges ranges, List<Conversion> scales, Conversion otherwise) {
        this.ranges = ranges;
        this.scales = List.copyOf(scales);
        this.otherwise = otherwise;
    }

    @Override
    public double of(double raw) {
        return Double.isNaN(raw) ? Double.NaN : scale(raw).of(raw);
    }

    @Override
    public Optional<String> words(double raw) {
        return Double.isNaN(raw) ? Optional.empty() : scale(raw).words(raw);
    }

    @Override
    public Optional<String> reason() {
        return Stream.concat(scales.stream(), Stream.of(otherwise))
                .flatMap(scale -> scale.reason().stream())
                .findFirst();
    }

    private Conversion scale(double raw) {
        int index = ranges.indexOf(raw);
        return index < 0 ? otherwise : scales.get(index);
    }
}
