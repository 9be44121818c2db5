package setwright.core.pooling;

import java.util.List;
import setwright.core.judgement.Verdict;

/**
 * The answer for several stints of one car.
 *
 * @param stints    each with its own diagnosis, as given
 * @param drivers   names, in the order of their first stints
 * @param findings  held against all drivers; what belongs to the car first, then the surest
 * @param verdict   what to do next with the car and its drivers
 * @param reason    why, in a sentence or two
 */
public record PooledDiagnosis(
        List<DriverStint> stints, List<String> drivers, List<PooledFinding> findings, Verdict verdict, String reason) {
    public PooledDiagnosis {
        stints = List.copyOf(stints);
        drivers = List.copyOf(drivers);
        findings = List.copyOf(findings);
    }
}
