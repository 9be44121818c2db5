package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.judgement.TriggerEvidence.Witness;

final class TriggerEvidenceTest {
    private static final double ROUND_OFF = 1.0e-12;

    private static TriggerEvidence random(Random random) {
        Map<Witness, Map<Trigger, Double>> shares = new EnumMap<>(Witness.class);
        for (Witness witness : Witness.values()) {
            if (random.nextBoolean()) {
                Map<Trigger, Double> each = new EnumMap<>(Trigger.class);
                double sum = 0.0;
                for (Trigger trigger : Trigger.values()) {
                    double share = random.nextInt(3) == 0 ? 0.0 : random.nextDouble() + 0.01;
                    each.put(trigger, share);
                    sum += share;
                }
                double all = sum;
                each.replaceAll((trigger, share) -> all > 0.0 ? share / all : 0.0);
                shares.put(witness, each);
            }
        }
        return new TriggerEvidence(shares);
    }

    private static TriggerEvidence renamed(TriggerEvidence evidence, List<Trigger> names) {
        Map<Witness, Map<Trigger, Double>> shares = new EnumMap<>(Witness.class);
        evidence.shares().forEach((witness, each) -> {
            Map<Trigger, Double> other = new EnumMap<>(Trigger.class);
            each.forEach((trigger, share) -> other.put(names.get(trigger.ordinal()), share));
            shares.put(witness, other);
        });
        return new TriggerEvidence(shares);
    }

    @Test
    void probabilitiesAddUpAndNamesChangeNothing() {
        long seed = 20_261_126L; // any
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            TriggerEvidence evidence = random(random);
            Map<Trigger, Double> probabilities = evidence.probabilities();
            List<Trigger> names = new ArrayList<>(List.of(Trigger.values()));
            Collections.shuffle(names, random);
            Map<Trigger, Double> other = renamed(evidence, names).probabilities();

            assertThat(probabilities.values().stream().mapToDouble(p -> p).sum())
                    .as("seed %d, draw %d", seed, i)
                    .isCloseTo(1.0, within(ROUND_OFF));
            for (Trigger trigger : Trigger.values()) {
                assertThat(other.get(names.get(trigger.ordinal())))
                        .as("seed %d, draw %d, %s", seed, i, trigger)
                        .isCloseTo(probabilities.get(trigger), within(ROUND_OFF));
            }
        }
    }

    @Test
    void silenceMakesAllAlike() {
        Map<Trigger, Double> probabilities = new TriggerEvidence(Map.of()).probabilities();

        assertThat(probabilities.values())
                .allSatisfy(p -> assertThat(p).isCloseTo(1.0 / Trigger.values().length, within(ROUND_OFF)));
        assertThat(TriggerWords.sentence(new TriggerEvidence(Map.of()))).contains("cannot be told");
    }

    @Test
    void moreOfAShareIsNeverLessOfAProbability() {
        double before = 0.0;
        for (double share = 0.0; share <= 1.0; share += 0.1) {
            double now = new TriggerEvidence(
                            Map.of(Witness.SETUP, Map.of(Trigger.THROTTLE_PICK_UP, share, Trigger.NONE, 1.0 - share)))
                    .probabilities()
                    .get(Trigger.THROTTLE_PICK_UP);
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    @Test
    void phasesAreHeardOnlyWhereTheSetupIsSilent() {
        Map<Trigger, Double> setup = Map.of(Trigger.BRAKE_RELEASE, 1.0);
        Map<Trigger, Double> phase = Map.of(Trigger.NONE, 1.0);
        TriggerEvidence both = new TriggerEvidence(Map.of(Witness.SETUP, setup, Witness.PHASE, phase));
        TriggerEvidence alone = new TriggerEvidence(Map.of(Witness.PHASE, phase));

        assertThat(both.probabilities()).isEqualTo(new TriggerEvidence(Map.of(Witness.SETUP, setup)).probabilities());
        assertThat(TriggerWords.mostProbable(alone.probabilities())).isEqualTo(Trigger.NONE);
    }

    @Test
    void theSentenceNamesTheEvidenceAndTheRunnerUp() {
        TriggerEvidence evidence = new TriggerEvidence(Map.of(
                Witness.SETUP, Map.of(Trigger.THROTTLE_PICK_UP, 0.7, Trigger.TURN_IN, 0.25, Trigger.NONE, 0.05)));

        assertThat(TriggerWords.sentence(evidence))
                .startsWith("Set off by throttle pick-up (probability 0.")
                .contains("less likely by turn-in")
                .endsWith("70 % comes with throttle pick-up, 25 % with turn-in.");
    }
}
