package setwright.core.chassis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.regression.SimpleRegression;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.circuit.Lap;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;

/*
 * Design note. Each circuit's reading with the foot off the brake is its zero. The share is taken where the braking is strong enough that
 * sensors do not matter, as a ratio of sums, so that noise does not bias it. Pressures are no forces: what each makes of its
 * pressure is on the sheet (torque per bar), or the bias of the sheet cannot be held against them.
 */

/** Reads how the circuits share the pressure. */
final class BrakePressureReader {
    private static final double[] STEPS = {0.2, 0.4, 0.6, 0.8, 1.01};
    /** A foot on the throttle is off the brake, left-footed drivers and stabs aside: the median leaves these out. */
    private static final double ON_THROTTLE = 0.3;

    private static final double HARDEST = 0.995;
    private static final double SLOWEST_MPS = 10.0;
    private static final double LEAST_S = 0.3;
    /** Two sensors right to 2 % each put a share off by 0.7 % of itself; pads and discs of a sheet by more (orientation). */
    private static final double SENSORS = 0.02;
    /** The release is read over half a second: easing off takes a quarter to half a second (common practice). */
    private static final double RELEASE_S = 0.5;

    private static final int FEWEST_SAMPLES = 4;
    private static final int FEWEST_LAPS = 4;
    private static final double TENTH_S = 0.1;

    private final Motion motion;
    private final List<Lap> laps;
    private final double[] front;
    private final double[] rear;
    private final double hardest;

    /** When the wheel was turned in, s since the start of the recording; NaN where it was not. */
    record TurnIn(int lap, int corner, double timeS) {}

    private BrakePressureReader(Motion motion, double[] front, double[] rear) {
        this.motion = motion;
        this.laps = motion.goodLaps();
        this.front = front;
        this.rear = rear;
        double[] sum = new double[front.length];
        Arrays.setAll(sum, this::sum);
        this.hardest = Robust.quantile(sum, HARDEST);
    }

    static void read(Motion motion, List<TurnIn> passes, CarSheet sheet, ChassisEvidence.Builder into) {
        if (!motion.has(List.of(Quantity.BRAKE_PRESSURE_FRONT, Quantity.BRAKE_PRESSURE_REAR))) {
            into.missing(Subject.BRAKE_PRESSURE, false, "the pressures of both circuits were not recorded");
            return;
        }
        BrakePressureReader reader = new BrakePressureReader(
                motion,
                withoutZero(motion, Quantity.BRAKE_PRESSURE_FRONT),
                withoutZero(motion, Quantity.BRAKE_PRESSURE_REAR));
        if (!(reader.hardest > 0.0)) {
            into.missing(Subject.BRAKE_PRESSURE, true, "neither circuit shows a pressure that rises on the brake");
            return;
        }
        into.brakePressures = Optional.of(reader.all(passes, sheet));
    }

    private static double[] withoutZero(Motion motion, Quantity quantity) {
        double[] pressure = motion.recording().channel(quantity).toArray();
        double[] released = pressure.clone();
        for (int i = 0; i < released.length; i++) {
            released[i] = motion.throttle().get(i) > ON_THROTTLE ? released[i] : Double.NaN;
        }
        double zero = Robust.median(released);
        double taken = Double.isFinite(zero) ? zero : 0.0;
        return Arrays.stream(pressure).map(value -> value - taken).toArray();
    }

    private double sum(int i) {
        return front[i] + rear[i];
    }

    private BrakePressures all(List<TurnIn> passes, CarSheet sheet) {
        List<BrakePressures.Step> steps = new ArrayList<>();
        for (int step = 0; step + 1 < STEPS.length; step++) {
            double low = STEPS[step];
            double high = STEPS[step + 1];
            LapInterval share = share(1.0, i -> sum(i) >= low * hardest && sum(i) < high * hardest);
            if (share.laps() > 0) {
                steps.add(new BrakePressures.Step(low, Math.min(high, 1.0), share));
            }
        }
        return new BrakePressures(
                share(1.0, i -> sum(i) >= STEPS[0] * hardest),
                steps,
                growth(),
                force(sheet),
                releases(passes),
                laps.stream().map(Lap::number).toList());
    }

