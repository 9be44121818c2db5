package setwright.app.fleet;

import java.io.Serializable;
import java.util.List;

/**
 * What came of a run.
 *
 * @param recordings  in the tree
 * @param before      of them judged, or listed as failed, by runs before this one
 * @param judged      of all, with a verdict
 * @param notEnough   of all, without enough evidence
 * @param failed      of all, could not be read or judged
 * @param left        of all, not looked at yet
 * @param failures    the first of those that failed, in the order of their paths
 * @param seconds     taken by this run
 */
public record FleetCount(
        int recordings,
        int before,
        int judged,
        int notEnough,
        int failed,
        int left,
        List<Failure> failures,
        double seconds)
        implements Serializable {
    public FleetCount {
        failures = List.copyOf(failures);
    }

    /**
     * A recording that could not be judged.
     *
     * @param path    below the root of the tree
     * @param reason  as the command line would give it
     */
    public record Failure(String path, String reason) implements Serializable {}
}
