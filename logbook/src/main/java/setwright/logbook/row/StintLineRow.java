package setwright.logbook.row;

import java.time.Instant;
import java.util.OptionalDouble;

/** A stint as a list shows it: names instead of what they point to, figures as in {@link StintRow}. */
public record StintLineRow(
        long id,
        String recording,
        String driver,
        String car,
        int setup,
        String circuit,
        int laps,
        int goodLaps,
        OptionalDouble bestS,
        OptionalDouble meanS,
        boolean goodOrder,
        Instant addedAt) {}
