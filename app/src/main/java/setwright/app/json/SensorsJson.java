package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What sensors other than those of the motion tell, and what could not be looked at. */
record SensorsJson(
        List<Told> told,
        List<Missing> missing,
        List<Histogram> dampers,
        @JsonProperty("ride_heights") List<Height> rideHeights) {

    record Told(
            String subject,
            @JsonProperty("stands_out") Optional<String> standsOut,
            List<String> sentences,
            String caution,
            Map<String, OptionalDouble> figures) {}

    record Missing(String subject, boolean recorded, String why) {}

    record Histogram(
            String wheel,
            @JsonProperty("edges_mm_per_s") List<OptionalDouble> edgesMmPerS,
            List<OptionalDouble> shares) {}

    record Height(
            @JsonProperty("speed_kmh") OptionalDouble speedKmh,
            @JsonProperty("front_mm") OptionalDouble frontMm,
            @JsonProperty("rear_mm") OptionalDouble rearMm,
            @JsonProperty("rake_mm") OptionalDouble rakeMm,
            @JsonProperty("rake_mm_low") OptionalDouble rakeMmLow,
            @JsonProperty("rake_mm_high") OptionalDouble rakeMmHigh,
            int laps) {}
}
