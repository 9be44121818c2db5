package setwright.core.judgement;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntPredicate;
import setwright.core.car.BalancedCar;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.GripLimit;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarPrior;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.LapKind;
import setwright.core.circuit.ReferenceLine;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.core.replay.Predictor;

/**
 * An invented stint whose balance is known: a point mass laps a ring of eight corners, and the steering is what the wanted
 * balance angle asks for, {@code delta = L r / v + B}. Everything that the judgement should find is put in here.
 */
public final class Drive {
    static final int CORNERS = 8;
    private static final double SEGMENT_M = 420.0;
    private static final double STRAIGHT_M = 190.0;
    private static final double CLOTHOID_M = 40.0;
    private static final double ARC_M = 60.0;
    private static final double RATE_HZ = 50.0;
    private static final double USED = 0.9;
    private static final double BESIDE = 1.6;
    private static final double SLIDE_S = 0.25;
    /** Into the arc, while the last of the brake is trailed. */
    private static final double SLIDE_AT_S = 0.4;

    private static final double TRAIL_S = 0.5;
    /** A gentle kink in each straight, where the car corners quietly. */
    private static final double KINK = 1.0 / 1500.0;

    private static final GripLimit GRIP = new GripLimit(1.5, 0.0);

    private final Random random;
    private int laps = 8;
    private double pace = 0.003;
    private double topMps = 70.0;
    private double side = 1.0;
    private double hardest = 9.0;
    private double trail = BESIDE;
    private double opened;
    private double steeringZero;
    private double slideRad;
    private IntPredicate slides = corner -> false;
    private double pushRad;
    private IntPredicate pushes = corner -> false;
    private IntPredicate saws = corner -> false;

    /** The same seed gives the same stint. */
    public Drive(long seed) {
        random = new Random(seed);
    }

    public Drive laps(int count) {
        laps = count;
        return this;
    }

    /** Standard deviation of the cornering speed from pass to pass, as a share; moves the braking point with it. */
    public Drive pace(double share) {
        pace = share;
        return this;
    }

    /** Greatest speed on the straights; the corners are driven as ever. */
    Drive top(double mps) {
        topMps = mps;
        return this;
    }

    /** Braking on the straights, m/s²; 9 unless told otherwise. */
    Drive brakes(double mps2) {
        hardest = mps2;
        return this;
    }

    /** Exponent of the ellipse of friction that the brake follows beside the cornering; 1.6 unless told otherwise. */
    public Drive trails(double exponent) {
        trail = exponent;
        return this;
    }

    /** The foot opens the throttle by so much more than the car goes forward by. */
    Drive opens(double share) {
        opened = share;
        return this;
    }

    Drive mirrored() {
        side = -1.0;
        return this;
    }

    /** A constant error of the road wheel angle. */
    Drive steeringZero(double rad) {
        steeringZero = rad;
        return this;
    }

    /** The rear steps out as the brake comes off in these corners, every lap. */
    public Drive rearSteps(double rad, IntPredicate corners) {
        slideRad = rad;
        slides = corners;
        return this;
    }

    /** The front slips more at the limit of these corners than a healthy car's. */
    public Drive pushes(double rad, IntPredicate corners) {
        pushRad = rad;
        pushes = corners;
        return this;
    }

    /** The wheel is sawn at two hertz in these corners, with the path unmoved. */
    Drive saws(IntPredicate corners) {
        saws = corners;
        return this;
    }

    public static CarSheet sheet() {
        return Sheets.plain(DrivenAxle.REAR, 1100.0, 0.48, 2.5, 12.0, 0.35);
    }

    /**
     * Returns what replays its laps.
     *
     * @param sheet  that the car is taken to have
     */
    public Predictor predictor(CarSheet sheet) {
        Stint stint = stint();
        HandlingTrace trace = HandlingTracer.trace(stint, sheet);
        List<CornerPass> passes = CornerPasses.of(stint, trace, sheet);
        return Predictor.of(stint, trace, passes, sheet, CarBelief.of(CarPrior.of(sheet)));
    }

    public Stint stint() {
        BalancedCar car = new BalancedCar(sheet(), GRIP, BalancedCar.USUAL_PEAK_SLIP_RAD, Math.toRadians(1.5));
        List<double[]> rows = new ArrayList<>();
        List<Lap> cut = new ArrayList<>();
        double length = CORNERS * SEGMENT_M;
        double place = 0.0;
        for (int lap = 0; lap < laps; lap++) {
            int from = rows.size();
            double[] speed = speeds();
            while (place < length) {
                rows.add(row(car, speed, place));
                place += speed[(int) place] / RATE_HZ;
            }
            place -= length;
            cut.add(new Lap(lap + 1, from, rows.size(), (rows.size() - from) / RATE_HZ, LapKind.GOOD, ""));
        }
        // a little of the next lap, so that the last corner's exit is whole
        double[] speed = speeds();
        for (int i = 0; i < RATE_HZ; i++) {
            rows.add(row(car, speed, place));
            place += speed[(int) place] / RATE_HZ;
        }
        return new Stint(recording(rows), circuit(), cut, column(rows, 7), column(rows, 8));
    }

    private double radius(int corner) {
        return corner % 2 == 0 ? 40.0 : 130.0;
    }

    private double curvature(double place) {
        int corner = (int) (place / SEGMENT_M) % CORNERS;
        double in = place % SEGMENT_M - STRAIGHT_M;
        double full = 1.0 / radius(corner);
        double ramp = Math.min(in, 2.0 * CLOTHOID_M + ARC_M - in) / CLOTHOID_M;
        double on = place % SEGMENT_M;
        double kink = on > 20.0 && on < 80.0 ? KINK * Math.sin(Math.PI * (on - 20.0) / 60.0) : 0.0;
        return kink + full * Math.max(0.0, Math.min(1.0, ramp));
    }

