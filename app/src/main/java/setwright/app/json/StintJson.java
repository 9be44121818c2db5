package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.OptionalDouble;
import setwright.app.logbook.KeptStint;
import setwright.logbook.row.StintLineRow;
import setwright.logbook.row.StintRow;

/** A stint of the logbook. */
record StintJson(
        long stint,
        String recording,
        String driver,
        String car,
        int setup,
        String circuit,
        int laps,
        @JsonProperty("good_laps") int goodLaps,
        @JsonProperty("best_s") OptionalDouble bestS,
        @JsonProperty("mean_s") OptionalDouble meanS,
        @JsonProperty("good_order") boolean goodOrder,
        Instant added) {

    static StintJson of(KeptStint kept) {
        StintRow row = kept.stint();
        return of(new StintLineRow(
                kept.number(),
                kept.recording().name(),
                kept.driver().name(),
                kept.car().name(),
                kept.setup().number(),
                kept.circuit().name(),
                row.laps(),
                row.goodLaps(),
                row.bestS(),
                row.meanS(),
                row.goodOrder(),
                row.addedAt()));
    }

    static StintJson of(StintLineRow line) {
        return new StintJson(
                line.id(),
                line.recording(),
                line.driver(),
                line.car(),
                line.setup(),
                line.circuit(),
                line.laps(),
                line.goodLaps(),
                known(line.bestS()),
                known(line.meanS()),
                line.goodOrder(),
                line.addedAt());
    }

    private static OptionalDouble known(OptionalDouble value) {
        return value.isPresent() ? Numbers.known(value.getAsDouble()) : value;
    }
}
