package setwright.core.limit;

import java.util.ArrayList;
import java.util.List;
import setwright.core.circuit.ReferenceLine;

/**
 * Drives an envelope round a closed line as fast as it allows: quasi-steady, on a given line (the classical pass forward and backward;
 * see D. Brayshaw and M. Harrison, Proc. IMechE D 219(6), 2005, 725-739, value from memory).
 */
public final class LapSimulator {
    private static final int FEWEST_NODES = 8;

    private LapSimulator() {}

    /** Returns the lap of a circuit's line. */
    public static QuasiSteadyLap lap(GripEnvelope car, ReferenceLine line) {
        double[] curvature = new double[line.nodeCount()];
        for (int i = 0; i < curvature.length; i++) {
            curvature[i] = line.curvature(i);
        }
        return lap(car, curvature, line.stepM());
    }

    /**
     * Returns the lap of any closed line.
     *
     * @param curvature  at equal steps, 1/m, left positive; the first node follows the last
     * @param stepM      between nodes, m
     */
    public static QuasiSteadyLap lap(GripEnvelope car, double[] curvature, double stepM) {
        if (!(stepM > 0.0) || curvature.length < FEWEST_NODES) {
            throw new IllegalArgumentException("a lap needs a positive step and " + FEWEST_NODES + " nodes, got "
                    + stepM + " m and " + curvature.length);
        }
        double[] bend = new double[curvature.length];
        for (int i = 0; i < bend.length; i++) {
            if (!Double.isFinite(curvature[i])) {
                throw new IllegalArgumentException("the curvature of node " + i + " is " + curvature[i]);
            }
            bend[i] = Math.abs(curvature[i]);
        }
        SpeedPass pass = new SpeedPass(car, bend, stepM);
        List<Station> stations = new ArrayList<>(bend.length);
        double[] work = new double[6];
        for (int i = 0; i < bend.length; i++) {
            double square = pass.square(i);
            double speed = Math.sqrt(square);
            double forward = pass.alongMps2(i);
            double lateral = bend[i] * square;
            CarState state = car.at(speed, forward, lateral);
            boolean engine = pass.driven(i) && car.powerMps2(speed, lateral) <= car.tractionMps2(speed, lateral);
            double side = Math.signum(curvature[i]);
            stations.add(new Station(
                    i * stepM,
                    curvature[i],
                    speed,
                    forward,
                    side * lateral,
                    state.balanceRad(),
                    side * state.steerRad(),
                    state.share(),
                    engine ? LimitedBy.ENGINE : state.tyres(),
                    state.gear()));
            work[0] += stepM * Math.max(state.engineN(), 0.0);
            work[1] += stepM * state.dragN();
            work[2] += stepM * state.rollingN();
            work[3] += stepM * state.scrubN();
            work[4] += stepM * state.brakeN();
            work[5] += stepM * Math.max(-state.engineN(), 0.0);
        }
        return new QuasiSteadyLap(
                stepM, stations, new EnergyBalance(work[0], work[1], work[2], work[3], work[4], work[5]));
    }
}
