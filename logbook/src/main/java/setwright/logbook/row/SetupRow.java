package setwright.logbook.row;

import java.time.Instant;
import java.util.Optional;

/**
 * A version of a car's sheet.
 *
 * @param number      counted from 1 for each car
 * @param parentId    the version that it was made from
 * @param sheet       the whole sheet, YAML
 * @param difference  from its parent, in words; empty when there is none
 * @param why         it was made; empty when nobody said
 * @param together    why several items belong together; empty when they do not
 */
public record SetupRow(
        long id,
        long carId,
        int number,
        Optional<Long> parentId,
        String sheet,
        String difference,
        String why,
        String together,
        Instant madeAt) {}
