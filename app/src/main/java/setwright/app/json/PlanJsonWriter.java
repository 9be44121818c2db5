package setwright.app.json;

import static setwright.app.json.Numbers.known;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import setwright.app.story.Story;
import setwright.app.trial.PlanAnswer;
import setwright.core.car.setup.SetupDifference;
import setwright.core.trial.PlannedTrial;
import setwright.core.trial.PlannedTrial.Expected;

/** Writes how a change is to be tried as JSON of version 1: docs/trial-plan.schema.json. */
public final class PlanJsonWriter {
    private static final int VERSION = 1;

    private PlanJsonWriter() {}

    record Document(
            int version,
            Optional<Change> change,
            List<TrialJson.Change> changes,
            Optional<String> together,
            List<Plan> plans,
            Optional<PlanAnswer.Opened> opened,
            String caution) {}

    record Change(
            String item,
            double from,
            double to,
            String unit,
            @JsonProperty("expected_dt_s") OptionalDouble expectedDtS,
            @JsonProperty("target_deg") OptionalDouble targetDeg) {}

    record Plan(
            String runs,
            int laps,
            @JsonProperty("least_dt_s") OptionalDouble leastDtS,
            @JsonProperty("least_target_deg") OptionalDouble leastTargetDeg,
            @JsonProperty("laps_for_time") OptionalInt lapsForTime,
            @JsonProperty("laps_for_balance") OptionalInt lapsForBalance) {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(PlanAnswer answer) {
        return Numbers.text(new Document(
                VERSION,
                change(answer),
                answer.changes().stream()
                        .map(one -> new TrialJson.Change(one.item(), one.from(), one.to(), one.unit()))
                        .toList(),
                answer.together(),
                answer.plans().stream().map(PlanJsonWriter::plan).toList(),
                answer.opened(),
                Story.CAUTION));
    }

    /** One item with numbers; words and several items stand among the changes only. */
    private static Optional<Change> change(PlanAnswer answer) {
        if (answer.changes().size() != 1 || answer.expected().isEmpty()) {
            return Optional.empty();
        }
        SetupDifference change = answer.changes().get(0);
        Expected expected = answer.expected().get();
        return Optional.of(new Change(
                change.item(),
                Double.parseDouble(change.from()),
                Double.parseDouble(change.to()),
                change.unit(),
                known(expected.timeS()),
                Numbers.degrees(expected.targetRad().orElse(Double.NaN))));
    }

    private static Plan plan(PlannedTrial plan) {
        return new Plan(
                plan.plan().letters(),
                plan.laps(),
                known(plan.leastTimeS()),
                plan.leastTargetRad().isPresent()
                        ? Numbers.degrees(plan.leastTargetRad().getAsDouble())
                        : OptionalDouble.empty(),
                plan.lapsForTime(),
                plan.lapsForTarget());
    }
}
