package setwright.intake.mdf;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Ranges of numbers in a table of a CCBLOCK, in any order and overlapping as they like; the first that holds a number counts.
 *
 * <p>The ends cut the axis into points and gaps. Which range each of them belongs to is worked out once, so that a look-up is a
 * search among the ends, whatever the table.
 */
final class Ranges {
    private final double[] ends;
    private final int[] atEnd;
    private final int[] behindEnd;

    /**
     * Makes them; a range whose lower end lies above its upper one holds nothing.
     *
     * @param closed  tells that the upper end belongs to a range; it always does where both ends are equal
     */
    Ranges(double[] lower, double[] upper, boolean closed) {
        List<Integer> real = IntStream.range(0, lower.length)
                .filter(i -> lower[i] <= upper[i])
                .boxed()
                .toList();
        // Adding zero makes minus zero plus zero, which a search tells apart.
        this.ends = real.stream()
                .flatMapToDouble(i -> DoubleStream.of(lower[i] + 0.0, upper[i] + 0.0))
                .sorted()
                .distinct()
                .toArray();
        this.atEnd = new int[ends.length];
        this.behindEnd = new int[ends.length];
        List<Integer> starting =
                real.stream().sorted(Comparator.comparingDouble(i -> lower[i])).toList();
        List<Integer> stopping =
                real.stream().sorted(Comparator.comparingDouble(i -> upper[i])).toList();
        TreeSet<Integer> held = new TreeSet<>();
        int start = 0;
        int stop = 0;
        for (int k = 0; k < ends.length; k++) {
            while (start < starting.size() && lower[starting.get(start)] <= ends[k]) {
                held.add(starting.get(start++));
            }
            int from = stop;
            while (stop < stopping.size() && upper[stopping.get(stop)] <= ends[k]) {
                stop++;
            }
            List<Integer> over = stopping.subList(from, stop);
            if (!closed) {
                over.stream().filter(i -> lower[i] < upper[i]).forEach(held::remove);
            }
            atEnd[k] = held.isEmpty() ? -1 : held.first();
            over.forEach(held::remove);
            behindEnd[k] = held.isEmpty() ? -1 : held.first();
        }
    }

    /** Returns which range holds a number, the first if several do; -1 when none does. */
    int indexOf(double raw) {
        int found = Arrays.binarySearch(ends, raw + 0.0);
        if (found >= 0) {
            return atEnd[found];
        }
        int before = -found - 2;
        return before < 0 ? -1 : behindEnd[before];
    }
}
