package setwright.core.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/*
 * Design note. A tenth of what a change is worth is far below what its draws leave open, so that changes within it are as good as each
 * other: the same share decides between sizes of one item. Steps of different items do not compare; shares of their ranges do.
 */

/** Puts changes that are worth nearly the same in the order in which a mechanic would try them. */
final class Ties {
    /** A change with this share of the best one's worth is as good. */
    static final double NEARLY_AS_GOOD = 0.9;

    private Ties() {}

    /** Returns those that are worth nearly as much as the best, the most easily undone first, then the smaller turn. */
    static List<Candidate> best(List<Candidate> candidates) {
        double most = candidates.stream().mapToDouble(Candidate::score).max().orElse(0.0);
        return candidates.stream()
                .filter(candidate -> candidate.score() >= (most > 0.0 ? NEARLY_AS_GOOD * most : most))
                .sorted(Comparator.comparing((Candidate candidate) ->
                                Undoing.of(candidate.turn().item()))
                        .thenComparingDouble(candidate -> candidate.turn().share())
                        .thenComparing(
                                Comparator.comparingDouble(Candidate::score).reversed()))
                .toList();
    }

    /** Returns all but one, in the same order. */
    static List<Candidate> without(Candidate chosen, List<Candidate> candidates) {
        List<Candidate> others = new ArrayList<>(candidates);
        others.remove(chosen);
        return others;
    }
}
