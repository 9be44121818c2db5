package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import setwright.core.numerics.Robust;

/**
 * Puts aside laps that do not belong to the driver's own: slow as a whole, or with a mistake in one place.
 *
 * <p>A lap is compared with the other laps place by place. It goes only when its loss is too large for the driver's own
 * scatter even if that has heavy tails: the most extreme lap is tested first and the rest again without it (B. Rosner,
 * "Percentage points for a generalized ESD many-outlier procedure", Technometrics 25(2), 1983), with robust scales and
 * Student's t of four degrees of freedom in place of the normal distribution, at {@link #LEVEL} for the whole stint. So an
 * inconsistent driver keeps the laps that show it.
 */
final class LapJudge {
    /** Share of stints in which one ordinary lap may be put aside. */
    static final double LEVEL = 0.01;

    private static final TDistribution HEAVY_TAILS = new TDistribution(4.0);
    /** A corner with its approach is about this long, m. */
    private static final double PLACE_M = 200.0;
    /** Fuel and tyres change lap times by up to about this share within a stint (value from memory). */
    private static final double DRIFT = 0.005;
    /** Half the speed takes a quarter of the grip: no line or scatter explains it, only a spin, a run-off or a jam. */
    private static final double LOST_SPEED = 0.5;
    /** With fewer laps the scatter is unknown; then only laps beyond 107 % of the median go (common practice). */
    private static final int FEWEST = 4;

    private static final double FAR_OFF = 0.07;

    private final List<Lap> laps;
    private final ReferenceLine line;
    private final double[][] speed;
    private final int placeNodes;

    /**
     * Prepares.
     *
     * @param laps       as cut; only the good ones are judged
     * @param placement  of the samples
     * @param motion     their speeds
     * @param line       that they were placed on
     */
    LapJudge(List<Lap> laps, Placement placement, Motion motion, ReferenceLine line) {
        this.laps = laps;
        this.line = line;
        this.speed = new double[laps.size()][];
        this.placeNodes = Math.max(1, (int) Math.round(PLACE_M / line.stepM()));
        for (int k = 0; k < laps.size(); k++) {
            Lap lap = laps.get(k);
            speed[k] = Gaps.bridged(placement.speedAt(motion, lap.from(), lap.to(), line.nodeCount(), line.stepM()));
        }
    }

    /** Returns the laps, those that do not belong put aside with the reason. */
    List<Lap> judged() {
        List<Lap> judged = new ArrayList<>(laps);
        List<Integer> good = new ArrayList<>();
        for (int k = 0; k < judged.size(); k++) {
            if (judged.get(k).good()) {
                good.add(k);
            }
        }
        if (good.size() < 2) {
            return judged;
        }
        putAsideSpins(judged, good);
        int start = good.size();
        while (good.size() > Math.max(2, start / 2)) {
            int before = good.size();
            putAsideWorst(judged, good, start);
            if (good.size() == before) {
                break;
            }
        }
        return judged;
    }

    private void putAsideSpins(List<Lap> judged, List<Integer> good) {
        double[] usual = usualSpeed(good);
        for (int k : List.copyOf(good)) {
            int worst = 0;
            for (int i = 0; i < usual.length; i++) {
                if (speed[k][i] / usual[i] < speed[k][worst] / usual[worst]) {
                    worst = i;
                }
            }
            if (good.size() > 1 && speed[k][worst] < LOST_SPEED * usual[worst]) {
                judged.set(
                        k,
                        judged.get(k)
                                .as(
                                        LapKind.MISTAKE,
                                        LapLabels.say(
                                                "down to %.0f km/h at %.0f m where the others have %.0f km/h",
                                                3.6 * speed[k][worst], worst * line.stepM(), 3.6 * usual[worst])));
                good.remove(Integer.valueOf(k));
            }
        }
    }

    private double[] usualSpeed(List<Integer> good) {
        double[] usual = new double[line.nodeCount()];
        double[] here = new double[good.size()];
        for (int i = 0; i < usual.length; i++) {
            for (int k = 0; k < here.length; k++) {
                here[k] = speed[good.get(k)][i];
            }
            usual[i] = Math.max(1.0, Robust.median(here));
        }
        return usual;
    }

    private void putAsideWorst(List<Lap> judged, List<Integer> good, int start) {
        int worst = -1;
        double excess = 1.0;
        Lap verdict = judged.get(good.get(0));
        double[][] slowness = good.stream().map(k -> byPlace(speed[k])).toArray(double[][]::new);
        MediansWithoutOne usual =
                new MediansWithoutOne(good.stream().map(k -> speed[k]).toArray(double[][]::new));
        for (int k = 0; k < good.size(); k++) {
            Losses losses = new Losses(slowness, k, usual.without(k));
            for (Suspicion suspicion : losses.suspicions(start)) {
                if (suspicion.excess() > excess) {
                    excess = suspicion.excess();
                    worst = good.get(k);
                    verdict = judged.get(worst).as(suspicion.kind(), suspicion.why());
                }
            }
        }
        if (worst >= 0) {
            judged.set(worst, verdict);
            good.remove(Integer.valueOf(worst));
        }
    }