    private double[] speeds() {
        int n = (int) (CORNERS * SEGMENT_M);
        double[] cornering = new double[CORNERS];
        for (int c = 0; c < CORNERS; c++) {
            cornering[c] = Math.sqrt(USED * GRIP.at(0.0)) * (1.0 + pace * random.nextGaussian());
        }
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            double k = curvature(i);
            v[i] = k > 1.0e-6 ? Math.min(topMps, cornering[i / (int) SEGMENT_M] / Math.sqrt(k)) : topMps;
        }
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < n; i++) {
                int next = (i + 1) % n;
                v[next] = Math.min(v[next], Math.sqrt(v[i] * v[i] + 2.0 * 4.0 * left(i, v[i], 2.0)));
            }
            for (int i = n - 1; i >= 0; i--) {
                int next = (i + 1) % n;
                v[i] = Math.min(v[i], Math.sqrt(v[next] * v[next] + 2.0 * hardest * left(next, v[next], trail)));
            }
        }
        return v;
    }

    /** Beside the cornering a good driver brakes less than a round circle leaves: a whole car has less. */
    private double left(int i, double v, double exponent) {
        double used = curvature(i) * v * v / GRIP.at(0.0);
        return Math.max(0.1, Math.pow(Math.max(0.0, 1.0 - Math.pow(used, exponent)), 1.0 / exponent));
    }

    private double[] row(BalancedCar car, double[] speed, double place) {
        int i = (int) place;
        int corner = i / (int) SEGMENT_M;
        double v = speed[i];
        double kappa = curvature(place);
        double inward = kappa * v * v;
        double forward = v * (speed[(i + 1) % speed.length] - v);
        double brake = Math.max(0.0, -forward - 0.5) / hardest;
        double into = place % SEGMENT_M - STRAIGHT_M - CLOTHOID_M;
        if (into > 0.0 && into < TRAIL_S * v) {
            brake = Math.max(brake, 0.15 * (1.0 - into / TRAIL_S / v));
        }
        double throttle = brake > 0.0 ? 0.0 : Math.max(0.0, Math.min(1.0, 0.2 + opened + forward / 4.0));
        double tyre = brake > 0.05 ? Math.min(forward, 0.0) : Math.max(forward, 0.0);
        double shape = Math.pow(inward / GRIP.at(0.0) / USED, 3.6);
        double yawRise = v * (curvature(place + 1.0) * speed[(i + 1) % speed.length] - kappa * v);
        double balance = car.balance(v, inward, forward, tyre, yawRise) + Yardstick.BALANCE_RAD * shape;
        if (pushes.test(corner + 1)) {
            balance += pushRad * shape;
        }
        if (slides.test(corner + 1)) {
            double from = place % SEGMENT_M - STRAIGHT_M - CLOTHOID_M - SLIDE_AT_S * v;
            double seconds = from / v;
            balance -= slideRad * Math.exp(-0.5 * seconds * seconds / (SLIDE_S * SLIDE_S));
        }
        if (saws.test(corner + 1)) {
            balance += 0.15 * sheet().wheelbaseM() * kappa * Math.sin(2.0 * Math.PI * 2.0 * place / v);
        }
        double angle = sheet().wheelbaseM() * kappa + balance * Math.min(1.0, inward) + steeringZero * side;
        return new double[] {
            v + 0.05 * random.nextGaussian(),
            side * angle * sheet().steeringRatio() + 0.004 * random.nextGaussian(),
            side * kappa * v + 0.004 * random.nextGaussian(),
            side * inward + 0.15 * random.nextGaussian(),
            forward + 0.15 * random.nextGaussian(),
            brake,
            throttle,
            place,
            0.1 * random.nextGaussian()
        };
    }

    private static Channel column(List<double[]> rows, int column) {
        return Channel.of(rows.stream().mapToDouble(row -> row[column]).toArray());
    }

    private static Recording recording(List<double[]> rows) {
        Quantity[] quantities = {
            Quantity.SPEED,
            Quantity.STEERING_WHEEL_ANGLE,
            Quantity.YAW_RATE,
            Quantity.LATERAL_ACCELERATION,
            Quantity.LONGITUDINAL_ACCELERATION,
            Quantity.BRAKE,
            Quantity.THROTTLE
        };
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        for (int k = 0; k < quantities.length; k++) {
            channels.put(quantities[k], column(rows, k));
        }
        return new Recording("invented", RATE_HZ, channels, List.of());
    }

    private Circuit circuit() {
        int nodes = (int) (CORNERS * SEGMENT_M / 2.0);
        double[] x = new double[nodes];
        double[] y = new double[nodes];
        double[] heading = new double[nodes];
        double[] curvature = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            curvature[i] = side * curvature(2.0 * i);
            if (i > 0) {
                heading[i] = heading[i - 1] + 2.0 * curvature[i - 1];
                x[i] = x[i - 1] + 2.0 * Math.cos(heading[i]);
                y[i] = y[i - 1] + 2.0 * Math.sin(heading[i]);
            }
        }
        List<Corner> corners = new ArrayList<>();
        for (int c = 0; c < CORNERS; c++) {
            double from = c * SEGMENT_M;
            double bend = from + STRAIGHT_M;
            double out = bend + 2.0 * CLOTHOID_M + ARC_M;
            corners.add(new Corner(
                    c + 1,
                    side > 0.0 ? Corner.Direction.LEFT : Corner.Direction.RIGHT,
                    from + 80.0,
                    bend,
                    0.5 * (bend + out),
                    out,
                    from + SEGMENT_M - 5.0));
        }
        return new Circuit("ring", new ReferenceLine(2.0, x, y, heading, curvature), corners, new Circuit.Unanchored());
    }
}
