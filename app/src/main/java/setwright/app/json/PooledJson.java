package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalDouble;

/** What {@code diagnose --json} prints of several recordings, version 1: docs/diagnose-pooled.schema.json. */
record PooledJson(int version, List<Stint> stints, Pooled pooled) {

    /** One recording with its own answer, as of a single recording. */
    record Stint(String driver, DiagnosisJson diagnosis) {}

    record Pooled(List<String> drivers, List<Finding> findings, String verdict, String reason, List<String> next) {}

    record Finding(
            String phase,
            String speed,
            String balance,
            String kind,
            @JsonProperty("belongs_to") String belongsTo,
            String driver,
            @JsonProperty("probability_common") OptionalDouble probabilityCommon,
            @JsonProperty("spread_deg") OptionalDouble spreadDeg,
            List<Part> drivers,
            String why) {}

    record Part(
            String driver,
            @JsonProperty("size_deg") OptionalDouble sizeDeg,
            @JsonProperty("deviation_deg") OptionalDouble deviationDeg,
            int seen,
            int laps,
            @JsonProperty("probability_alone") OptionalDouble probabilityAlone) {}
}
