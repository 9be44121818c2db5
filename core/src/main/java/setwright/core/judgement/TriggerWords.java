package setwright.core.judgement;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import setwright.core.judgement.TriggerEvidence.Witness;

/** Says what sets a problem off, what else it could be, and what speaks against that. */
final class TriggerWords {
    private TriggerWords() {}

    /** Returns the most probable trigger; of equals the first, none last. */
    static Trigger mostProbable(Map<Trigger, Double> probabilities) {
        return ranked(probabilities).get(0);
    }

    private static List<Trigger> ranked(Map<Trigger, Double> probabilities) {
        return List.of(Trigger.values()).stream()
                .sorted(Comparator.comparingDouble((Trigger trigger) -> -probabilities.getOrDefault(trigger, 0.0)))
                .toList();
    }

    /** Returns one sentence. */
    static String sentence(TriggerEvidence evidence) {
        Map<Trigger, Double> probabilities = evidence.probabilities();
        Trigger first = ranked(probabilities).get(0);
        Trigger second = ranked(probabilities).get(1);
        Optional<Witness> witness = evidence.heard().stream()
                .max(Comparator.comparingDouble(
                        each -> each.weight() * (evidence.speaks(each, first) - evidence.speaks(each, second))));
        return witness.map(found -> String.format(
                        Locale.ROOT,
                        "Set off by %s (probability %.2f), less likely by %s (%.2f): %s.",
                        words(first),
                        probabilities.get(first),
                        words(second),
                        probabilities.get(second),
                        reason(found, evidence, first, second)))
                .orElse("What sets it off cannot be told: neither setup nor laps speak for any input.");
    }

    private static String reason(Witness witness, TriggerEvidence evidence, Trigger first, Trigger second) {
        String pattern = switch (witness) {
            case SETUP -> "of what the items that stand out do to the balance, %.0f %% comes with %s, %.0f %% with %s";
            case PHASE ->
                "of the balance that is wrong, at equal use of the tyres, %.0f %% lies with %s, %.0f %% with %s";
            case FEET ->
                "of what the feet ask for that they did not in the baseline, %.0f %% speaks for %s, %.0f %% for %s";
            case MOVED -> "of what moved in the half second before, %.0f %% speaks for %s, %.0f %% for %s";
        };
        return String.format(
                Locale.ROOT,
                pattern,
                100.0 * evidence.share(witness, first),
                words(first),
                100.0 * evidence.share(witness, second),
                words(second));
    }

    private static String words(Trigger trigger) {
        return trigger == Trigger.NONE ? "cornering alone" : trigger.words();
    }
}