    /** Share of the front, each pressure times what it is worth: the front's over the rear's. */
    private LapInterval share(double frontWorth, IntPredicate counts) {
        return motion.overLaps(lap -> share(laps.get(lap), frontWorth, counts));
    }

    private double share(Lap lap, double frontWorth, IntPredicate counts) {
        double ofFront = 0.0;
        double ofBoth = 0.0;
        int count = 0;
        for (int i = lap.from(); i < lap.to(); i++) {
            if (counts.test(i) && motion.speed().get(i) > SLOWEST_MPS) {
                ofFront += frontWorth * front[i];
                ofBoth += frontWorth * front[i] + rear[i];
                count++;
            }
        }
        return count * motion.recording().stepS() < LEAST_S ? Double.NaN : ofFront / ofBoth;
    }

    private LapInterval growth() {
        int last = STEPS.length - 1;
        return motion.overLaps(lap -> share(laps.get(lap), 1.0, i -> sum(i) >= STEPS[last - 1] * hardest)
                - share(laps.get(lap), 1.0, i -> sum(i) >= STEPS[0] * hardest && sum(i) < STEPS[1] * hardest));
    }

    private Optional<BrakePressures.Force> force(CarSheet sheet) {
        OptionalDouble ofFront = sheet.detail().front().brakeTorqueNmPerPa();
        OptionalDouble ofRear = sheet.detail().rear().brakeTorqueNmPerPa();
        Optional<Double> bias = SetupCatalogue.find("brake_bias_front")
                .flatMap(kind -> sheet.item("brake_bias_front").map(kind::toSi));
        if (ofFront.isEmpty() || ofRear.isEmpty() || bias.isEmpty()) {
            return Optional.empty();
        }
        LapInterval share = share(ofFront.getAsDouble() / ofRear.getAsDouble(), i -> sum(i) >= STEPS[0] * hardest);
        boolean contradicts = share.above(bias.get() + SENSORS) || share.below(bias.get() - SENSORS);
        return Optional.of(new BrakePressures.Force(share, bias.get(), contradicts));
    }

    private List<BrakePressures.Release> releases(List<TurnIn> passes) {
        TreeMap<Integer, TreeMap<Integer, Double>> byCorner = new TreeMap<>();
        for (TurnIn pass : passes) {
            double rate = release(pass.timeS());
            if (Double.isFinite(rate)) {
                byCorner.computeIfAbsent(pass.corner(), corner -> new TreeMap<>())
                        .put(pass.lap(), rate);
            }
        }
        List<BrakePressures.Release> releases = new ArrayList<>();
        byCorner.forEach((corner, rates) -> {
            if (rates.size() >= FEWEST_LAPS) {
                double[] values = rates.values().stream()
                        .mapToDouble((ToDoubleFunction<Double>) Double::doubleValue)
                        .toArray();
                releases.add(new BrakePressures.Release(
                        corner, LapInterval.of(values), Robust.qn(values), List.copyOf(rates.keySet())));
            }
        });
        return releases;
    }

    /** Share of the pressure at turn-in that goes in a tenth of a second; NaN where the brake is off by then. */
    private double release(double turnInS) {
        if (!Double.isFinite(turnInS)) {
            return Double.NaN;
        }
        double step = motion.recording().stepS();
        int from = (int) Math.round(turnInS / step);
        int to = Math.min(front.length, from + (int) Math.round(RELEASE_S / step) + 1);
        if (from < 0 || from >= front.length || !(sum(from) > STEPS[0] * hardest)) {
            return Double.NaN;
        }
        SimpleRegression line = new SimpleRegression();
        // where the brake is off there is nothing left to release
        for (int i = from; i < to && sum(i) > 0.1 * sum(from); i++) {
            line.addData((i - from) * step, sum(i) / sum(from));
        }
        return line.getN() < FEWEST_SAMPLES ? Double.NaN : -line.getSlope() * TENTH_S;
    }
}
