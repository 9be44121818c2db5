package setwright.core.simulation.driver;

import java.util.List;
import java.util.OptionalInt;
import setwright.core.car.model.MountedTyre;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.vehicle.Inputs;
import setwright.core.simulation.vehicle.TransientCar;

/** What a driver remembers of a lap: how far the limiting axle was used in each corner, going in, in the middle, going out. */
final class UseWatch {
    /** A driver feels what lasts, not single milliseconds. */
    private static final double SMOOTH_S = 0.08;

    /** A corner in which the tyres were asked for more than this above what is wanted is not one to repeat. */
    private static final double CALM = 0.025;

    private static final double FREE_M = 1.5;
    private static final double WIDE_PER_M = 0.03;

    private final int[] cornerAt;
    private final List<Corner> corners;
    private final double length;
    private final double[][] most;
    private final double[] seconds;
    private double sinceS;
    private double smooth;
    private OptionalInt last = OptionalInt.empty();

    UseWatch(ReferenceLine line, List<Corner> corners) {
        this.corners = corners;
        this.length = line.lengthM();
        this.most = new double[3][corners.size()];
        this.seconds = new double[corners.size()];
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
        // a corner's time goes on until the next one's approach begins
        sinceS += stepS;
        last.ifPresent(corner -> seconds[corner] = sinceS);
        if (c < 0) {
            return;
        }
        if (last.isEmpty() || last.getAsInt() != c) {
            sinceS = 0.0;
        }
        last = OptionalInt.of(c);
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

    /** Returns the index of the corner that the car was in last. */
    OptionalInt lastCorner() {
        return last;
    }

    /** Returns the index of the corner at a station, -1 on a straight. */
    private int corner(double stationM) {
        return cornerAt[(int) (stationM / length * cornerAt.length) % cornerAt.length];
    }

    /**
     * Teaches the driver and forgets the lap.
     *
     * @param effort  share of the limiting axle's force that he wants
     * @param whole   whether the lap was finished
     */
    void teach(CornerTrust trust, double effort, boolean whole) {
        for (int c = 0; c < corners.size(); c++) {
            boolean calm = Math.max(most[0][c], Math.max(most[1][c], most[2][c])) < effort + CALM;
            if (whole && calm) {
                trust.keep(c, seconds[c]);
            }
            trust.learn(c, most[0][c], most[1][c], most[2][c], effort);
            most[0][c] = 0.0;
            most[1][c] = 0.0;
            most[2][c] = 0.0;
        }
    }
}
