package setwright.core.handling;

import java.util.ArrayList;
import java.util.List;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.numerics.LocalPolynomial;
import setwright.core.numerics.Robust;
import setwright.core.numerics.ZeroPhaseLowPass;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/*
 * Design note. Which gear pulls harder is measured, not taken from an engine curve that few sheets have: the acceleration in
 * the third of a second before the gear changes, and in as long once the higher gear pulls. The speed grows a little
 * between the two and air drag with it, so that the higher gear looks weaker than it is by some hundredths of g at most.
 */

/** Finds the upshifts of the good laps that were made at full throttle and with little cornering. */
public final class UpshiftFinder {
    private static final double FULL = 0.95;
    /** A gear counts once it was in for so long. */
    private static final double HELD_S = 0.15;
    /** From the old gear to the new one; longer, and it was no plain upshift. */
    private static final double LONGEST_S = 0.5;
    /** In which the acceleration is averaged, and in which drive and filter settle after the change. */
    private static final double WINDOW_S = 0.3;

    private static final double SETTLED_S = 0.3;
    private static final double CUT_OFF_HZ = 4.0;
    private static final double STRAIGHT_MPS2 = 4.0;

    private UpshiftFinder() {}

    /** Returns them in the order of time; none without gear and throttle in the recording. */
    public static List<Upshift> find(Stint stint) {
        Recording recording = stint.recording();
        List<Upshift> found = new ArrayList<>();
        if (!recording.has(Quantity.GEAR) || !recording.has(Quantity.THROTTLE) || !recording.has(Quantity.SPEED)) {
            return found;
        }
        Channel gear = recording.channel(Quantity.GEAR);
        double[] pull = pull(recording);
        double step = recording.stepS();
        int held = Math.max(1, (int) Math.round(HELD_S / step));
        int longest = (int) Math.round(LONGEST_S / step);
        int window = Math.max(1, (int) Math.round(WINDOW_S / step));
        int settled = (int) Math.round(SETTLED_S / step);
        for (Lap lap : stint.goodLaps()) {
            int last = 0;
            int left = lap.from();
            for (int k = lap.from(); k + held < lap.to(); k++) {
                int now = steady(gear, k, held);
                if (now == 0) {
                    continue;
                }
                boolean up = last > 0 && now == last + 1 && k - left <= longest;
                if (up && left - window > lap.from() && k + settled + window < lap.to()) {
                    add(stint, lap, last, left, k + settled, window, pull, found);
                }
                last = now;
                left = k + held; // it is in for so long at least
            }
        }
        return found;
    }

    private static void add(
            Stint stint, Lap lap, int from, int left, int on, int window, double[] pull, List<Upshift> found) {
        Recording recording = stint.recording();
        int begin = left - window;
        boolean clean = true;
        for (int k = begin; k < on + window && clean; k++) {
            boolean pulling = k <= left || k >= on;
            boolean open = !pulling || recording.channel(Quantity.THROTTLE).get(k) >= FULL;
            boolean straight = !recording.has(Quantity.LATERAL_ACCELERATION)
                    || Math.abs(recording.channel(Quantity.LATERAL_ACCELERATION).get(k)) < STRAIGHT_MPS2;
            clean = open && straight && Double.isFinite(pull[k]);
        }
        if (clean) {
            double engine = recording.has(Quantity.ENGINE_SPEED)
                    ? Robust.quantile(recording.channel(Quantity.ENGINE_SPEED).slice(left - window / 4, left + 1), 0.5)
                    : Double.NaN;
            found.add(new Upshift(
                    lap.number(),
                    stint.station().get(left),
                    from,
                    recording.channel(Quantity.SPEED).get(left),
                    engine,
                    mean(pull, begin, left - window / 4),
                    mean(pull, on, on + window)));
        }
    }

    /** The gear that stays in from a sample on; 0 when none does. */
    private static int steady(Channel gear, int from, int held) {
        double first = gear.get(from);
        for (int k = from; k <= from + held; k++) {
            if (!(Math.abs(gear.get(k) - first) < 0.1)) {
                return 0;
            }
        }
        return (int) Math.round(first);
    }

    private static double[] pull(Recording recording) {
        double rate = recording.sampleRateHz();
        boolean measured = recording.has(Quantity.LONGITUDINAL_ACCELERATION);
        double[] samples = measured
                ? recording.channel(Quantity.LONGITUDINAL_ACCELERATION).toArray()
                : LocalPolynomial.quadraticOver(WINDOW_S, recording.stepS())
                        .derivative(recording.channel(Quantity.SPEED).toArray(), recording.stepS());
        return CUT_OFF_HZ < 0.4 * rate
                ? ZeroPhaseLowPass.butterworth(2, CUT_OFF_HZ, rate).apply(samples)
                : samples;
    }

    private static double mean(double[] values, int from, int to) {
        double sum = 0.0;
        for (int k = from; k < to; k++) {
            sum += values[k];
        }
        return sum / Math.max(1, to - from);
    }
}
