package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What {@code diagnose --json} prints of the axles. Numbers that are not known are null. */
record AxlesJson(Axle front, Axle rear, Wheels wheels, List<Hands> hands, Sources measured) {

    record Axle(
            OptionalDouble grip,
            @JsonProperty("grip_low") OptionalDouble gripLow,
            @JsonProperty("grip_high") OptionalDouble gripHigh,
            @JsonProperty("load_doubt") OptionalDouble loadDoubt,
            @JsonProperty("peak_slip_deg") OptionalDouble peakSlipDeg,
            @JsonProperty("peak_slip_deg_low") OptionalDouble peakSlipDegLow,
            @JsonProperty("peak_slip_deg_high") OptionalDouble peakSlipDegHigh,
            @JsonProperty("known_to_slip_share") OptionalDouble knownToSlipShare,
            @JsonProperty("limit_share") OptionalDouble limitShare,
            List<Point> curve) {}

    record Point(
            @JsonProperty("slip_deg") OptionalDouble slipDeg,
            OptionalDouble force,
            OptionalDouble low,
            OptionalDouble high,
            int laps) {}

    record Wheels(
            @JsonProperty("locks_seen") boolean locksSeen,
            @JsonProperty("spin_seen") boolean spinSeen,
            @JsonProperty("inside_seen") boolean insideSeen,
            List<Event> events) {}

    record Event(
            String kind,
            int lap,
            OptionalInt corner,
            @JsonProperty("station_m") OptionalDouble stationM,
            @JsonProperty("duration_s") OptionalDouble durationS,
            @JsonProperty("slip_ratio") OptionalDouble slipRatio) {}

    record Hands(String kind, String cause, List<Integer> corners, int count) {}

    record Sources(
            @JsonProperty("yaw_rate") boolean yawRate,
            @JsonProperty("lateral_acceleration") boolean lateralAcceleration) {}
}
