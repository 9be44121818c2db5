package setwright.core.chassis;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Lap;
import setwright.core.numerics.LocalPolynomial;

/*
 * Design note. Travel is taken to be that of the wheel against the body, as everywhere; times the motion ratio it is the damper's. Shares
 * are of time, lap by lap, so that their intervals are those of the laps. Over a lap a damper ends where it began: what one way has in
 * speed, the other has in time, and a lean of the shares means nothing else.
 */

/** Reads damper speeds from suspension travel. */
final class DamperReader {
    /** Where the sheet gives no knee: racing dampers turn from low to high speed at 25 to 75 mm/s (common practice). */
    private static final double USUAL_KNEE_MPS = 0.05;

    private static final double BIN_MPS = 0.01;
    private static final int BINS_EACH_WAY = 20;
    private static final double[] EDGES = IntStream.rangeClosed(-BINS_EACH_WAY, BINS_EACH_WAY)
            .mapToDouble(i -> i * BIN_MPS)
            .toArray();

    private final Motion motion;
    private final List<Lap> laps;

    private DamperReader(Motion motion) {
        this.motion = motion;
        this.laps = motion.goodLaps();
    }

    /** What a lap says of one damper: shares of the bins, and of slow and fast bump and rebound. */
    private record LapShares(
            List<Double> bins, double lowBump, double lowRebound, double highBump, double highRebound, double rmsMps) {
        double high() {
            return highBump + highRebound;
        }
    }

    static void read(Motion motion, CarSheet sheet, ChassisEvidence.Builder into) {
        if (!motion.has(TravelDirection.TRAVEL)) {
            into.missing(Subject.DAMPERS, false, "no suspension travel of every wheel was recorded");
            return;
        }
        double rate = motion.recording().sampleRateHz();
        if (rate < DamperSpeed.leastRateHz(DamperSpeed.BODY_HZ)) {
            into.missing(
                    Subject.DAMPERS,
                    true,
                    String.format(
                            Locale.ROOT,
                            "%.0f samples a second cannot carry the body's motion of up to %.0f Hz; it takes %.0f",
                            rate,
                            DamperSpeed.BODY_HZ,
                            Math.ceil(DamperSpeed.leastRateHz(DamperSpeed.BODY_HZ))));
            return;
        }
        double side = TravelDirection.of(motion);
        if (side == 0.0) {
            into.missing(
                    Subject.DAMPERS,
                    true,
                    "which way the travel counts cannot be told: the car does not dive on the brake");
            return;
        }
        into.dampers = java.util.Optional.of(new DamperReader(motion).all(sheet, side));
    }

    private DamperMotion all(CarSheet sheet, double side) {
        double rate = motion.recording().sampleRateHz();
        boolean hop = rate >= DamperSpeed.leastRateHz(DamperSpeed.HOP_HZ);
        int halfWidth = DamperSpeed.halfWidth(hop ? DamperSpeed.HOP_HZ : DamperSpeed.BODY_HZ, rate);
        LocalPolynomial fit = LocalPolynomial.of(halfWidth, Math.min(2, 2 * halfWidth));
        List<Wheel> order = List.of(Wheel.values());
        List<List<LapShares>> shares = order.parallelStream()
                .map(wheel -> shares(wheel, fit, sheet, side))
                .toList();
        List<DamperMotion.OfWheel> wheels = IntStream.range(0, shares.size())
                .mapToObj(k -> wheel(order.get(k), sheet, shares.get(k)))
                .toList();
        return new DamperMotion(
                rate,
                (2 * halfWidth + 1) / rate,
                DamperSpeed.bandHz(halfWidth, rate),
                hop,
                Arrays.stream(EDGES).boxed().toList(),
                wheels,
                List.of(
                        contrast("left less right at the front", shares, new int[] {0}, new int[] {1}),
                        contrast("left less right at the rear", shares, new int[] {2}, new int[] {3}),
                        contrast("front less rear", shares, new int[] {0, 1}, new int[] {2, 3})),
                laps.stream().map(Lap::number).toList());
    }

