package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One lever of technique. */
record TechniqueJson(
        int finding,
        String lever,
        OptionalDouble move,
        String unit,
        List<Integer> laps,
        OptionalDouble strength,
        boolean weak,
        Optional<String> fault,
        boolean varies,
        @JsonProperty("false_discovery") OptionalDouble falseDiscovery,
        Optional<Effect> effect,
        @JsonProperty("first_step") Optional<Step> firstStep,
        List<Integer> against,
        List<Corner> corners) {

    record Effect(String of, String unit, OptionalDouble change, OptionalDouble low, OptionalDouble high) {}

    record Step(String of, String unit, OptionalDouble usual, OptionalDouble aim) {}

    record Corner(int corner, OptionalDouble usual, OptionalDouble better, Optional<Effect> effect) {}
}
