package setwright.core.slip;

import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/** Puts what was estimated at the filter's steps back onto the samples of the recording. */
final class AxleTraces {
    /**
     * What a single-track car leaves out (toe, camber, unequal wheels, springs) does not scatter, so the filter cannot see it: error of
     * the sideslip on drives of the truth bench's tuning seed.
     */
    private static final double MODEL_DOUBT_RAD = Math.toRadians(0.2);

    private AxleTraces() {}

    static AxleTrace of(Stint stint, HandlingTrace trace, SlipSteps steps) {
        int samples = stint.recording().sampleCount();
        double[] spread = new double[steps.count()];
        for (int k = 0; k < spread.length; k++) {
            spread[k] = Math.sqrt(Math.max(0.0, steps.sideslipVariance()[k]) + MODEL_DOUBT_RAD * MODEL_DOUBT_RAD);
        }
        return new AxleTrace(
                onto(steps, steps.sideslip(), samples),
                onto(steps, spread, samples),
                onto(steps, steps.frontSlip(), samples),
                onto(steps, steps.rearSlip(), samples),
                onto(steps, steps.frontUse(), samples),
                onto(steps, steps.rearUse(), samples),
                trace.yawMeasured(),
                stint.recording().has(Quantity.LATERAL_ACCELERATION));
    }

    private static Channel onto(SlipSteps steps, double[] values, int samples) {
        double[] out = new double[samples];
        double middle = 0.5 * (steps.stride() - 1);
        for (int i = 0; i < samples; i++) {
            double place = (i - middle) / steps.stride();
            int left = (int) Math.max(0.0, Math.min(Math.floor(place), values.length - 2.0));
            double share = Math.max(0.0, Math.min(place - left, 1.0));
            out[i] = values.length < 2 ? Double.NaN : values[left] + share * (values[left + 1] - values[left]);
        }
        return Channel.of(out);
    }
}