    static double[] edges() {
        return EDGES.clone();
    }

    private static CarDetail.Axle axle(Wheel wheel, CarSheet sheet) {
        return wheel.isFront() ? sheet.detail().front() : sheet.detail().rear();
    }

    private static double knee(Wheel wheel, CarSheet sheet) {
        return axle(wheel, sheet).damper().map(CarDetail.Damper::kneeMps).orElse(USUAL_KNEE_MPS);
    }

    private List<LapShares> shares(Wheel wheel, LocalPolynomial fit, CarSheet sheet, double side) {
        double ratio = wheel.isFront() ? sheet.motionRatioFront() : sheet.motionRatioRear();
        double[] speed = fit.derivative(
                motion.recording().channel(wheel.of("SUSPENSION")).toArray(),
                motion.recording().stepS());
        Arrays.setAll(speed, i -> side * ratio * speed[i]);
        return laps.stream().map(lap -> shares(speed, lap, knee(wheel, sheet))).toList();
    }

    private static LapShares shares(double[] speed, Lap lap, double knee) {
        double[] bins = new double[EDGES.length + 1];
        double[] parts = new double[4];
        double squares = 0.0;
        int count = 0;
        for (int i = lap.from(); i < lap.to(); i++) {
            double v = speed[i];
            if (!Double.isFinite(v)) {
                continue;
            }
            bins[(int) Math.max(0.0, Math.min(Math.floor(v / BIN_MPS) + BINS_EACH_WAY + 1.0, EDGES.length))]++;
            parts[(Math.abs(v) < knee ? 0 : 2) + (v > 0.0 ? 0 : 1)]++;
            squares += v * v;
            count++;
        }
        double all = count;
        return new LapShares(
                Arrays.stream(bins).mapToObj(bin -> bin / all).toList(),
                parts[0] / all,
                parts[1] / all,
                parts[2] / all,
                parts[3] / all,
                Math.sqrt(squares / all));
    }

    private static DamperMotion.OfWheel wheel(Wheel wheel, CarSheet sheet, List<LapShares> laps) {
        List<Double> bins = IntStream.range(0, EDGES.length + 1)
                .mapToObj(bin -> over(laps, lap -> lap.bins().get(bin)).mean())
                .toList();
        return new DamperMotion.OfWheel(
                wheel,
                knee(wheel, sheet),
                axle(wheel, sheet).damper().isPresent(),
                bins,
                over(laps, LapShares::lowBump),
                over(laps, LapShares::lowRebound),
                over(laps, LapShares::highBump),
                over(laps, LapShares::highRebound),
                over(laps, lap -> lap.lowBump() + lap.highBump() - lap.lowRebound() - lap.highRebound()),
                over(laps, lap -> lap.highBump() - lap.highRebound()),
                over(laps, LapShares::rmsMps));
    }

    private static LapInterval over(List<LapShares> laps, ToDoubleFunction<LapShares> value) {
        return LapInterval.of(laps.stream().mapToDouble(value).toArray());
    }

    private DamperMotion.Contrast contrast(String what, List<List<LapShares>> all, int[] first, int[] second) {
        return new DamperMotion.Contrast(
                what,
                difference(all, first, second, LapShares::high),
                difference(all, first, second, LapShares::rmsMps));
    }

    private LapInterval difference(
            List<List<LapShares>> all, int[] first, int[] second, ToDoubleFunction<LapShares> value) {
        return motion.overLaps(lap -> mean(all, first, lap, value) - mean(all, second, lap, value));
    }

    private static double mean(List<List<LapShares>> all, int[] wheels, int lap, ToDoubleFunction<LapShares> value) {
        return Arrays.stream(wheels)
                .mapToDouble(wheel -> value.applyAsDouble(all.get(wheel).get(lap)))
                .average()
                .orElse(Double.NaN);
    }
}
