package setwright.core.simulation.sweep;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Laps over one or two setup items.
 *
 * @param items    one or two
 * @param present  the lap with the setup as it is
 * @param laps     one for each combination of values; the last item's values change first
 */
public record SetupSweep(List<SweepItem> items, SweptLap present, List<SweptLap> laps) {
    public SetupSweep {
        items = List.copyOf(items);
        laps = List.copyOf(laps);
    }

    /** Returns the lap with these values' places. */
    public SweptLap at(int first, int second) {
        return laps.get(
                items.size() == 1 ? first : first * items.get(1).values().size() + second);
    }

    /** Returns the quickest lap; among equals, the one closest to the front of the list. */
    public SweptLap quickest() {
        return laps.stream().min(Comparator.comparingDouble(SweptLap::timeS)).orElseThrow();
    }

    /** Returns the numbers of the slower half of the corners, by their lowest speed in the present setup. */
    public Set<Integer> slowCorners() {
        return numbers(half(), false);
    }

    /** Returns the numbers of the faster half. */
    public Set<Integer> fastCorners() {
        return numbers(half(), true);
    }

    private int half() {
        return (present.corners().size() + 1) / 2;
    }

    private Set<Integer> numbers(int half, boolean fast) {
        return new TreeSet<>(present.corners().stream()
                .sorted(Comparator.comparingDouble(SweptCorner::lowestMps).thenComparing(SweptCorner::number))
                .skip(fast ? half : 0)
                .limit(fast ? Long.MAX_VALUE : half)
                .map(SweptCorner::number)
                .toList());
    }
}
