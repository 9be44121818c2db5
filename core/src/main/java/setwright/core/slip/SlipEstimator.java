package setwright.core.slip;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Parameter;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.numerics.Robust;
import setwright.core.numerics.UnscentedSmoother;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/** Estimates the sideslip of a stint, and from it how hard each axle worked. */
final class SlipEstimator {
    private static final double RATE_HZ = 25.0;
    /** Twelve minutes: memory stays below forty megabytes, and the slow states are carried on. */
    private static final int LONGEST_RUN = 18_000;

    private static final int SHORTEST_RUN = 25;
    private static final double AROUND_S = 2.0;
    private static final double LEAST_SPEED = 8.0;

    /** What sideslip's own movement adds where yaw rate is taken from lateral acceleration or the other way, rad/s. */
    private static final double UNSEEN_RAD_PER_S = 0.05;

    /** Grip of an axle that laps' limit and sheet leave open: the limit is known to a tenth (see GripLimit). */
    private static final double GRIP_SD = 0.1;

    private static final double YAW_BIAS_SD = Math.toRadians(0.2);
    private static final double LATERAL_BIAS_SD = 0.3;

    /**
     * How fast each state wanders, per root of a second: sideslip (rad) and yaw rate (rad/s) for what a single-track car leaves out,
     * then grip of the axles, slip at the peak and biases. Set by the innovations on drives of the truth bench's tuning seed.
     */
    private static final double[] WANDER = {0.001, 0.02, 0.01, 0.01, 0.003, 0.003, Math.toRadians(0.01), 0.02};

    private SlipEstimator() {}

    /** Estimates at the filter's steps. */
    static SlipSteps steps(Stint stint, HandlingTrace trace, CarSheet sheet) {
        double sampleS = stint.recording().stepS();
        int stride = (int) Math.max(1, Math.round(1.0 / (RATE_HZ * sampleS)));
        int count = stint.recording().sampleCount() / stride;
        SlipSteps out = SlipSteps.empty(count, stride, stride * sampleS);
        List<Lap> good = stint.goodLaps();
        if (good.isEmpty()) {
            return out;
        }
        new Estimate(stint, trace, sheet, out).all(good);
        return out;
    }

    /** The work for one stint; mutable. */
    private static final class Estimate {
        private final HandlingTrace trace;
        private final CarSheet sheet;
        private final SlipSteps out;
        private final AxleLoads loads;
        private final boolean lateralMeasured;
        private final double[][] readings;
        private final double[] scatter = new double[2];
        private final double[] start = new double[SlipModel.STATES];
        private final double[] variance = new double[SlipModel.STATES];
        private final AxleLoads.At front = new AxleLoads.At();
        private final AxleLoads.At rear = new AxleLoads.At();

        Estimate(Stint stint, HandlingTrace trace, CarSheet sheet, SlipSteps out) {
            this.trace = trace;
            this.sheet = sheet;
            this.out = out;
            this.loads = new AxleLoads(sheet, trace.car().grip());
            this.lateralMeasured = stint.recording().has(Quantity.LATERAL_ACCELERATION);
            this.readings = new double[out.count()][2];
            double speed = Robust.median(trace.speed().toArray());
            read(stint, Quantity.YAW_RATE, trace.yawMeasured(), trace.yawRate(), 0, UNSEEN_RAD_PER_S);
            read(stint, Quantity.LATERAL_ACCELERATION, lateralMeasured, trace.lateral(), 1, UNSEEN_RAD_PER_S * speed);
            CarPrior prior = CarPrior.of(sheet);
            variance[SlipModel.SIDESLIP] = 0.02 * 0.02;
            variance[SlipModel.YAW_RATE] = 0.05 * 0.05;
            variance[SlipModel.FRONT_GRIP] = GRIP_SD * GRIP_SD;
            variance[SlipModel.REAR_GRIP] = GRIP_SD * GRIP_SD;
            variance[SlipModel.PEAK_SLIP] = square(prior.spread(Parameter.PEAK_SLIP));
            variance[SlipModel.SLIP_SPLIT] = square(prior.spread(Parameter.PEAK_SLIP_SPLIT));
            variance[SlipModel.YAW_BIAS] = YAW_BIAS_SD * YAW_BIAS_SD;
            variance[SlipModel.LATERAL_BIAS] = LATERAL_BIAS_SD * LATERAL_BIAS_SD;
        }

        private static double square(double value) {
            return value * value;
        }

        /** Means over each step keep white noise white; what scatters is what the low-pass of the trace takes out. */
        private void read(
                Stint stint, Quantity quantity, boolean measured, Channel traced, int reading, double unseen) {
            Channel samples = measured ? stint.recording().channel(quantity) : traced;
            double[] rough = new double[out.count()];
            for (int k = 0; k < out.count(); k++) {
                double sum = 0.0;
                for (int i = k * out.stride(); i < (k + 1) * out.stride(); i++) {
                    sum += samples.get(i);
                }
                readings[k][reading] = sum / out.stride();
                int middle = out.sample(k);
                rough[k] = samples.get(middle) - traced.get(middle);
            }
            double noise = Robust.scaledMad(rough);
            double mean = Double.isFinite(noise) ? noise * noise / out.stride() : 0.0;
            double least = reading == 0 ? 1.0e-6 : 1.0e-4;
            scatter[reading] = measured ? Math.max(mean, least) : unseen * unseen;
        }

