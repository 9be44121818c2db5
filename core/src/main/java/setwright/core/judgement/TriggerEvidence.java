package setwright.core.judgement;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/*
 * Design note. Witnesses are joined in a logarithmic opinion pool (C. Genest and J. V. Zidek, Statistical Science 1, 1986): the
 * probability of a trigger is proportional to the product of its shares, each to the power of the witness's weight. That is a
 * softmax of weighted logarithms with no term of a trigger's own: no trigger is more usual than another until something
 * speaks for it, and giving the triggers other names changes nothing. The weights are fitted
 * on tuning cases, ridge of unit spread about 1: a witness is taken at its word until cases say otherwise. The truth bench's
 * TriggerCalibration refits them from the kept evidence of these cases; docs/accuracy.md shows how well they are calibrated.
 */

/**
 * What each witness says about what sets a problem off.
 *
 * @param shares  by witness, shares of the triggers adding up to 1; a witness that has nothing to say is absent
 */
public record TriggerEvidence(Map<Witness, Map<Trigger, Double>> shares) {
    /** Left to a trigger that a witness does not speak for: one in twenty. */
    private static final double LEFT_OVER = 0.05;

    /** Where evidence comes from. */
    public enum Witness {
        /** What the unusual items of the setup act through; fitted. */
        SETUP(1.21),
        /** The phases in which the balance is wrong, at equal use of the tyres; heard where the setup is silent; fitted. */
        PHASE(0.66),
        /** What moved in the half second before the slides; at its word, as too few tuning cases have such a finding. */
        MOVED(1.00),
        /** What the feet ask for that they did not in the baseline; at its word. */
        FEET(1.00);

        private final double weight;

        Witness(double weight) {
            this.weight = weight;
        }

        /** Returns how much its word counts; 1: as it is. */
        public double weight() {
            return weight;
        }
    }

    public TriggerEvidence {
        Map<Witness, Map<Trigger, Double>> copy = new EnumMap<>(Witness.class);
        shares.forEach((witness, each) -> copy.put(witness, Map.copyOf(each)));
        shares = copy;
    }

    /** Returns the share that a witness gives a trigger, 0..1; 0 where the witness is silent. */
    public double share(Witness witness, Trigger trigger) {
        return Optional.ofNullable(shares.get(witness))
                .map(each -> each.getOrDefault(trigger, 0.0))
                .orElse(0.0);
    }

    /** Returns the logarithm of a share, kept off nothing; the same for all triggers where the witness is silent. */
    double speaks(Witness witness, Trigger trigger) {
        return Math.log(share(witness, trigger) + LEFT_OVER);
    }

    /** Returns who is heard: of phases only what no setup tells, as beside it they told the tuning cases nothing. */
    List<Witness> heard() {
        return shares.keySet().stream()
                .filter(witness -> witness != Witness.PHASE || !shares.containsKey(Witness.SETUP))
                .toList();
    }

    /** Returns the probability of each trigger, adding up to 1. */
    public Map<Trigger, Double> probabilities() {
        Map<Witness, Double> weights = new EnumMap<>(Witness.class);
        heard().forEach(witness -> weights.put(witness, witness.weight()));
        return probabilities(weights);
    }

    /** Returns the same with other weights, for fitting them; a witness without one is not heard. */
    public Map<Trigger, Double> probabilities(Map<Witness, Double> weights) {
        Map<Trigger, Double> odds = new EnumMap<>(Trigger.class);
        double sum = 0.0;
        for (Trigger trigger : Trigger.values()) {
            double power = 0.0;
            for (Map.Entry<Witness, Double> each : weights.entrySet()) {
                power += each.getValue() * speaks(each.getKey(), trigger);
            }
            odds.put(trigger, Math.exp(power));
            sum += Math.exp(power);
        }
        double all = sum;
        odds.replaceAll((trigger, each) -> each / all);
        return odds;
    }
}
