package setwright.core.simulation.driver;

import java.util.List;
import setwright.core.car.model.MountedTyre;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.vehicle.Inputs;
import setwright.core.simulation.vehicle.TransientCar;

/** What a driver remembers of a lap: how far the limiting axle was used in each corner, going in, in the middle, going out. */
final class UseWatch {
    /** A driver feels what lasts, not single milliseconds. */
    private static final double SMOOTH_S = 0.08;

    private static final double FREE_M = 1.5;
    private static final double WIDE_PER_M = 0.03;

    private final int[] cornerAt;
    private final List<Corner> corners;
    private final double length;
    private final double[][] most;
    private double smooth;

    UseWatch(ReferenceLine line, List<Corner> corners) {
        this.corners = corners;
        this.length = line.lengthM();
        this.most = new double[3][corners.size()];
        this.cornerAt = new int[line.nodeCount()];
        java.util.Arrays.fill(cornerAt, -1);
        for (int c = 0; c < corners.size(); c++) {
            int first = (int) Math.floor(corners.get(c).startM() / line.stepM());
            int last = (int) Math.ceil(corners.get(c).endM() / line.stepM());
            for (int k = first; k <= last; k++) {
                cornerAt[Math.floorMod(k, cornerAt.length)] = c;
            }
        }
    }

    void step(double stepS, TransientCar car, Inputs inputs, double stationM, double missM) {
        double use = Math.max(effort(car.use(true)), effort(car.use(false)));
        smooth += (use - smooth) * Math.min(1.0, stepS / SMOOTH_S);
        int c = corner(stationM);
        if (c < 0) {
            return;
        }
        Corner corner = corners.get(c);
        double place = stationM;
        if (place > corner.startM() + length) {
            place -= length;
        } else if (place < corner.startM()) {
            place += length;
        }
        double wide = Math.max(0.0, Math.abs(missM) - FREE_M) * WIDE_PER_M;
        boolean before = place < corner.apexM();
        int part = inputs.brake() > 0.02 && before ? 0 : inputs.throttle() > 0.3 && !before ? 2 : 1;
        double value = wide > 0.0 && part > 0 ? Math.max(smooth, 1.0 + wide) : smooth;
        most[part][c] = Math.max(most[part][c], value);
    }

    /** Share of the greatest force at a slip over that of the peak; beyond the peak it goes on growing, as fear does. */
    private static double effort(double use) {
        return use < 1.0 ? MountedTyre.SHAPE.share(use) : 1.0 + 0.2 * (use - 1.0);
    }

    /** Returns the index of the corner at a station, -1 on a straight. */
    int corner(double stationM) {
        return cornerAt[(int) (stationM / length * cornerAt.length) % cornerAt.length];
    }

    /** Teaches the driver and forgets the lap. */
    void teach(CornerTrust trust, double target) {
        for (int c = 0; c < corners.size(); c++) {
            trust.learn(c, most[0][c], most[1][c], most[2][c], target);
            most[0][c] = 0.0;
            most[1][c] = 0.0;
            most[2][c] = 0.0;
        }
    }
}
