package setwright.core.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/*
 * Design note. Draws leave far more open than this, so that a wider tie would be no worse founded; but on a practice case the ranking was
 * right within a tenth (docs/proposals.md). Steps of different items do not compare; shares of their ranges do.
 */

/** Puts changes that are worth the same in the order in which a mechanic would try them. */
final class Ties {
    /** Worth the same: clocks of races show thousandths. */
    private static final double SAME_S = 0.001;

    private Ties() {}

    /** Returns those that are worth as much as the best, the most easily undone first, then the smaller turn. */
    static List<Candidate> best(List<Candidate> candidates) {
        double most = candidates.stream().mapToDouble(Candidate::score).max().orElse(0.0);
        return candidates.stream()
                .filter(candidate -> candidate.score() > most - SAME_S)
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
