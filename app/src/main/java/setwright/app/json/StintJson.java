package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.OptionalDouble;
import setwright.app.logbook.KeptStint;

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
        Instant added) {

    static StintJson of(KeptStint kept) {
        return new StintJson(
                kept.number(),
                kept.recording().name(),
                kept.driver().name(),
                kept.car().name(),
                kept.setup().number(),
                kept.circuit().name(),
                kept.stint().laps(),
                kept.stint().goodLaps(),
                known(kept.stint().bestS()),
                known(kept.stint().meanS()),
                kept.stint().addedAt());
    }

    private static OptionalDouble known(OptionalDouble value) {
        return value.isPresent() ? Numbers.known(value.getAsDouble()) : value;
    }
}
