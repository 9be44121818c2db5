package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What {@code diagnose --json} prints, version 1: docs/diagnose.schema.json. Fields are only ever added to a version.
 * Numbers that are not known are null.
 */
record DiagnosisJson(
        int version,
        Recording recording,
        Driving driving,
        List<Balance> balance,
        List<Finding> findings,
        List<TechniqueJson> technique,
        List<Change> changes,
        String verdict,
        String reason,
        List<String> next,
        Car car,
        List<ExplanationJson.Reason> reasons,
        ExplanationJson.Setup setup,
        @JsonProperty("time_since_baseline") Optional<TimeSince> timeSinceBaseline,
        Optional<AxlesJson> axles,
        AdviceJson advice,
        SensorsJson sensors,
        @JsonProperty("more_laps") OptionalInt moreLaps,
        @JsonProperty("in_one_corner") List<Seen> inOneCorner) {

    /** What shows in one corner alone. */
    record Seen(
            int corner,
            String phase,
            String balance,
            @JsonProperty("lap_share") OptionalDouble lapShare,
            @JsonProperty("size_deg") OptionalDouble sizeDeg,
            @JsonProperty("size_deg_low") OptionalDouble sizeDegLow,
            @JsonProperty("size_deg_high") OptionalDouble sizeDegHigh) {}

    /** What laps take more than those of the baseline. */
    record TimeSince(Longer lap, List<LongerAt> corners) {}

    record Longer(
            @JsonProperty("time_s") OptionalDouble timeS,
            @JsonProperty("time_s_low") OptionalDouble timeSLow,
            @JsonProperty("time_s_high") OptionalDouble timeSHigh,
            boolean clear) {}

    record LongerAt(int corner, Longer longer) {}

    record Recording(
            String name,
            int laps,
            List<Integer> used,
            List<Aside> aside,
            List<LapTime> times,
            List<Calibration> calibrations,
            List<Channel> channels,
            List<String> remarks) {}

    record Aside(int lap, String why) {}

    record LapTime(int lap, @JsonProperty("time_s") OptionalDouble timeS) {}

    record Calibration(String what, OptionalDouble value, String unit, String why) {}

    record Channel(String column, String meaning, String unit, List<String> why) {}

    record Driving(
            boolean repeatable,
            List<Corner> corners,
            List<Fault> faults,
            String why,
            @JsonProperty("lap_time_scatter_s") OptionalDouble lapTimeScatterS,
            @JsonProperty("smallest_time_s") OptionalDouble smallestTimeS,
            @JsonProperty("smallest_balance_deg") OptionalDouble smallestBalanceDeg,
            @JsonProperty("step_balance_deg") OptionalDouble stepBalanceDeg,
            @JsonProperty("lap_gain") Optional<Cost> lapGain,
            List<Place> first) {}

    record Corner(
            int corner,
            boolean repeatable,
            String worst,
            @JsonProperty("scatter_m") OptionalDouble scatterM,
            int passes,
            Map<String, Scatter> scatter,
            @JsonProperty("smallest_balance_deg") OptionalDouble smallestBalanceDeg,
            @JsonProperty("smallest_time_s") OptionalDouble smallestTimeS,
            @JsonProperty("typical_time_s") OptionalDouble typicalTimeS,
            @JsonProperty("laps_needed") OptionalInt lapsNeeded,
            Optional<Cost> gain,
            @JsonProperty("moves_most") Optional<Moving> movesMost) {}

    record Cost(
            OptionalDouble s,
            @JsonProperty("s_low") OptionalDouble low,
            @JsonProperty("s_high") OptionalDouble high) {}

    record Moving(
            String event,
            OptionalDouble scatter,
            OptionalDouble elsewhere,
            String unit,
            boolean clear,
            String source,
            Optional<Cost> cost,
            String better,
            List<Integer> laps) {}

    record Place(int corner, Cost gain, List<String> faults) {}

    record Proof(
            int corner,
            List<Integer> laps,
            @JsonProperty("worst_lap") int worstLap,
            OptionalDouble worst) {}

    record Scatter(OptionalDouble value, String unit) {}

    record Fault(
            String kind,
            List<Integer> corners,
            @JsonProperty("lap_share") OptionalDouble lapShare,
            OptionalDouble size,
            String unit,
            boolean habit,
            List<Proof> proofs,
            Optional<Cost> cost) {}

    record Balance(
            int corner,
            String direction,
            String speed,
            String phase,
            @JsonProperty("excess_deg") OptionalDouble excessDeg,
            @JsonProperty("low_deg") OptionalDouble lowDeg,
            @JsonProperty("high_deg") OptionalDouble highDeg,
            int laps) {}

    record Finding(
            int rank,
            String phase,
            String speed,
            String balance,
            String trigger,
            String cause,
            List<Integer> corners,
            @JsonProperty("lap_share") OptionalDouble lapShare,
            @JsonProperty("lap_wide") boolean lapWide,
            OptionalDouble probability,
            @JsonProperty("price_s") OptionalDouble priceS,
            @JsonProperty("price_s_low") OptionalDouble priceSLow,
            @JsonProperty("price_s_high") OptionalDouble priceSHigh,
            @JsonProperty("size_deg") OptionalDouble sizeDeg,
            @JsonProperty("size_deg_low") OptionalDouble sizeDegLow,
            @JsonProperty("size_deg_high") OptionalDouble sizeDegHigh,
            @JsonProperty("speed_dependence") Optional<SpeedDependence> speedDependence,
            Map<String, OptionalDouble> triggers,
            List<String> why,
            List<ExplanationJson.Reason> reasons,
            List<ExplanationJson.Alternative> alternatives,
            List<ExplanationJson.Item> setup) {}

    record SpeedDependence(
            @JsonProperty("slope_deg_per_1000_m2s2") OptionalDouble slope,
            OptionalDouble low,
            OptionalDouble high,
            @JsonProperty("probability_aero") OptionalDouble probabilityAero) {}

    record Change(
            int finding,
            String item,
            double from,
            double to,
            @JsonProperty("expected_dt_s") OptionalDouble expectedDtS,
            OptionalDouble low,
            OptionalDouble high,
            @JsonProperty("probability_better") OptionalDouble probabilityBetter,
            List<Effect> effects) {}

    record Effect(
            String phase,
            String speed,
            @JsonProperty("balance_deg") OptionalDouble balanceDeg) {}

    record Car(String description, List<String> assumed) {}
}
