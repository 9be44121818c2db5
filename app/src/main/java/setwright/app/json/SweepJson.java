package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@code sweep --json} prints, version 1: docs/sweep.schema.json. Fields are only ever added to a version.
 */
record SweepJson(
        int version,
        String circuit,
        String car,
        Optional<String> recording,
        List<Item> items,
        @JsonProperty("slow_corners") List<Integer> slowCorners,
        @JsonProperty("fast_corners") List<Integer> fastCorners,
        Lap present,
        List<Lap> laps,
        @JsonProperty("not_seen") List<String> notSeen) {

    record Item(String name, String unit, OptionalDouble present, List<OptionalDouble> values) {}

    record Lap(
            List<OptionalDouble> values,
            @JsonProperty("lap_time_s") OptionalDouble lapTimeS,
            @JsonProperty("difference_s") OptionalDouble differenceS,
            @JsonProperty("lowest_kmh") OptionalDouble lowestKmh,
            @JsonProperty("highest_kmh") OptionalDouble highestKmh,
            @JsonProperty("balance_slow_deg") OptionalDouble balanceSlowDeg,
            @JsonProperty("balance_fast_deg") OptionalDouble balanceFastDeg,
            @JsonProperty("front_share") OptionalDouble frontShare,
            @JsonProperty("rear_share") OptionalDouble rearShare,
            @JsonProperty("engine_share") OptionalDouble engineShare,
            List<Corner> corners) {}

    record Corner(
            int corner,
            @JsonProperty("lowest_kmh") OptionalDouble lowestKmh,
            @JsonProperty("time_s") OptionalDouble timeS,
            @JsonProperty("balance_deg") OptionalDouble balanceDeg) {}
}
