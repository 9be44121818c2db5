package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;

/**
 * What is really going on in a simulated stint. Field names are those of the JSON.
 *
 * @param version  of this shape
 * @param car      short name
 * @param circuit  name
 * @param fault    in words, or none
 * @param changed  items that differ from the balanced car
 * @param driver   short name
 * @param seed     that gives the same laps again
 * @param laps     in order, the out lap first
 * @param hands    what the driver did because an axle slid
 * @param lost     where the car was lost
 */
record SimulationJson(
        int version,
        String car,
        String circuit,
        String fault,
        List<Changed> changed,
        String driver,
        long seed,
        List<Lap> laps,
        List<Hands> hands,
        Optional<Lost> lost) {

    record Changed(String item, double balanced, double now) {}

    record Lap(int lap, @JsonProperty("time_s") double timeS) {}

    record Hands(
            String reaction,
            String axle,
            int lap,

            @JsonProperty("station_m") double stationM,

            @JsonProperty("from_s") double fromS,

            @JsonProperty("to_s") double toS) {}

    record Lost(int lap, @JsonProperty("station_m") double stationM) {}
}
