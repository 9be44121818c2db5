package setwright.core.limit;

import setwright.core.car.model.Equilibrium.End;
import setwright.core.numerics.MonotoneCubic;

/*
 * Design note. A lap asks some ten thousand times. Monotone cubics are drawn through the solved nodes once; what a lap asks for is read
 * from fine tables of them, straight between. Over the share of the greatest lateral acceleration, accelerations are kept over
 * the angle whose sine it is, for the same reason as in the grid.
 */

/** What a lap asks of a {@link LimitGrid}: smooth between its nodes, in both directions. */
final class LimitSurface {
    private static final int FINE_SPEEDS = 88;
    private static final int FINE_ANGLES = 64;
    private static final int SHARES = 12;
    private static final int SCAN = 8;
    private static final int BISECTIONS = 30;

    private final LimitGrid grid;
    private final double slowest;
    private final double perSpeed;
    private final double[] cornering;
    private final double[] hardestBraking;
    private final double[] hardestDriving;
    private final double[][] braking;
    private final double[][] traction;
    private final double[][] lateral;
    private final double[][][] balance = new double[LimitGrid.SPEEDS][LimitGrid.COUNT][SHARES + 1];
    private final double[][][] scrub = new double[LimitGrid.SPEEDS][LimitGrid.COUNT][SHARES + 1];

    LimitSurface(LimitGrid grid) {
        this.grid = grid;
        this.slowest = grid.speeds[0];
        this.perSpeed = FINE_SPEEDS / (grid.speeds[LimitGrid.SPEEDS - 1] - slowest);
        double[] angles = new double[LimitGrid.COUNT];
        for (int i = 0; i < angles.length; i++) {
            angles[i] = LimitGrid.angle(i);
        }
        double[] best = new double[LimitGrid.SPEEDS];
        double[][] brakes = new double[LimitGrid.SPEEDS][];
        double[][] drives = new double[LimitGrid.SPEEDS][];
        double[][] sides = new double[LimitGrid.SPEEDS][];
        for (int speed = 0; speed < LimitGrid.SPEEDS; speed++) {
            double[] solved = new double[angles.length];
            for (int i = 0; i < angles.length; i++) {
                LimitNode node = grid.nodes[speed][i];
                solved[i] = node.limit.lateralMps2();
                for (int k = 0; k <= SHARES; k++) {
                    balance[speed][i][k] = node.balanceRad(share(k));
                    scrub[speed][i][k] = node.scrubN(share(k));
                }
            }
            MonotoneCubic limit = MonotoneCubic.through(angles, solved);
            best[speed] = solved[LimitGrid.BRAKING];
            brakes[speed] = outermost(limit, best[speed], -0.5 * Math.PI, grid.braking[speed]);
            drives[speed] = outermost(limit, best[speed], 0.5 * Math.PI, grid.driving[speed]);
            sides[speed] = new double[2 * FINE_ANGLES + 1];
            for (int i = 0; i <= 2 * FINE_ANGLES; i++) {
                sides[speed][i] = limit.at(0.5 * Math.PI * (i - FINE_ANGLES) / FINE_ANGLES);
            }
        }
        cornering = fine(best);
        hardestBraking = fine(grid.braking);
        hardestDriving = fine(grid.driving);
        braking = fine(brakes);
        traction = fine(drives);
        lateral = fine(sides);
        for (int i = 0; i <= FINE_SPEEDS; i++) {
            for (int k = 1; k <= FINE_ANGLES; k++) {
                // smoothing over speed may turn what is equal into what falls a little
                braking[i][k] = Math.max(braking[i][k], braking[i][k - 1]);
                traction[i][k] = Math.min(traction[i][k], traction[i][k - 1]);
            }
        }
    }

    double corneringMps2(double speed) {
        return read(cornering, speedPlace(speed));
    }

    double brakingMps2(double speed, double lateralMps2) {
        return read(braking, speedPlace(speed), sharePlace(speed, lateralMps2));
    }

    double tractionMps2(double speed, double lateralMps2) {
        return read(traction, speedPlace(speed), sharePlace(speed, lateralMps2));
    }

    double lateralMps2(double speed, double forward) {
        double place = FINE_ANGLES * (1.0 + angle(speed, forward) / (0.5 * Math.PI));
        return read(lateral, speedPlace(speed), place);
    }

    double balanceRad(double speed, double forward, double lateralMps2) {
        return read(balance, speed, forward, lateralMps2);
    }

