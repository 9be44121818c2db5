package setwright.core.judgement;

import java.util.Locale;
import java.util.Optional;
import setwright.core.baseline.Baseline;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.numerics.Robust;

/*
 * Design note. A driver holds back what he cannot use: a car that has become loose may show the balance that it showed in good order, in
 * slower laps. So the same balance in clearly slower laps is no proof of the same car. Nor is the time a proof of a fault: tyres, fuel and
 * track differ from run to run. It only asks for a run back to back.
 */

/**
 * By how much laps are slower than those of the baseline.
 *
 * @param seconds  a lap, s, above zero beyond chance and worth a word
 * @param lowS     lower end of its 95 % interval, s
 * @param highS    upper end, s
 */
public record LostTime(double seconds, double lowS, double highS) {
    private static final double NORMAL_95 = 1.96;
    private static final double NORMAL_90 = 1.645;

    /** Returns it as the price of what is to blame for it. */
    Finding.Price price() {
        double half = NORMAL_90 / NORMAL_95 * (seconds - lowS);
        return new Finding.Price(seconds, seconds - half, seconds + half);
    }

    /** Returns it as {@code 0.52 s slower (0.31 to 0.73)}. */
    String words() {
        return String.format(Locale.ROOT, "%.2f s slower (%.2f to %.2f)", seconds, lowS, highS);
    }

    /** Holds laps against those of a baseline; empty where they are not clearly slower. */
    static Optional<LostTime> of(Stint stint, Baseline baseline) {
        double[] now = stint.goodLaps().stream().mapToDouble(Lap::timeS).toArray();
        double[] then =
                baseline.lapsS().stream().mapToDouble(Double::doubleValue).toArray();
        if (now.length < Baseline.FEWEST_LAPS) {
            return Optional.empty();
        }
        double usual = Robust.median(then);
        double lost = Robust.median(now) - usual;
        double runs = Math.sqrt(2.0) * Yardstick.RUN_TIME_SHARE * usual;
        double width = NORMAL_95 * Math.hypot(runs, Math.hypot(Robust.medianError(now), Robust.medianError(then)));
        return lost - width > 0.0 ? Optional.of(new LostTime(lost, lost - width, lost + width)) : Optional.empty();
    }
}
