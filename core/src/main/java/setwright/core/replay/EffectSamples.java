package setwright.core.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import setwright.core.car.SetupChange;
import setwright.core.circuit.Corner;
import setwright.core.handling.Phase;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;

/** Effects of one candidate, draw by draw; each draw is written by one thread. */
final class EffectSamples {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;
    /**
     * What a replay on the driver's own line cannot see of a change's lap time, as a share of it: the driver re-learns the car and
     * its line. Measured: predicted less true lap times of 264 changes in seven practice cases scatter by 0.11 to 0.14 s (1.4826
     * times the median distance) in the four cases whose own truth is quiet, on laps of 79 to 94 s.
     */
    private static final double UNSEEN_SHARE = 0.0014;

    private static final long UNSEEN_SEED = 11L;

    private final EffectLayout layout;
    private final double[][] corner;
    private final double[][] pool;
    private final double[][] cornerTime;
    private final float[][] lapBalance;
    private final float[][] lapTime;

    EffectSamples(EffectLayout layout, int draws) {
        this.layout = layout;
        int corners = layout.speedClasses().size();
        this.corner = new double[corners * EffectLayout.PHASES][draws];
        this.pool = new double[layout.pools().size()][draws];
        this.cornerTime = new double[corners][draws];
        this.lapBalance = new float[draws][layout.bins()];
        this.lapTime = new float[draws][layout.bins()];
    }

    /** Takes one draw: change of balance at each moment, rad, and of time, s. */
    void put(int draw, DrivenLap lap, double[] balance, double[] time, double lengthM) {
        int corners = layout.speedClasses().size();
        double[] weight = new double[corners * EffectLayout.PHASES];
        double[] sum = new double[weight.length];
        double[] timeOf = new double[corners];
        double[] binWeight = new double[layout.bins()];
        double[] binSum = new double[layout.bins()];
        double[] binTime = new double[layout.bins()];
        for (int k = 0; k < lap.size(); k++) {
            int bin = layout.bin(lap.station()[k], lengthM);
            if (bin >= 0) {
                binTime[bin] += time[k];
            }
            timeOf[lap.corner()[k]] += time[k];
            if (Double.isNaN(balance[k])) {
                continue;
            }
            double w = Math.abs(lap.moments().get(k).lateral());
            if (bin >= 0) {
                binWeight[bin] += w;
                binSum[bin] += w * balance[k];
            }
            if (lap.phase()[k] >= 0) {
                int cell = lap.corner()[k] * EffectLayout.PHASES + lap.phase()[k];
                weight[cell] += w;
                sum[cell] += w * balance[k];
            }
        }
        for (int c = 0; c < corners; c++) {
            cornerTime[c][draw] = timeOf[c];
        }
        for (int cell = 0; cell < weight.length; cell++) {
            corner[cell][draw] = sum[cell] / weight[cell];
        }
        for (int p = 0; p < layout.pools().size(); p++) {
            pool[p][draw] = pooled(layout.pools().get(p), weight, sum);
        }
        double passed = 0.0;
        for (int bin = 0; bin < layout.bins(); bin++) {
            passed += binTime[bin];
            lapTime[draw][bin] = (float) passed;
            lapBalance[draw][bin] = (float) (binSum[bin] / binWeight[bin]);
        }
    }

    private double pooled(Pool at, double[] weight, double[] sum) {
        double allWeight = 0.0;
        double all = 0.0;
        for (int c = 0; c < layout.speedClasses().size(); c++) {
            if (at.takes(layout.speedClasses().get(c))) {
                int cell = c * EffectLayout.PHASES + EffectLayout.index(at.phase());
                allWeight += weight[cell];
                all += sum[cell];
            }
        }
        return all / allWeight;
    }

