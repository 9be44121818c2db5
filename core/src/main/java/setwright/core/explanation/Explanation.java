package setwright.core.explanation;

import java.util.List;

/**
 * Why a finding is one.
 *
 * @param reasons       the chain, in the order in which one would tell it
 * @param alternatives  what else it could be, the likeliest first
 */
public record Explanation(List<Reason> reasons, List<Alternative> alternatives) {
    public Explanation {
        reasons = List.copyOf(reasons);
        alternatives = List.copyOf(alternatives);
    }
}
