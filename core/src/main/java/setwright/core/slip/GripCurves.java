package setwright.core.slip;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import setwright.core.car.CarSheet;
import setwright.core.car.TyreCurve;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.numerics.Robust;

/** Draws the grip curves of both axles from the laps of a stint. */
final class GripCurves {
    /** Share of the peak force from which on an axle counts as at its limit. */
    static final double AT_LIMIT = 0.95;

    /** Slip over that of the peak that gives it. */
    static final double LIMIT_USE = TyreCurve.slipShare(AT_LIMIT);

    /** Share of the grip limit from which on a car corners: below, utilisation is of no interest. */
    private static final double CORNERING = 0.3;

    private static final double BIN_RAD = Math.toRadians(0.5);
    private static final int BINS = 40;
    private static final int LEAST_IN_BIN = 6;
    private static final int FEWEST_LAPS = 3;
    /** With more than half of the longitudinal grip in use the ellipse's correction would outweigh what is measured. */
    private static final double MOST_ALONG = 0.5;

    /** Grip is read off where the force is near the peak and slip hardly matters. */
    private static final double NEAR_PEAK = 0.8;

    /**
     * Doubt of the slip at the peak beyond what the filter believes, relative: what a single-track car leaves out. Measured as the error
     * on drives of the truth bench's tuning seed.
     */
    static final double PEAK_SLIP_DOUBT = 0.1;

    static final double NORMAL_95 = 1.96;
    private static final double MOST_SHARE = 0.98;

    private final Stint stint;
    private final HandlingTrace trace;
    private final SlipSteps steps;
    private final AxleLoads loads;
    private final AxleLoads.At at = new AxleLoads.At();
    private final boolean isFront;
    private final double[] slip;
    private final double[] peak;
    private final double[] peakSd;
    private final double[] use;
    private final double arm;
    private final double turning;
    private final List<List<Double>> bins = lists();
    private final List<Double> grips = new ArrayList<>();
    private final List<Double> doubts = new ArrayList<>();
    private final List<Double> shares = new ArrayList<>();
    private final List<Double> peaks = new ArrayList<>();
    private final List<Double> peakSds = new ArrayList<>();
    private int limit;

    private GripCurves(
            AxleSide axle, Stint stint, HandlingTrace trace, CarSheet sheet, SlipSteps steps, AxleLoads loads) {
        this.stint = stint;
        this.trace = trace;
        this.steps = steps;
        this.loads = loads;
        this.isFront = axle == AxleSide.FRONT;
        this.slip = isFront ? steps.frontSlip() : steps.rearSlip();
        this.peak = isFront ? steps.frontPeakSlip() : steps.rearPeakSlip();
        this.peakSd = isFront ? steps.frontPeakSlipSd() : steps.rearPeakSlipSd();
        this.use = isFront ? steps.frontUse() : steps.rearUse();
        this.arm = (isFront ? sheet.rearAxleToCentreM() : sheet.frontAxleToCentreM()) / sheet.wheelbaseM();
        this.turning = (isFront ? 1.0 : -1.0) * loads.gyration2() / sheet.wheelbaseM();
    }

    /** Returns the curves of the front and of the rear axle. */
    static List<GripCurve> of(Stint stint, HandlingTrace trace, CarSheet sheet, SlipSteps steps) {
        AxleLoads loads = new AxleLoads(sheet, trace.car().grip());
        return List.of(AxleSide.FRONT, AxleSide.REAR).stream()
                .map(axle -> new GripCurves(axle, stint, trace, sheet, steps, loads).curve(axle))
                .toList();
    }

    private static List<List<Double>> lists() {
        List<List<Double>> lists = new ArrayList<>();
        for (int b = 0; b < BINS; b++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }

    private GripCurve curve(AxleSide axle) {
        stint.goodLaps().forEach(this::lap);
        List<GripCurve.Point> points = new ArrayList<>();
        for (int b = 0; b < BINS; b++) {
            if (bins.get(b).size() >= FEWEST_LAPS) {
                double[] mean = interval(bins.get(b));
                points.add(new GripCurve.Point(
                        (b + 0.5) * BIN_RAD,
                        mean[0],
                        mean[1],
                        mean[2],
                        bins.get(b).size()));
            }
        }
        double[] grip =
                grips.size() >= FEWEST_LAPS ? interval(grips) : new double[] {Double.NaN, Double.NaN, Double.NaN};
        double middle = median(peaks);
        double doubt = NORMAL_95 * Math.hypot(median(peakSds), PEAK_SLIP_DOUBT);
        return new GripCurve(
                axle,
                grip[0],
                grip[1],
                grip[2],
                median(doubts),
                middle,
                middle * Math.exp(-doubt),
                middle * Math.exp(doubt),
                Robust.quantile(array(shares), MOST_SHARE),
                shares.isEmpty() ? Double.NaN : limit / (double) shares.size(),
                points);
    }

    private void lap(Lap lap) {
        List<List<Double>> own = lists();
        List<Double> near = new ArrayList<>();
        int last = Math.min(lap.to() / steps.stride(), steps.count());
        for (int k = lap.from() / steps.stride(); k < last; k++) {
            int i = steps.sample(k);
            double most = CORNERING * trace.car().grip().at(trace.speed().get(i));
            if (!Double.isFinite(slip[k]) || !(Math.abs(trace.lateral().get(i)) > most)) {
                continue;
            }
            double share = Math.abs(slip[k]) / peak[k];
            shares.add(share);
            peaks.add(peak[k]);
            peakSds.add(peakSd[k]);
            limit += use[k] >= LIMIT_USE ? 1 : 0;
            double force = force(k, i);
            doubts.add(loads.doubt(isFront, trace.speed().get(i), at.load));
            int bin = (int) (Math.abs(slip[k]) / BIN_RAD);
            if (Double.isFinite(force) && bin < BINS) {
                own.get(bin).add(force);
                double given = TyreCurve.forceShare(share);
                if (given > NEAR_PEAK) {
                    near.add(force / given);
                }
            }
        }
        for (int b = 0; b < BINS; b++) {
            if (own.get(b).size() >= LEAST_IN_BIN) {
                bins.get(b).add(median(own.get(b)));
            }
        }
        if (near.size() >= LEAST_IN_BIN) {
            grips.add(median(near));
        }
    }

    /** Lateral force over load, in the direction of the slip; not a number where too much of the grip is used lengthwise. */
    private double force(int step, int i) {
        loads.fill(
                isFront,
                trace.speed().get(i),
                trace.forward().get(i),
                trace.lateral().get(i),
                trace.tyre(i),
                at);
        double needed =
                arm * trace.lateral().get(i) + turning * trace.yawAcceleration().get(i);
        return at.along > MOST_ALONG
                ? Double.NaN
                : needed * Math.signum(slip[step]) / at.load / Math.sqrt(1.0 - at.along * at.along);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double median(List<Double> values) {
        return Robust.median(array(values));
    }

    /** Mean and ends of its 95 % interval by Student's t: laps are taken for independent, moments in a lap are not. */
    private static double[] interval(List<Double> laps) {
        double mean = laps.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
        double sum = laps.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        int n = laps.size();
        double half = new TDistribution(n - 1.0).inverseCumulativeProbability(0.975) * Math.sqrt(sum / (n - 1.0) / n);
        return new double[] {mean, mean - half, mean + half};
    }
}
