package setwright.core.chassis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.SimpleRegression;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.circuit.Lap;
import setwright.core.numerics.Robust;

/*
 * Design note. Air loads grow with v^2, and springs give in proportion: in quiet driving a height falls along a line over v^2, whose
 * slope is that of the air (Milliken and Milliken, 1995, on ride height and downforce, value from memory). What braking, cornering
 * and bumps do is kept out by taking quiet samples and medians.
 */

/** Reads ride heights, measured or from suspension travel. */
final class RideHeightReader {
    /** Hardly pitched or rolled: a twentieth of what racing cars brake with (our choice). */
    private static final double QUIET_FORWARD_MPS2 = 3.0;

    private static final double QUIET_LATERAL_MPS2 = 2.0;
    private static final double CLASS_MPS = 10.0;
    private static final double FASTEST_MPS = 110.0;
    /** Of a class in a lap: half a second, more than a bump lasts. */
    private static final double LEAST_S = 0.5;
    /** A slope over v² needs classes apart by this much of the greatest v². */
    private static final double APART = 0.3;
    /** The speed that falls are told for: where most circuits' straights lie. */
    static final double TOLD_MPS = 50.0;

    private static final double LEAST_SHARE = 0.001;
    private static final int CLASSES = (int) Math.round(FASTEST_MPS / CLASS_MPS);

    private final Motion motion;
    private final List<Lap> laps;
    private final double[] front;
    private final double[] rear;
    private final double[] speeds;

    private RideHeightReader(Motion motion, double[] front, double[] rear) {
        this.motion = motion;
        this.laps = motion.goodLaps();
        this.front = front;
        this.rear = rear;
        this.speeds = motion.speed().toArray();
    }

    static void read(Motion motion, CarSheet sheet, ChassisEvidence.Builder into) {
        Optional<double[]> front = HeightSensors.between(motion.recording(), true);
        Optional<double[]> rear = HeightSensors.between(motion.recording(), false);
        boolean travel = front.isEmpty() || rear.isEmpty();
        if (travel) {
            if (!motion.has(TravelDirection.TRAVEL)) {
                into.missing(
                        Subject.RIDE_HEIGHT,
                        false,
                        "neither ride heights nor suspension travel of both axles were recorded");
                return;
            }
            double side = TravelDirection.of(motion);
            if (side == 0.0) {
                into.missing(
                        Subject.RIDE_HEIGHT,
                        true,
                        "which way the travel counts cannot be told: the car does not dive on the brake");
                return;
            }
            front = fromTravel(motion, sheet, side, true);
            rear = fromTravel(motion, sheet, side, false);
            if (front.isEmpty() || rear.isEmpty()) {
                into.missing(
                        Subject.RIDE_HEIGHT,
                        true,
                        "travel was recorded, but the sheet has no ride heights to add it to");
                return;
            }
        }
        into.rideHeights = new RideHeightReader(motion, front.orElseThrow(), rear.orElseThrow()).all(travel);
        if (into.rideHeights.isEmpty()) {
            into.missing(Subject.RIDE_HEIGHT, true, "no speed was driven quietly for long enough");
        }
    }

    private static Optional<double[]> fromTravel(Motion motion, CarSheet sheet, double side, boolean isFront) {
        String item = isFront ? "front_ride_height" : "rear_ride_height";
        double[] travel = HeightSensors.mean(
                motion.recording(),
                Arrays.stream(Wheel.values())
                        .filter(wheel -> wheel.isFront() == isFront)
                        .map(wheel -> wheel.of("SUSPENSION"))
                        .toList());
        return SetupCatalogue.find(item)
                .flatMap(kind -> sheet.item(item).map(kind::toSi))
                .map(rest -> Arrays.stream(travel).map(x -> rest - side * x).toArray());
    }

    private Optional<RideHeights> all(boolean fromTravel) {
        double[][] frontOf = new double[CLASSES][laps.size()];
        double[][] rearOf = new double[CLASSES][laps.size()];
        double[][] square = new double[CLASSES][laps.size()];
        IntStream.range(0, laps.size()).parallel().forEach(lap -> {
            for (int speed = 0; speed < CLASSES; speed++) {
                int[] samples = quiet(laps.get(lap), speed);
                frontOf[speed][lap] = median(front, samples);
                rearOf[speed][lap] = median(rear, samples);
                double middle = median(speeds, samples);
                square[speed][lap] = middle * middle;
            }
        });
        List<RideHeights.Point> points = new ArrayList<>();
        for (int speed = 0; speed < CLASSES; speed++) {
            double low = speed * CLASS_MPS;
            double high = low + CLASS_MPS;
            LapInterval frontM = LapInterval.of(frontOf[speed]);
            if (frontM.laps() > 0) {
                points.add(new RideHeights.Point(
                        low,
                        high,
                        Math.sqrt(LapInterval.of(square[speed]).mean()),
                        frontM,
                        LapInterval.of(rearOf[speed]),
                        LapInterval.of(difference(rearOf[speed], frontOf[speed]))));
            }
        }
        if (points.isEmpty()) {
            return Optional.empty();
        }
        double[] frontFall = falls(frontOf, square);
        double[] rearFall = falls(rearOf, square);
        return Optional.of(new RideHeights(
                fromTravel,
                points,
                LapInterval.of(frontFall),
                LapInterval.of(rearFall),
                LapInterval.of(difference(frontFall, rearFall)),
                least(front),
                least(rear),
                laps.stream().map(Lap::number).toList()));
    }

    private static double[] difference(double[] first, double[] second) {
        double[] out = new double[first.length];
        Arrays.setAll(out, i -> first[i] - second[i]);
        return out;
    }

    private int[] quiet(Lap lap, int speed) {
        int[] samples = new int[lap.to() - lap.from()];
        int count = 0;
        for (int i = lap.from(); i < lap.to(); i++) {
            boolean here = Math.floor(motion.speed().get(i) / CLASS_MPS) == speed
                    && Math.abs(motion.forward().get(i)) < QUIET_FORWARD_MPS2
                    && Math.abs(motion.lateral().get(i)) < QUIET_LATERAL_MPS2
                    && Double.isFinite(front[i])
                    && Double.isFinite(rear[i]);
            if (here) {
                samples[count++] = i;
            }
        }
        return count * motion.recording().stepS() < LEAST_S ? new int[0] : Arrays.copyOf(samples, count);
    }

    private static double median(double[] height, int[] samples) {
        return Robust.median(Arrays.stream(samples).mapToDouble(i -> height[i]).toArray());
    }

    /** Of each lap, how far the line over v² comes down to {@link #TOLD_MPS}, m. */
    private double[] falls(double[][] heights, double[][] square) {
        double[] falls = new double[laps.size()];
        for (int lap = 0; lap < falls.length; lap++) {
            SimpleRegression line = new SimpleRegression();
            double least = Double.POSITIVE_INFINITY;
            double most = 0.0;
            for (int speed = 0; speed < CLASSES; speed++) {
                if (Double.isFinite(heights[speed][lap])) {
                    line.addData(square[speed][lap], heights[speed][lap]);
                    least = Math.min(least, square[speed][lap]);
                    most = Math.max(most, square[speed][lap]);
                }
            }
            boolean told = line.getN() >= 3 && most - least > APART * most;
            falls[lap] = told ? -line.getSlope() * TOLD_MPS * TOLD_MPS : Double.NaN;
        }
        return falls;
    }

    private LapInterval least(double[] height) {
        return motion.overLaps(lap -> Robust.quantile(
                Arrays.copyOfRange(height, laps.get(lap).from(), laps.get(lap).to()), LEAST_SHARE));
    }
}
