package setwright.app.json;

import static setwright.app.json.Numbers.known;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import setwright.app.story.Story;
import setwright.app.trial.PlanAnswer;
import setwright.core.proposal.Candidate;
import setwright.core.trial.PlannedTrial;

/** Writes how a change is to be tried as JSON of version 1: docs/trial-plan.schema.json. */
public final class PlanJsonWriter {
    private static final int VERSION = 1;

    private PlanJsonWriter() {}

    record Document(int version, Optional<Change> change, List<Plan> plans, String caution) {}

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
                answer.proposal().chosen().map(PlanJsonWriter::change),
                answer.plans().stream().map(PlanJsonWriter::plan).toList(),
                Story.CAUTION));
    }

    private static Change change(Candidate candidate) {
        return new Change(
                candidate.turn().item().name(),
                candidate.turn().item().value(),
                candidate.turn().to(),
                candidate.turn().item().unit(),
                known(candidate.prediction().lapTimeS().central()),
                Numbers.degrees(candidate.target().central()));
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
