package setwright.app.world;

import setwright.core.car.CarSheet;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.layout.CircuitPlan;

/** A point mass that laps a circuit at its grip, with the steering of a car that turns as its wheels point. */
final class PointMassDrive {
    private static final double STEP_S = 0.004;
    private static final double GRIP = 12.0;
    private static final double PULL = 4.5;
    private static final double BRAKING = 9.0;
    private static final double TOP_MPS = 62.0;
    private static final double UNDERSTEER = 0.0015;

    private PointMassDrive() {}

    static DriveHistory laps(CircuitPlan plan, CarSheet sheet, int laps) {
        ReferenceLine line = plan.line(1.0);
        double[] speed = speeds(line);
        DriveHistory.Builder out = new DriveHistory.Builder(STEP_S);
        double[] row = new double[Signal.count()];
        double station = 0.0;
        int lap = 1;
        double brakePedal = 0.0;
        while (lap <= laps) {
            int node = (int) (station / line.stepM()) % line.nodeCount();
            int next = (node + 1) % line.nodeCount();
            double share = station / line.stepM() - Math.floor(station / line.stepM());
            double v = speed[node] + share * (speed[next] - speed[node]);
            double along = 0.5 * (speed[next] * speed[next] - speed[node] * speed[node]) / line.stepM();
            double curvature = line.curvatureAt(station);
            double across = v * v * curvature;
            row[Signal.X.index()] = line.x(node) + share * line.stepM() * Math.cos(line.heading(node));
            row[Signal.Y.index()] = line.y(node) + share * line.stepM() * Math.sin(line.heading(node));
            row[Signal.HEADING.index()] = line.heading(node);
            row[Signal.FORWARD_SPEED.index()] = v;
            row[Signal.YAW_RATE.index()] = v * curvature;
            row[Signal.FORWARD_ACCELERATION.index()] = along;
            row[Signal.LATERAL_ACCELERATION.index()] = across;
            row[Signal.STEER.index()] = sheet.wheelbaseM() * curvature + UNDERSTEER * across;
            row[Signal.THROTTLE.index()] = Math.max(0.0, Math.min(1.0, 0.15 + along / PULL));
            double wanted = Math.max(0.0, Math.min(1.0, (-along - 0.8) / BRAKING));
            brakePedal += 0.2 * (wanted - brakePedal);
            row[Signal.BRAKE.index()] = brakePedal;
            row[Signal.GEAR.index()] = 1.0 + Math.floor(v / 13.0);
            row[Signal.ENGINE_SPEED.index()] = 250.0 + 450.0 * (v / 13.0 - Math.floor(v / 13.0));
            for (Signal wheel : new Signal[] {
                Signal.WHEEL_SPEED_FRONT_LEFT,
                Signal.WHEEL_SPEED_FRONT_RIGHT,
                Signal.WHEEL_SPEED_REAR_LEFT,
                Signal.WHEEL_SPEED_REAR_RIGHT
            }) {
                row[wheel.index()] = v;
            }
            row[Signal.SUSPENSION_FRONT_LEFT.index()] = -0.001 * across;
            row[Signal.SUSPENSION_FRONT_RIGHT.index()] = 0.001 * across;
            row[Signal.SUSPENSION_REAR_LEFT.index()] = -0.001 * across;
            row[Signal.SUSPENSION_REAR_RIGHT.index()] = 0.001 * across;
            row[Signal.FUEL.index()] = sheet.fuelStartKg() - 0.0005 * station - 1.0 * lap;
            row[Signal.STATION.index()] = station;
            row[Signal.LAP.index()] = lap;
            out.add(row);
            station += v * STEP_S;
            if (station >= line.lengthM()) {
                station -= line.lengthM();
                lap++;
            }
        }
        return out.build();
    }

    private static double[] speeds(ReferenceLine line) {
        int count = line.nodeCount();
        double[] speed = new double[count];
        for (int i = 0; i < count; i++) {
            speed[i] = Math.min(TOP_MPS, Math.sqrt(GRIP / Math.max(Math.abs(line.curvature(i)), 1.0e-6)));
        }
        for (int i = 0; i < 2 * count; i++) {
            int here = i % count;
            int next = (i + 1) % count;
            speed[next] = Math.min(speed[next], Math.sqrt(speed[here] * speed[here] + 2.0 * PULL * line.stepM()));
        }
        for (int i = 2 * count; i > 0; i--) {
            int here = i % count;
            int before = (i - 1) % count;
            speed[before] =
                    Math.min(speed[before], Math.sqrt(speed[here] * speed[here] + 2.0 * BRAKING * line.stepM()));
        }
        return speed;
    }
}
