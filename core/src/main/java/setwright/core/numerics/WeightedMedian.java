package setwright.core.numerics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The middle of values that do not all count alike. */
public final class WeightedMedian {
    private record Part(double value, double weight) {}

    private final List<Part> parts = new ArrayList<>();

    /**
     * Adds a value.
     *
     * @param value   finite
     * @param weight  0 or more; 0 counts for nothing
     */
    public void add(double value, double weight) {
        if (weight > 0.0) {
            parts.add(new Part(value, weight));
        }
    }

    /**
     * Returns the value that half of the weight lies below, by the line between the middles of neighbouring weights, so that equal
     * weights give the usual median; NaN without any.
     */
    public double value() {
        List<Part> sorted =
                parts.stream().sorted(Comparator.comparingDouble(Part::value)).toList();
        double half = 0.5 * sorted.stream().mapToDouble(Part::weight).sum();
        double below = 0.0;
        double lastMiddle = Double.NEGATIVE_INFINITY;
        double last = Double.NaN;
        for (Part part : sorted) {
            double middle = below + 0.5 * part.weight();
            if (middle >= half) {
                return Double.isNaN(last)
                        ? part.value()
                        : last + (part.value() - last) * (half - lastMiddle) / (middle - lastMiddle);
            }
            below += part.weight();
            lastMiddle = middle;
            last = part.value();
        }
        return last;
    }
}