        void all(List<Lap> good) {
            int around = (int) Math.round(AROUND_S / out.stepS());
            int first = Math.max(0, good.get(0).from() / out.stride() - around);
            int last = Math.min(out.count(), good.get(good.size() - 1).to() / out.stride() + around);
            int from = first;
            while (from < last) {
                int to = from;
                while (to < last && to - from < LONGEST_RUN && whole(to)) {
                    to++;
                }
                if (to - from >= SHORTEST_RUN) {
                    run(from, to);
                }
                from = to == from ? from + 1 : to;
            }
        }

        private boolean whole(int step) {
            int i = out.sample(step);
            return Double.isFinite(trace.speed().get(i))
                    && Double.isFinite(trace.steer().get(i))
                    && Double.isFinite(trace.forward().get(i))
                    && Double.isFinite(trace.lateral().get(i))
                    && Double.isFinite(trace.tyre(i));
        }

        private void run(int from, int to) {
            int count = to - from;
            SlipModel model = new SlipModel(sheet, loads, loads.curve(), count, out.stepS(), WANDER);
            double[] frontAlong = new double[count];
            double[] rearAlong = new double[count];
            double[][] own = new double[count][];
            for (int k = 0; k < count; k++) {
                int i = out.sample(from + k);
                own[k] = readings[from + k];
                model.speed[k] = trace.speed().get(i);
                model.steer[k] = trace.steer().get(i);
                model.forward[k] = trace.forward().get(i);
                load(true, i, front);
                load(false, i, rear);
                frontAlong[k] = front.along;
                rearAlong[k] = rear.along;
                model.frontPeak[k] = front.peak * Math.sqrt(1.0 - front.along * front.along);
                model.rearPeak[k] = rear.peak * Math.sqrt(1.0 - rear.along * rear.along);
                model.frontPeakSlip[k] = front.peakSlip;
                model.rearPeakSlip[k] = rear.peakSlip;
            }
            start[SlipModel.SIDESLIP] = 0.0;
            start[SlipModel.YAW_RATE] = Double.isFinite(own[0][0]) ? own[0][0] : 0.0;
            UnscentedSmoother smoother = new UnscentedSmoother(model);
            smoother.filter(count, start, variance, own, scatter);
            if (!Double.isFinite(smoother.mean(count - 1, SlipModel.SIDESLIP))) {
                return; // readings that no car could give: nothing is said of this stretch
            }
            for (int i = SlipModel.FRONT_GRIP; i < SlipModel.STATES; i++) {
                start[i] = smoother.mean(count - 1, i);
                variance[i] = smoother.covariance(count - 1, i, i);
            }
            smoother.smooth();
            for (int k = 0; k < count; k++) {
                keep(from + k, k, model, smoother, frontAlong[k], rearAlong[k]);
            }
        }

        private void load(boolean isFront, int i, AxleLoads.At at) {
            loads.fill(
                    isFront,
                    trace.speed().get(i),
                    trace.forward().get(i),
                    trace.lateral().get(i),
                    trace.tyre(i),
                    at);
        }

        private void keep(
                int step, int k, SlipModel model, UnscentedSmoother smoother, double frontAlong, double rearAlong) {
            double speed = model.speed[k];
            out.surprise()[step] = smoother.surprise(k);
            if (speed < LEAST_SPEED) {
                return;
            }
            double sideslip = smoother.mean(k, SlipModel.SIDESLIP);
            double yawRate = smoother.mean(k, SlipModel.YAW_RATE);
            double level = smoother.mean(k, SlipModel.PEAK_SLIP);
            double split = smoother.mean(k, SlipModel.SLIP_SPLIT);
            out.sideslip()[step] = sideslip;
            out.sideslipVariance()[step] = smoother.covariance(k, SlipModel.SIDESLIP, SlipModel.SIDESLIP);
            out.yawRate()[step] = yawRate;
            out.frontSlip()[step] = model.frontSlip(k, sideslip, yawRate, speed);
            out.rearSlip()[step] = model.rearSlip(sideslip, yawRate, speed);
            out.frontGrip()[step] = Math.exp(smoother.mean(k, SlipModel.FRONT_GRIP));
            out.rearGrip()[step] = Math.exp(smoother.mean(k, SlipModel.REAR_GRIP));
            out.frontPeakSlip()[step] = Math.exp(level - 0.5 * split) * model.frontPeakSlip[k];
            out.rearPeakSlip()[step] = Math.exp(level + 0.5 * split) * model.rearPeakSlip[k];
            out.frontPeakSlipSd()[step] = spread(smoother, k, -0.5);
            out.rearPeakSlipSd()[step] = spread(smoother, k, 0.5);
            out.frontUse()[step] =
                    SlipUse.of(loads.curve(), Math.abs(out.frontSlip()[step]) / out.frontPeakSlip()[step], frontAlong);
            out.rearUse()[step] =
                    SlipUse.of(loads.curve(), Math.abs(out.rearSlip()[step]) / out.rearPeakSlip()[step], rearAlong);
        }

        private static double spread(UnscentedSmoother smoother, int k, double share) {
            double level = smoother.covariance(k, SlipModel.PEAK_SLIP, SlipModel.PEAK_SLIP);
            double both = smoother.covariance(k, SlipModel.PEAK_SLIP, SlipModel.SLIP_SPLIT);
            double split = smoother.covariance(k, SlipModel.SLIP_SPLIT, SlipModel.SLIP_SPLIT);
            return Math.sqrt(Math.max(0.0, level + 2.0 * share * both + share * share * split));
        }
    }
}
