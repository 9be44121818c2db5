package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What {@code car fit --json} prints, version 1: docs/car-fit.schema.json. Fields are only ever added to a version. Numbers that
 * are not known are null.
 */
record CarFitJson(
        int version, String car, List<String> recordings, int laps, List<Value> values, List<Evidence> evidence) {

    record Value(String key, String words, String unit, boolean told, Estimate before, Estimate after, String why) {}

    record Estimate(OptionalDouble value, OptionalDouble low, OptionalDouble high) {}

    record Evidence(
            String title,
            @JsonProperty("x_words") String xWords,
            @JsonProperty("y_words") String yWords,
            List<Series> series) {}

    record Series(String words, boolean curve, List<OptionalDouble> x, List<OptionalDouble> y) {}
}
