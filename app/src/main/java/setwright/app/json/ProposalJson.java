package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@code propose --json} prints, version 1: docs/propose.schema.json. Fields are only ever added to a version. Numbers that are
 * not known are null.
 */
record ProposalJson(
        int version,
        Recording recording,
        String car,
        String verdict,
        Optional<Target> target,
        Optional<Candidate> chosen,
        List<Candidate> others,
        List<Candidate> refused,
        List<String> expect,
        int laps,
        Optional<Refutation> refutation,
        String reason,
        String caution,
        List<TechniqueJson> technique,
        AdviceJson advice) {

    record Recording(String name, List<Integer> used) {}

    record Target(String phase, String speed, String balance, String trigger, OptionalDouble probability) {}

    record Candidate(
            String item,
            double from,
            double to,
            long steps,
            String unit,
            OptionalDouble score,
            @JsonProperty("expected_dt_s") OptionalDouble expectedDtS,
            OptionalDouble low,
            OptionalDouble high,
            @JsonProperty("probability_better") OptionalDouble probabilityBetter,
            @JsonProperty("target_deg") OptionalDouble targetDeg,
            @JsonProperty("probability_cure") OptionalDouble probabilityCure,
            OptionalDouble selectivity,
            List<Effect> effects,
            List<String> reasons,
            List<String> doubts,
            List<String> refused,
            List<Objection> objections) {}

    record Objection(
            String kind,
            String words,
            Optional<String> phase,
            Optional<String> speed,
            Map<String, OptionalDouble> figures) {}

    record Refutation(
            int laps,
            @JsonProperty("below_deg") OptionalDouble belowDeg,
            @JsonProperty("above_deg") OptionalDouble aboveDeg) {}

    record Effect(
            String phase,
            String speed,
            @JsonProperty("balance_deg") OptionalDouble balanceDeg,
            @JsonProperty("balance_deg_low") OptionalDouble balanceDegLow,
            @JsonProperty("balance_deg_high") OptionalDouble balanceDegHigh) {}
}
