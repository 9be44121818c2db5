package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What {@code trial judge --json} prints, version 1: docs/trial.schema.json. Fields are only ever added to a version. Numbers that are not
 * known are null.
 */
record TrialJson(
        int version,
        String verdict,
        String reason,
        List<Change> changes,
        Optional<String> together,
        List<Run> runs,
        @JsonProperty("lap_time_s") Effect lapTimeS,
        @JsonProperty("lap_time_matters_s") OptionalDouble lapTimeMattersS,
        Optional<Target> target,
        @JsonProperty("drift_s") Optional<Effect> driftS,
        @JsonProperty("side_effects") List<SideEffect> sideEffects,
        List<SectorEffect> sectors,
        @JsonProperty("lap_scatter_s") OptionalDouble lapScatterS,
        @JsonProperty("run_scatter_s") OptionalDouble runScatterS,
        @JsonProperty("laps_needed") OptionalInt lapsNeeded,
        @JsonProperty("runs_needed") OptionalInt runsNeeded,
        Optional<Predicted> predicted,
        List<String> doubts,
        List<String> aside,
        String caution) {

    record Predicted(@JsonProperty("lap_time_s") Interval lapTimeS, List<PredictedBalance> balance) {}

    record Interval(OptionalDouble central, OptionalDouble low, OptionalDouble high) {}

    record PredictedBalance(
            String phase,
            String speed,
            @JsonProperty("central_deg") OptionalDouble centralDeg,
            @JsonProperty("low_deg") OptionalDouble lowDeg,
            @JsonProperty("high_deg") OptionalDouble highDeg) {}

    record Change(String item, String from, String to, String unit) {}

    record SectorEffect(
            int sector,
            List<Integer> corners,
            @JsonProperty("time_s") Effect timeS,
            boolean clear) {}

    record Run(
            String name,
            String setup,
            List<Integer> laps,
            @JsonProperty("lap_times_s") List<OptionalDouble> lapTimesS) {}

    record Effect(
            OptionalDouble value,
            OptionalDouble low,
            OptionalDouble high,
            OptionalDouble error,
            OptionalDouble freedom,
            @JsonProperty("by_chance") OptionalDouble byChance) {}

    record Target(
            String phase,
            String speed,
            String balance,
            List<Integer> corners,
            @JsonProperty("effect_deg") Optional<Effect> effectDeg) {}

    record SideEffect(
            String phase,
            String speed,
            @JsonProperty("balance_deg") Effect balanceDeg,
            boolean clear) {}
}