    /** Time in each place, s. */
    private double[] byPlace(double[] speedMps) {
        int places = Math.max(1, speedMps.length / placeNodes);
        double[] time = new double[places];
        for (int i = 0; i < speedMps.length; i++) {
            time[Math.min(places - 1, i / placeNodes)] += line.stepM() / Math.max(1.0, speedMps[i]);
        }
        return time;
    }

    /** A reason to put a lap aside; {@code excess} above 1 is beyond the limit. */
    private record Suspicion(LapKind kind, double excess, String why) {}

    /** Time lost by one lap against the others, by place. */
    private final class Losses {
        private final double lapTime;
        private final double[] own;
        private final double[] scatter;
        private final double total;
        private final double totalScatter;
        private final int others;

        Losses(double[][] times, int lap, double[] usualSpeed) {
            double[] usual = byPlace(usualSpeed);
            this.lapTime = sum(usual);
            this.others = times.length - 1;
            this.own = new double[usual.length];
            this.scatter = new double[usual.length];
            double[][] theirs = new double[usual.length][others];
            double[] totals = new double[others];
            for (int k = 0, o = 0; k < times.length; k++) {
                if (k != lap) {
                    for (int b = 0; b < usual.length; b++) {
                        theirs[b][o] = times[k][b] - usual[b];
                        totals[o] += theirs[b][o];
                    }
                    o++;
                }
            }
            double squares = 0.0;
            for (int b = 0; b < usual.length; b++) {
                own[b] = times[lap][b] - usual[b];
                scatter[b] = Robust.scaledMad(theirs[b]);
                squares += scatter[b] * scatter[b];
            }
            this.total = sum(own) - Robust.median(totals);
            // Places are nearly independent; their sum has more to go by than a few lap times. The larger of both is
            // taken.
            this.totalScatter = Math.max(Robust.scaledMad(totals), Math.sqrt(squares));
        }

        List<Suspicion> suspicions(int start) {
            List<Suspicion> found = new ArrayList<>();
            int worst = 0;
            for (int b = 1; b < own.length; b++) {
                if (pair(b) > pair(worst)) {
                    worst = b;
                }
            }
            boolean known = others + 1 >= FEWEST;
            double widen = Math.sqrt(1.0 + 1.0 / others);
            double limit =
                    known ? Math.max(DRIFT * lapTime, quantile(start) * widen * totalScatter) : FAR_OFF * lapTime;
            // More than half of the loss within two places is a mistake, not a slow lap.
            boolean inOnePlace = pair(worst) > 0.5 * total;
            String place = LapLabels.say(
                    "%.2f s lost near %.0f m", pair(worst), ((worst + 1) * placeNodes * line.stepM()) % line.lengthM());
            found.add(new Suspicion(
                    inOnePlace ? LapKind.MISTAKE : LapKind.SLOW,
                    total / limit,
                    inOnePlace
                            ? place
                            : LapLabels.say(
                                    "%.2f s slower all round the lap where the others scatter by %.2f s",
                                    total, totalScatter)));
            boolean allRound = total > limit && !inOnePlace;
            if (known && !allRound) {
                double local = localLimit(worst, start, widen);
                String usual = LapLabels.say(
                        "where the others scatter by %.2f s", local / quantile(start * own.length) / widen);
                found.add(new Suspicion(
                        inOnePlace ? LapKind.MISTAKE : LapKind.SLOW,
                        pair(worst) / local,
                        inOnePlace
                                ? place + " " + usual
                                : LapLabels.say("%.2f s slower in all, %s %s", total, place, usual)));
            }
            return found;
        }

        private double localLimit(int worst, int start, double widen) {
            int next = (worst + 1) % own.length;
            double usual = Math.hypot(Robust.median(scatter), Robust.median(scatter));
            double here = Math.max(usual, Math.hypot(scatter[worst], scatter[next]));
            return Math.max(DRIFT * lapTime, quantile(start * own.length) * widen * here);
        }

        /** Loss in a place and the next one, so that no loss is cut in two. */
        private double pair(int place) {
            return own[place] + own[(place + 1) % own.length];
        }

        private double quantile(int tests) {
            return HEAVY_TAILS.inverseCumulativeProbability(1.0 - LEVEL / tests);
        }
    }

    private static double sum(double[] values) {
        double sum = 0.0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
