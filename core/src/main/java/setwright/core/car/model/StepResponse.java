package setwright.core.car.model;

import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Answer to a step of one unit of a stable system of second order with lead:
 * {@code G w^2 (1 + T s) / (s^2 + 2 d s + w^2)}, in closed form.
 *
 * <p>The quantities are those of ISO 7401 (from memory): response time to 90 % of the steady value, time of the first peak,
 * overshoot. ISO counts time from half of the steering step; here the step takes no time.
 *
 * @param steady            G, value at the end, in units of the answer per unit of the step
 * @param naturalFrequency  w, rad/s, &gt; 0
 * @param decayRate         d = zeta w, 1/s, &gt; 0
 * @param leadTimeS         T, s, &gt;= 0
 */
public record StepResponse(double steady, double naturalFrequency, double decayRate, double leadTimeS) {

    /** Where ISO 7401 stops the clock. */
    private static final double RESPONDED = 0.9;

    private static final double ABSOLUTE_ACCURACY_S = 1.0e-12;
    private static final int MOST_STEPS = 200;

    /** @throws IllegalArgumentException if the system is not stable or the lead time is negative */
    public StepResponse {
        if (!(naturalFrequency > 0.0 && decayRate > 0.0 && leadTimeS >= 0.0 && Double.isFinite(steady))) {
            throw new IllegalArgumentException(
                    "a step response needs a natural frequency and decay rate above 0 and a " + "lead time from 0, got "
                            + naturalFrequency + " rad/s, " + decayRate + " 1/s, " + leadTimeS + " s");
        }
    }

    /** Returns the damping ratio. */
    public double dampingRatio() {
        return decayRate / naturalFrequency;
    }

    /**
     * Returns the answer at a time.
     *
     * @param timeS  s after the step, &gt;= 0
     */
    public double at(double timeS) {
        return steady * (1.0 - missing(timeS));
    }

    /** Returns the time to 90 % of the steady value, s. */
    public double responseTimeS() {
        double until = peakTimeS().orElse(1.0 / naturalFrequency);
        while (missing(until) > 1.0 - RESPONDED) {
            until *= 2.0;
        }
        return new BracketingNthOrderBrentSolver(ABSOLUTE_ACCURACY_S, 5)
                .solve(MOST_STEPS, time -> missing(time) - (1.0 - RESPONDED), 0.0, until);
    }

    /** Returns the time of the first peak above the steady value, s; none if the answer only approaches it. */
    public OptionalDouble peakTimeS() {
        double lead = decayRate * leadTimeS - 1.0;
        double inside = naturalFrequency * naturalFrequency - decayRate * decayRate;
        double root = Math.sqrt(Math.abs(inside));
        if (inside > 0.0) {
            return OptionalDouble.of(Math.atan2(root * leadTimeS, lead) / root);
        }
        if (!(root * leadTimeS < lead)) {
            return OptionalDouble.empty();
        }
        double ratio = root * leadTimeS / lead;
        // The inverse hyperbolic tangent over its rate; at critical damping the rate is 0 and the quotient T / (d T -
        // 1).
        return OptionalDouble.of(
                root == 0.0 ? leadTimeS / lead : 0.5 * (Math.log1p(ratio) - Math.log1p(-ratio)) / root);
    }

    /** Returns by how much the first peak exceeds the steady value, as a share of it; 0 without a peak. */
    public double overshoot() {
        OptionalDouble peak = peakTimeS();
        return peak.isPresent() ? -missing(peak.getAsDouble()) : 0.0;
    }

    /**
     * Returns the share of the steady value still missing. It solves {@code e'' + 2 d e' + w^2 e = 0} from {@code e = 1},
     * {@code e' = -T w^2}.
     */
    private double missing(double timeS) {
        double start = decayRate - leadTimeS * naturalFrequency * naturalFrequency;
        double inside = naturalFrequency * naturalFrequency - decayRate * decayRate;
        double root = Math.sqrt(Math.abs(inside));
        if (root * timeS < 1.0e-9) {
            return Math.exp(-decayRate * timeS) * (1.0 + start * timeS);
        }
        if (inside > 0.0) {
            return Math.exp(-decayRate * timeS) * (Math.cos(root * timeS) + start * Math.sin(root * timeS) / root);
        }
        // cosh and sinh written out: alone they overflow long before their product with the decay matters.
        double slow = Math.exp((root - decayRate) * timeS);
        double fast = Math.exp((-root - decayRate) * timeS);
        return 0.5 * (slow + fast + start * (slow - fast) / root);
    }
}
