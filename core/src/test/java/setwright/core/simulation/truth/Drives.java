package setwright.core.simulation.truth;

import java.util.function.DoubleBinaryOperator;
import setwright.core.circuit.Lines;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;

/** Histories made by hand: a car that follows the line, with pedals at fixed places before and in every bend. */
final class Drives {
    static final ReferenceLine LINE = Lines.road();
    static final double STEP_S = 0.004;
    private static final double SPEED = 22.0;
    private static final double WHEELBASE = 2.5;
    /** The brake is released, and the throttle opened, this far ahead of and behind the tightest part. */
    private static final double AHEAD_M = 12.0;

    private Drives() {}

    /**
     * Returns an out lap and some flying ones.
     *
     * @param moreRad  slip of the front beyond that of the rear, rad, by the lap (0 is the out lap) and by progress in the bend: below
     *     0 before the brake is off, 0 to 1 until the throttle opens, beyond 1 after
     */
    static DriveHistory drive(int flying, DoubleBinaryOperator moreRad) {
        DriveHistory.Builder builder = new DriveHistory.Builder(STEP_S);
        double[] sample = new double[Signal.count()];
        double length = LINE.lengthM();
        double[] toBend = distanceToTightest();
        double speed = SPEED;
        for (double s = 0.0; s < (flying + 1) * length + SPEED; s += speed * STEP_S) {
            int lap = (int) Math.floor(s / length);
            double station = s - lap * length;
            double curvature = LINE.curvatureAt(station);
            double side = Math.signum(curvature);
            double to = toBend[Math.min((int) (station / LINE.stepM()), toBend.length - 1)];
            speed = SPEED + 0.05 * Math.min(Math.abs(to), 60.0);
            double more = moreRad.applyAsDouble(lap, (AHEAD_M - to) / (2.0 * AHEAD_M));
            set(sample, Signal.STATION, station);
            set(sample, Signal.LAP, lap + 1.0);
            set(sample, Signal.FORWARD_SPEED, speed);
            set(sample, Signal.STEER, WHEELBASE * curvature);
            set(sample, Signal.LATERAL_ACCELERATION, curvature * speed * speed);
            set(sample, Signal.BRAKE, to > AHEAD_M && to < 60.0 ? 0.5 : 0.0);
            set(sample, Signal.THROTTLE, to > -AHEAD_M && to < 60.0 ? 0.0 : 1.0);
            set(sample, Signal.SLIP_FRONT, side * (0.03 + more));
            set(sample, Signal.SLIP_REAR, side * 0.03);
            builder.add(sample);
        }
        return builder.build();
    }

    private static void set(double[] sample, Signal signal, double value) {
        sample[signal.index()] = value;
    }

    /** Distance to the tightest place of the bend that comes or is just over, m; negative behind it. */
    private static double[] distanceToTightest() {
        int n = LINE.nodeCount();
        double[] to = new double[n];
        java.util.Arrays.fill(to, 1000.0);
        int i = 0;
        while (i < n) {
            if (Math.abs(LINE.curvature(i)) < 1.0e-4) {
                i++;
                continue;
            }
            int first = i;
            double side = Math.signum(LINE.curvature(i));
            while (i < n && side * LINE.curvature(i) > 1.0e-4) {
                i++;
            }
            double middle = 0.5 * (first + i) * LINE.stepM();
            for (int k = first - (int) (60.0 / LINE.stepM()); k < i; k++) {
                to[Math.floorMod(k, n)] = middle - k * LINE.stepM();
            }
        }
        return to;
    }
}