    double scrubN(double speed, double forward, double lateralMps2) {
        return read(scrub, speed, forward, lateralMps2);
    }

    /** The axle that gives out at the nearest solved limit. */
    End end(double speed, double forward) {
        int i = (int) Math.rint(speedPlace(speed) / FINE_SPEEDS * (LimitGrid.SPEEDS - 1));
        return grid.nodes[i][(int) Math.rint(nodePlace(angle(speed, forward)))].limit.end();
    }

    private double speedPlace(double speed) {
        return Math.max(0.0, Math.min((speed - slowest) * perSpeed, FINE_SPEEDS));
    }

    private double sharePlace(double speed, double lateralMps2) {
        return Math.asin(Math.min(1.0, lateralMps2 / corneringMps2(speed))) / (0.5 * Math.PI) * FINE_ANGLES;
    }

    private double angle(double speed, double forward) {
        double most = read(forward < 0.0 ? hardestBraking : hardestDriving, speedPlace(speed));
        return Math.asin(Math.max(-1.0, Math.min(forward / most, 1.0)));
    }

    private static double nodePlace(double angle) {
        return LimitGrid.BRAKING + angle / (0.5 * Math.PI) * (angle < 0.0 ? LimitGrid.BRAKING : LimitGrid.DRIVING);
    }

    /** Share of the limit at a place of the tables below it: closer where forces bend. */
    private static double share(int k) {
        return Math.sin(0.5 * Math.PI * k / SHARES);
    }

    /** Accelerations along over the angle of the lateral share: the hardest at which so much is still to be had. */
    private static double[] outermost(MonotoneCubic limit, double best, double end, double most) {
        double[] found = new double[FINE_ANGLES + 1];
        int steps = SCAN * (end < 0.0 ? LimitGrid.BRAKING : LimitGrid.DRIVING);
        int at = 0;
        for (int k = 0; k <= FINE_ANGLES; k++) {
            double wanted = best * Math.sin(0.5 * Math.PI * k / FINE_ANGLES);
            while (at < steps && limit.at(end * (steps - at) / steps) < wanted) {
                at++;
            }
            double inner = end * (steps - at) / steps;
            double outer = end * Math.min(steps - at + 1, steps) / steps;
            for (int i = 0; i < BISECTIONS && at > 0; i++) {
                double middle = 0.5 * (inner + outer);
                if (limit.at(middle) >= wanted) {
                    inner = middle;
                } else {
                    outer = middle;
                }
            }
            found[k] = Math.sin(inner) * most;
        }
        return found;
    }

    private double[] fine(double[] solved) {
        MonotoneCubic curve = MonotoneCubic.through(grid.speeds, solved);
        double[] values = new double[FINE_SPEEDS + 1];
        for (int i = 0; i <= FINE_SPEEDS; i++) {
            values[i] = curve.at(slowest + i / perSpeed);
        }
        return values;
    }

    private double[][] fine(double[][] solved) {
        double[][] values = new double[FINE_SPEEDS + 1][solved[0].length];
        double[] column = new double[LimitGrid.SPEEDS];
        for (int k = 0; k < solved[0].length; k++) {
            for (int speed = 0; speed < column.length; speed++) {
                column[speed] = solved[speed][k];
            }
            double[] smooth = fine(column);
            for (int i = 0; i <= FINE_SPEEDS; i++) {
                values[i][k] = smooth[i];
            }
        }
        return values;
    }

    private static double read(double[] table, double place) {
        int low = Math.min((int) place, table.length - 2);
        double share = place - low;
        return table[low] + share * (table[low + 1] - table[low]);
    }

    private static double read(double[][] table, double row, double column) {
        int low = Math.min((int) row, table.length - 2);
        double share = row - low;
        double first = read(table[low], column);
        return first + share * (read(table[low + 1], column) - first);
    }

    private double read(double[][][] table, double speed, double forward, double lateralMps2) {
        double most = lateralMps2(speed, forward);
        double column = SHARES * Math.asin(Math.min(1.0, lateralMps2 / most)) / (0.5 * Math.PI);
        double row = nodePlace(angle(speed, forward));
        double place = speedPlace(speed) / FINE_SPEEDS * (LimitGrid.SPEEDS - 1);
        int low = Math.min((int) place, table.length - 2);
        double share = place - low;
        double first = read(table[low], row, column);
        return first + share * (read(table[low + 1], row, column) - first);
    }
}
