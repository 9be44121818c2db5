package setwright.core.slip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import setwright.core.car.CarSheet;
import setwright.core.car.TyreCurve;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.numerics.LocalPolynomial;
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
    private static final double PEAK_SLIP_DOUBT = 0.1;

    private static final double NORMAL_95 = 1.96;
    private static final double DERIVATIVE_WINDOW_S = 0.4;
    private static final double MOST_SHARE = 0.98;

    private GripCurves() {}

    static List<GripCurve> of(Stint stint, HandlingTrace trace, CarSheet sheet, SlipSteps steps) {
        AxleLoads loads = new AxleLoads(sheet, trace.car().grip());
        double sampleS = stint.recording().stepS();
        double[] yawRise = LocalPolynomial.quadraticOver(DERIVATIVE_WINDOW_S, sampleS)
                .derivative(trace.yawRate().toArray(), sampleS);
        return List.of(
                curve(AxleSide.FRONT, stint, trace, sheet, steps, loads, yawRise),
                curve(AxleSide.REAR, stint, trace, sheet, steps, loads, yawRise));
    }

    private static GripCurve curve(
            AxleSide axle,
            Stint stint,
            HandlingTrace trace,
            CarSheet sheet,
            SlipSteps steps,
            AxleLoads loads,
            double[] yawRise) {
        boolean isFront = axle == AxleSide.FRONT;
        double[] slip = isFront ? steps.frontSlip() : steps.rearSlip();
        double[] peak = isFront ? steps.frontPeakSlip() : steps.rearPeakSlip();
        double[] peakSd = isFront ? steps.frontPeakSlipSd() : steps.rearPeakSlipSd();
        double[] use = isFront ? steps.frontUse() : steps.rearUse();
        double arm = (isFront ? sheet.rearAxleToCentreM() : sheet.frontAxleToCentreM()) / sheet.wheelbaseM();
        double turning = (isFront ? 1.0 : -1.0) * loads.gyration2() / sheet.wheelbaseM();
        AxleLoads.At at = new AxleLoads.At();
        List<List<Double>> bins = new ArrayList<>();
        for (int b = 0; b < BINS; b++) {
            bins.add(new ArrayList<>());
        }
        List<Double> grips = new ArrayList<>();
        double[] inCorner = new double[steps.count()];
        double[] peaks = new double[steps.count()];
        double[] peakSds = new double[steps.count()];
        int corner = 0;
        int limit = 0;
        for (Lap lap : stint.goodLaps()) {
            List<List<Double>> own = new ArrayList<>();
            for (int b = 0; b < BINS; b++) {
                own.add(new ArrayList<>());
            }
            List<Double> near = new ArrayList<>();
            int last = Math.min(lap.to() / steps.stride(), steps.count());
            for (int k = lap.from() / steps.stride(); k < last; k++) {
                int i = steps.sample(k);
                double lateral = trace.lateral().get(i);
                double speed = trace.speed().get(i);
                boolean cornering = Math.abs(lateral) > CORNERING * trace.car().grip().at(speed);
                if (!Double.isFinite(slip[k]) || !cornering) {
                    continue;
                }
                inCorner[corner] = Math.abs(slip[k]) / peak[k];
                peaks[corner] = peak[k];
                peakSds[corner++] = peakSd[k];
                limit += use[k] >= LIMIT_USE ? 1 : 0;
                loads.fill(isFront, speed, trace.forward().get(i), lateral, trace.tyre(i), at);
                if (at.along > MOST_ALONG || !Double.isFinite(yawRise[i])) {
                    continue;
                }
                double needed = arm * lateral + turning * yawRise[i];
                double force = needed * Math.signum(slip[k]) / at.load / Math.sqrt(1.0 - at.along * at.along);
                int bin = (int) (Math.abs(slip[k]) / BIN_RAD);
                if (bin < BINS) {
                    own.get(bin).add(force);
                }
                double share = TyreCurve.forceShare(Math.abs(slip[k]) / peak[k]);
                if (share > NEAR_PEAK) {
                    near.add(force / share);
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
        double[] grip = grips.size() >= FEWEST_LAPS
                ? interval(grips)
                : new double[] {Double.NaN, Double.NaN, Double.NaN};
        double middle = Robust.median(Arrays.copyOf(peaks, corner));
        double doubt = NORMAL_95 * Math.hypot(Robust.median(Arrays.copyOf(peakSds, corner)), PEAK_SLIP_DOUBT);
        return new GripCurve(
                axle,
                grip[0],
                grip[1],
                grip[2],
                middle,
                middle * Math.exp(-doubt),
                middle * Math.exp(doubt),
                Robust.quantile(Arrays.copyOf(inCorner, corner), MOST_SHARE),
                corner == 0 ? Double.NaN : limit / (double) corner,
                points);
    }

    private static double median(List<Double> values) {
        return Robust.median(values.stream().mapToDouble(Double::doubleValue).toArray());
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
