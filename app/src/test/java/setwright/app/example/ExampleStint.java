package setwright.app.example;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import setwright.core.car.BalancedCar;
import setwright.core.car.CarSheet;
import setwright.core.car.GripLimit;
import setwright.core.circuit.Lap;
import setwright.core.circuit.LapKind;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.SteeringScale;
import setwright.core.recording.Calibration;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** The invented stint sample by sample, at 25 Hz. */
final class ExampleStint {
    private static final double RATE_HZ = 25.0;
    static final double WHEELBASE_M = 2.55;

    private final ExampleDriving driving;
    private final List<CornerPass> passes;
    private final RandomGenerator random;
    private final Map<Quantity, List<Double>> rows = new EnumMap<>(Quantity.class);
    private final List<Double> station = new ArrayList<>();
    private final List<Double> offset = new ArrayList<>();
    private final List<Double> balance = new ArrayList<>();
    private final List<Double> reference = new ArrayList<>();
    private final List<Lap> laps = new ArrayList<>();
    private List<CornerPass> driven = List.of();

    ExampleStint(ExampleDriving driving, List<CornerPass> passes, RandomGenerator random) {
        this.driving = driving;
        this.passes = passes;
        this.random = random;
    }

    void drive(int lap, LapKind kind, String why) {
        double length = driving.circuit.line().lengthM();
        int from = station.size();
        double time = 0.0;
        driven = passes.stream().filter(pass -> pass.lap() == lap).toList();
        for (double s = 0.0; s < length; ) {
            double base = s - driving.shiftAt(lap, s);
            double slower = kind == LapKind.OUT || kind == LapKind.SLOW ? 0.93 : 1.0;
            double v = driving.speedAt(base) * slower;
            sample(s, base, v);
            s += v / RATE_HZ;
            time += 1.0 / RATE_HZ;
        }
        laps.add(new Lap(lap, from, station.size(), time + 0.11 * random.nextGaussian(), kind, why));
    }

    private void sample(double s, double base, double v) {
        double kappa = driving.circuit.line().curvatureAt(s);
        double lateral = v * v * kappa;
        double own = Math.toRadians(0.09) * Math.abs(lateral);
        double excess = 0.0;
        for (CornerPass pass : driven) {
            for (PhaseBalance phase : pass.phases().values()) {
                if (s >= phase.fromM() && s <= phase.toM() && phase.phase() != Phase.BRAKING) {
                    double share = (s - phase.fromM()) / (phase.toM() - phase.fromM());
                    excess = 1.6 * phase.excessRad() * Math.sin(Math.PI * share);
                }
            }
        }
        double b = own + excess + Math.toRadians(0.05) * random.nextGaussian();
        double steer = WHEELBASE_M * kappa + Math.signum(kappa) * Math.min(1.0, Math.abs(kappa) * 300.0) * b;
        station.add(s);
        offset.add(0.4 * Math.sin(s / 90.0) + 0.1 * random.nextGaussian());
        balance.add(Math.abs(lateral) > 2.0 ? b : Double.NaN);
        reference.add(Math.abs(lateral) > 2.0 ? own : Double.NaN);
        put(Quantity.SPEED, v);
        put(Quantity.ROAD_WHEEL_ANGLE, steer);
        put(Quantity.YAW_RATE, v * kappa);
        put(Quantity.LATERAL_ACCELERATION, lateral);
        put(Quantity.LONGITUDINAL_ACCELERATION, driving.forwardAt(base));
        put(Quantity.BRAKE, driving.brakeAt(base));
        put(Quantity.THROTTLE, driving.throttleAt(base));
    }

    private void put(Quantity quantity, double value) {
        rows.computeIfAbsent(quantity, q -> new ArrayList<>()).add(value);
    }

    Stint stint(String name) {
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        rows.forEach((quantity, values) -> channels.put(quantity, channel(values)));
        Recording recording = new Recording(
                name,
                RATE_HZ,
                channels,
                List.of(
                        new Calibration("steering zero", 1.21, "deg", "mean of 41 s on straights above 100 km/h"),
                        new Calibration("yaw rate bias", -0.004, "rad/s", "closes the heading to one turn a lap"),
                        new Calibration(
                                "brake lag", 0.04, "s", "best agreement with the slowing of the car, r = 0.93")));
        return new Stint(recording, driving.circuit, laps, channel(station), channel(offset));
    }

    HandlingTrace trace(CarSheet car) {
        return new HandlingTrace(
                channel(rows.get(Quantity.SPEED)),
                channel(rows.get(Quantity.ROAD_WHEEL_ANGLE)),
                channel(rows.get(Quantity.YAW_RATE)),
                channel(List.copyOf(java.util.Collections.nCopies(balance.size(), 0.0))),
                channel(rows.get(Quantity.LATERAL_ACCELERATION)),
                channel(rows.get(Quantity.LONGITUDINAL_ACCELERATION)),
                channel(rows.get(Quantity.BRAKE)),
                channel(rows.get(Quantity.THROTTLE)),
                channel(balance),
                channel(reference),
                channel(offset),
                new BalancedCar(car, new GripLimit(1.4, 0.001), BalancedCar.USUAL_PEAK_SLIP_RAD, 0.0),
                Math.toRadians(0.05),
                new SteeringScale(1.02, 0.01, false),
                true);
    }

    private static Channel channel(List<Double> values) {
        return Channel.of(values.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
