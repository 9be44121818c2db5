package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@code predict --json} prints, version 1: docs/predict.schema.json. Fields are only ever added to a version. Numbers that
 * are not known are null.
 */
record PredictionJson(
        int version,
        Recording recording,
        String car,
        boolean asked,
        List<Prediction> predictions,
        List<String> remarks,
        String caution) {

    record Recording(String name, List<Integer> used, boolean repeatable) {}

    record Prediction(
            List<Change> changes,
            String answer,
            @JsonProperty("lap_time_s") Effect lapTimeS,
            List<PhaseEffect> phases,
            List<CornerEffect> corners,
            Optional<Lap> lap,
            List<String> reasons,
            List<String> doubts) {}

    record Change(String item, double from, double to, String unit) {}

    record Effect(
            OptionalDouble value,
            OptionalDouble low,
            OptionalDouble high,
            @JsonProperty("probability_positive") OptionalDouble probabilityPositive,
            @JsonProperty("sign_sure") boolean signSure) {}

    record PhaseEffect(
            String phase,
            String speed,
            @JsonProperty("balance_deg") Effect balanceDeg,
            @JsonProperty("now_deg") OptionalDouble nowDeg,
            OptionalDouble share) {}

    record CornerEffect(
            int corner,
            String speed,
            @JsonProperty("time_s") Effect timeS,
            List<CornerPhase> phases) {}

    record CornerPhase(
            String phase, @JsonProperty("balance_deg") Effect balanceDeg) {}

    record Lap(
            @JsonProperty("station_m") List<OptionalDouble> stationM,
            @JsonProperty("balance_deg") List<OptionalDouble> balanceDeg,
            @JsonProperty("balance_deg_low") List<OptionalDouble> balanceDegLow,
            @JsonProperty("balance_deg_high") List<OptionalDouble> balanceDegHigh,
            @JsonProperty("time_s") List<OptionalDouble> timeS,
            @JsonProperty("speed_kmh") List<OptionalDouble> speedKmh) {}
}
