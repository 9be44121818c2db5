package setwright.logbook.row;

import java.time.Instant;

/**
 * A change that is driven back to back.
 *
 * @param firstStintId  the first run without the change
 * @param beforeId      setup without it
 * @param changeWords   the change, in words
 * @param together      why several items belong together; empty for one item
 * @param plan          order of the runs, such as {@code ABA}
 * @param lapsARun      planned
 * @param state         {@code open} or {@code over}
 */
public record TrialRow(
        long id,
        long carId,
        long driverId,
        long circuitId,
        long firstStintId,
        long beforeId,
        String changeWords,
        String together,
        String plan,
        int lapsARun,
        String state,
        Instant openedAt) {
    /** Under way: runs may still be added. */
    public static final String OPEN = "open";

    /** Decided or given up. */
    public static final String OVER = "over";
}
