package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The parts of {@code diagnose --json} that say why. */
final class ExplanationJson {
    private ExplanationJson() {}

    record Reason(
            String kind,
            String sentence,
            List<Figure> figures,
            List<Integer> laps,
            List<Integer> corners,
            Optional<Proof> proof) {}

    record Figure(String name, OptionalDouble value, OptionalDouble low, OptionalDouble high, String unit) {}

    record Proof(int lap, int corner) {}

    record Alternative(String what, OptionalDouble probability, String why) {}

    /** An item out of the ordinary and what it does where a finding is. */
    record Item(
            String item,
            OptionalDouble value,
            String unit,
            OptionalDouble min,
            OptionalDouble max,
            OptionalDouble usual,
            OptionalDouble place,
            OptionalDouble unusual,
            @JsonProperty("balance_deg") OptionalDouble balanceDeg) {}

    record Setup(
            boolean known,
            @JsonProperty("held_against") String heldAgainst,
            Optional<String> baseline,
            List<TrialJson.Change> changed,
            List<SetupItem> items) {}

    /** The same item in every phase. */
    record SetupItem(
            String item,
            OptionalDouble value,
            String unit,
            OptionalDouble min,
            OptionalDouble max,
            OptionalDouble usual,
            OptionalDouble place,
            OptionalDouble unusual,
            List<InPhase> balance) {}

    record InPhase(
            String phase,
            String speed,
            @JsonProperty("balance_deg") OptionalDouble balanceDeg) {}
}