    Prediction summary(List<SetupChange> changes, List<Corner> corners, double[] speeds, double lapTimeS) {
        double unseen = UNSEEN_SHARE * lapTimeS;
        List<CornerEffect> effects = new ArrayList<>();
        double[] lap = new double[cornerTime.length == 0 ? 0 : cornerTime[0].length];
        for (int c = 0; c < corners.size(); c++) {
            Map<Phase, Effect> phases = new EnumMap<>(Phase.class);
            for (Phase phase : Phase.values()) {
                double[] draws = Robust.finite(corner[c * EffectLayout.PHASES + EffectLayout.index(phase)]);
                if (2 * draws.length > lap.length) {
                    phases.put(phase, effect(draws));
                }
            }
            for (int draw = 0; draw < lap.length; draw++) {
                lap[draw] += cornerTime[c][draw];
            }
            effects.add(new CornerEffect(
                    corners.get(c).number(),
                    layout.speedClasses().get(c),
                    phases,
                    time(cornerTime[c], unseen / Math.sqrt(corners.size()))));
        }
        List<PhaseEffect> pooled = new ArrayList<>();
        double total = 0.0;
        for (int p = 0; p < pool.length; p++) {
            double[] draws = Robust.finite(pool[p]);
            if (draws.length > 0) {
                Pool at = layout.pools().get(p);
                Effect effect = effect(draws);
                pooled.add(new PhaseEffect(at.phase(), at.speedClass(), effect));
                total += at.speedClass().isPresent() ? Math.abs(effect.central()) : 0.0;
            }
        }
        double whole = total;
        List<Double> selectivity = pooled.stream()
                .map(effect -> whole > 0.0 ? Math.abs(effect.balance().central()) / whole : 0.0)
                .toList();
        return new Prediction(
                changes, effects, pooled, time(lap, unseen), selectivity, overLap(speeds), List.of(), List.of());
    }

    private LapEffect overLap(double[] speeds) {
        int bins = layout.bins();
        double[] station = new double[bins];
        double[] middle = new double[bins];
        double[] low = new double[bins];
        double[] high = new double[bins];
        double[] time = new double[bins];
        for (int bin = 0; bin < bins; bin++) {
            station[bin] = (bin + 0.5) * EffectLayout.BIN_M;
            double[] draws = finite(lapBalance, bin);
            boolean known = 2 * draws.length > lapBalance.length;
            middle[bin] = known ? Robust.median(draws) : Double.NaN;
            low[bin] = known ? Robust.quantile(draws, LOW) : Double.NaN;
            high[bin] = known ? Robust.quantile(draws, HIGH) : Double.NaN;
            time[bin] = Robust.median(finite(lapTime, bin));
        }
        return new LapEffect(
                Channel.of(station),
                Channel.of(middle),
                Channel.of(low),
                Channel.of(high),
                Channel.of(time),
                Channel.of(speeds));
    }

    /** One bin of all draws, without gaps and in rising order: quantiles of what is sorted cost little. */
    private static double[] finite(float[][] values, int bin) {
        double[] out = new double[values.length];
        int count = 0;
        for (float[] draw : values) {
            if (Float.isFinite(draw[bin])) {
                out[count++] = draw[bin];
            }
        }
        Arrays.sort(out, 0, count);
        return Arrays.copyOf(out, count);
    }

    /** A change of time, with what no draw can see added to the interval; nothing is added to what changes nothing. */
    private static Effect time(double[] draws, double unseenS) {
        if (Arrays.stream(draws).allMatch(value -> value == 0.0)) {
            return effect(draws);
        }
        Random random = new Random(UNSEEN_SEED);
        double[] wider = Arrays.stream(draws)
                .map(value -> value + unseenS * random.nextGaussian())
                .toArray();
        Effect wide = effect(wider);
        double central = Robust.median(draws);
        return new Effect(
                central, Math.min(wide.low(), central), Math.max(wide.high(), central), wide.probabilityPositive());
    }

    private static Effect effect(double[] draws) {
        long positive = Arrays.stream(draws).filter(value -> value > 0.0).count();
        long zero = Arrays.stream(draws).filter(value -> value == 0.0).count();
        return new Effect(
                Robust.median(draws),
                Robust.quantile(draws, LOW),
                Robust.quantile(draws, HIGH),
                (positive + 0.5 * zero) / draws.length);
    }
}
