package setwright.benchmarks.measure;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Times of ours and of a reference, taken in turn, so that what else the machine does meets both.
 *
 * @param ours       one for each round
 * @param reference  as many; empty where there is none
 */
public record PairedTimes(List<Spent> ours, List<Spent> reference) {
    public PairedTimes {
        ours = List.copyOf(ours);
        reference = List.copyOf(reference);
        if (ours.isEmpty() || (!reference.isEmpty() && reference.size() != ours.size())) {
            throw new IllegalArgumentException(
                    "every time of ours has one of the reference, got " + ours.size() + " and " + reference.size());
        }
    }

    /** Returns ours over the reference, round by round. */
    public Spread ratio(ToDoubleFunction<Spent> figure) {
        double[] ratios = new double[reference.size()];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = figure.applyAsDouble(ours.get(i)) / figure.applyAsDouble(reference.get(i));
        }
        return Spread.of(ratios);
    }

    /** Returns a figure of some rounds. */
    public static Spread of(List<Spent> rounds, ToDoubleFunction<Spent> figure) {
        return Spread.of(rounds.stream().mapToDouble(figure).toArray());
    }
}
