package setwright.core.slip;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import setwright.core.car.CarSheet;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Parameter;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Lines;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.driver.RoadBumps;
import setwright.core.simulation.driver.StintPlan;
import setwright.core.simulation.driver.StintSimulator;
import setwright.core.simulation.logger.TypicalNoise;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.Tank;
import setwright.core.simulation.vehicle.TyreCondition;

/** A stint of the transient simulation, recorded at 62.5 Hz with a sensor's usual noise, with what was true beside it. */
public final class SimulatedStint {
    private static final int EVERY = 4;
    private static final Map<Quantity, Signal> SENSORS = new EnumMap<>(Quantity.class);

    static {
        SENSORS.put(Quantity.SPEED, Signal.FORWARD_SPEED);
        SENSORS.put(Quantity.STEERING_WHEEL_ANGLE, Signal.STEER);
        SENSORS.put(Quantity.THROTTLE, Signal.THROTTLE);
        SENSORS.put(Quantity.BRAKE, Signal.BRAKE);
        SENSORS.put(Quantity.LONGITUDINAL_ACCELERATION, Signal.FORWARD_ACCELERATION);
        SENSORS.put(Quantity.LATERAL_ACCELERATION, Signal.LATERAL_ACCELERATION);
        SENSORS.put(Quantity.YAW_RATE, Signal.YAW_RATE);
        SENSORS.put(Quantity.LAP_NUMBER, Signal.LAP);
        SENSORS.put(Quantity.POSITION_X, Signal.X);
        SENSORS.put(Quantity.POSITION_Y, Signal.Y);
        SENSORS.put(Quantity.WHEEL_SPEED_FRONT_LEFT, Signal.WHEEL_SPEED_FRONT_LEFT);
        SENSORS.put(Quantity.WHEEL_SPEED_FRONT_RIGHT, Signal.WHEEL_SPEED_FRONT_RIGHT);
        SENSORS.put(Quantity.WHEEL_SPEED_REAR_LEFT, Signal.WHEEL_SPEED_REAR_LEFT);
        SENSORS.put(Quantity.WHEEL_SPEED_REAR_RIGHT, Signal.WHEEL_SPEED_REAR_RIGHT);
    }

    private final CarSheet sheet = Sheets.adjustable();
    private final DriveHistory history;
    private final long seed;

    private SimulatedStint(double effort, long seed) {
        this.seed = seed;
        double[] values = CarPrior.of(sheet).middle();
        values[Parameter.GRIP_SPLIT.index()] = -0.07;
        // tyres that differ from what the sheet makes one expect
        values[Parameter.PEAK_SLIP.index()] = 0.15;
        values[Parameter.GRIP.index()] = 0.1;
        this.history = StintSimulator.drive(new StintPlan(
                        Lines.road(),
                        RoadBumps.NONE,
                        new CarAssembler(sheet).build(sheet, values),
                        RunningGear.usual(),
                        TyreCondition.usual(),
                        Tank.CONSTANT,
                        DriverStyle.good().withEffort(effort),
                        4,
                        8,
                        seed))
                .history();
    }

    /** Drives one. */
    public static SimulatedStint of(double effort, long seed) {
        return new SimulatedStint(effort, seed);
    }

    /** Returns the sheet that its car belongs to. */
    public CarSheet sheet() {
        return sheet;
    }

    /** Returns what a logger with these channels missing would have kept, cut into laps. */
    public Stint without(Set<Quantity> missing) {
        return StintBuilder.build(recording(missing));
    }

    /** Returns the recording itself. */
    public Recording recording(Set<Quantity> missing) {
        Random random = new Random(seed);
        int count = history.count() / EVERY;
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        SENSORS.forEach((quantity, signal) -> {
            double[] values = new double[count];
            double noise = TypicalNoise.of(quantity);
            double factor = quantity == Quantity.STEERING_WHEEL_ANGLE ? sheet.steeringRatio() : 1.0;
            for (int i = 0; i < count; i++) {
                values[i] = factor * history.at(signal, i * EVERY) + noise * random.nextGaussian();
            }
            channels.put(quantity, Channel.of(values));
        });
        missing.forEach(channels::remove);
        return new Recording("simulated", 1.0 / (EVERY * history.stepS()), channels, List.of());
    }

    /** Returns a true signal at a sample of the recording. */
    public double at(Signal signal, int sample) {
        return history.at(signal, sample * EVERY);
    }

    /** Returns the true sideslip at a sample of the recording, rad. */
    public double sideslip(int sample) {
        return Math.atan2(at(Signal.LATERAL_SPEED, sample), at(Signal.FORWARD_SPEED, sample));
    }

    /** Errors of a stint's estimate; root mean squares over cornering above 3 m/s² in good laps, angles in deg. */
    public record Errors(double gentleDeg, double limitDeg, double frontUse, double rearUse, double surprise) {}

    /** Estimates with some channels missing, and compares with the truth. */
    public Errors errors(Set<Quantity> missing) {
        Stint stint = without(missing);
        HandlingTrace trace = HandlingTracer.trace(stint, sheet);
        SlipSteps steps = SlipEstimator.steps(stint, trace, sheet);
        AxleTrace axles = AxleTraces.of(stint, trace, steps);
        double[] sums = new double[4];
        int[] counts = new int[2];
        double surprise = 0.0;
        int surprises = 0;
        for (Lap lap : stint.goodLaps()) {
            for (int i = lap.from(); i < lap.to(); i++) {
                if (Math.abs(at(Signal.LATERAL_ACCELERATION, i)) < 3.0) {
                    continue;
                }
                double front = at(Signal.USE_FRONT, i);
                double rear = at(Signal.USE_REAR, i);
                int limit = Math.max(front, rear) > GripCurves.LIMIT_USE ? 1 : 0;
                sums[limit] += square(Math.toDegrees(axles.sideslip().get(i) - sideslip(i)));
                sums[2] += square(axles.frontUse().get(i) - front);
                sums[3] += square(axles.rearUse().get(i) - rear);
                counts[limit]++;
            }
            for (int k = lap.from() / steps.stride(); k < lap.to() / steps.stride(); k++) {
                surprise += steps.surprise()[k];
                surprises++;
            }
        }
        int all = counts[0] + counts[1];
        return new Errors(
                Math.sqrt(sums[0] / counts[0]),
                Math.sqrt(sums[1] / Math.max(1, counts[1])),
                Math.sqrt(sums[2] / all),
                Math.sqrt(sums[3] / all),
                surprise / surprises);
    }

    private static double square(double value) {
        return value * value;
    }
}
