package setwright.core.circuit;

/**
 * Closes a lap that was integrated from curvature.
 *
 * <p>First the sensor is corrected: its bias and gain are chosen by least squares so that the heading closes by a whole turn
 * (one either way, or none for a figure of eight) and the ends meet, weighed against how large such errors usually are.
 * What gap is left is the quality number. Then the curvature is changed by the least amount (in the mean square) that
 * closes heading and place exactly. A common factor on speed changes the size of the loop but not its closing, and so
 * cannot be found here.
 */
final class LoopClosure {
    /** How well a lap of good sensors closes: heading, rad, and place as a share of the length. */
    private static final double HEADING_SIGMA = 0.02;

    private static final double PLACE_SIGMA = 0.002;

    private final double[] bias;
    private final double[] measured;
    private final double step;
    private final double biasSigma;
    private final double gainSigma;
    private final double[] curvature;
    private final double turns;
    private double gap;

    /**
     * Prepares.
     *
     * @param measured  curvature at equal steps, 1/m
     * @param speed     at the same places, m/s
     * @param step      m
     * @param yaw       whether the rate of turn was measured; otherwise it came from lateral acceleration
     */
    LoopClosure(double[] measured, double[] speed, double step, boolean yaw) {
        this.measured = measured;
        this.step = step;
        this.bias = new double[measured.length];
        for (int i = 0; i < bias.length; i++) {
            // A gyro's bias is a rate; an accelerometer's, tilt included, an acceleration.
            bias[i] = yaw ? 1.0 / speed[i] : 1.0 / (speed[i] * speed[i]);
        }
        // Usual sensors: a degree per second and 1 %; a tilt of 2 degrees and roll adding up to 5 % (values from
        // memory).
        this.biasSigma = yaw ? 0.0175 : 0.35;
        this.gainSigma = yaw ? 0.01 : 0.05;
        double[] best = new double[0];
        double bestCost = Double.POSITIVE_INFINITY;
        double bestTurns = 0.0;
        for (int whole = -1; whole <= 1; whole++) {
            double[] parameters = corrected(whole);
            double cost = squares(residuals(parameters, whole));
            if (cost < bestCost) {
                bestCost = cost;
                best = parameters;
                bestTurns = whole;
            }
        }
        this.turns = bestTurns;
        this.curvature = apply(best);
        // What is left of the heading error turns the whole lap: share it out before the gap is read.
        double[] end = End.of(curvature, step).gap();
        double twist = (2.0 * Math.PI * turns - end[2]) / (curvature.length * step);
        for (int i = 0; i < curvature.length; i++) {
            curvature[i] += twist;
        }
        end = End.of(curvature, step).gap();
        this.gap = Math.hypot(end[0], end[1]);
        close();
    }

    /** Gap between the ends of the lap before it was closed, m. */
    double gapM() {
        return gap;
    }

    ReferenceLine closed() {
        End end = End.of(curvature, step);
        return new ReferenceLine(step, end.x, end.y, end.heading, curvature);
    }

    private double[] apply(double[] parameters) {
        double[] changed = new double[measured.length];
        for (int i = 0; i < changed.length; i++) {
            changed[i] = (1.0 + parameters[1]) * measured[i] - parameters[0] * bias[i];
        }
        return changed;
    }

    private double[] residuals(double[] parameters, int whole) {
        double[] end = End.of(apply(parameters), step).gap();
        double length = measured.length * step;
        return new double[] {
            (end[2] - 2.0 * Math.PI * whole) / HEADING_SIGMA,
            end[0] / (PLACE_SIGMA * length),
            end[1] / (PLACE_SIGMA * length),
            parameters[0] / biasSigma,
            parameters[1] / gainSigma
        };
    }

    /** Gauss-Newton on bias and gain. */
    private double[] corrected(int whole) {
        double[] p = new double[2];
        double[] delta = {1e-3 * biasSigma, 1e-3 * gainSigma};
        for (int round = 0; round < 8; round++) {
            double[] r = residuals(p, whole);
            double[][] slope = new double[2][];
            for (int k = 0; k < 2; k++) {
                double[] moved = p.clone();
                moved[k] += delta[k];
                slope[k] = residuals(moved, whole);
                for (int j = 0; j < r.length; j++) {
                    slope[k][j] = (slope[k][j] - r[j]) / delta[k];
                }
            }
            double aa = dot(slope[0], slope[0]);
            double ab = dot(slope[0], slope[1]);
            double bb = dot(slope[1], slope[1]);
            double ar = dot(slope[0], r);
            double br = dot(slope[1], r);
            double determinant = aa * bb - ab * ab;
            p[0] -= (bb * ar - ab * br) / determinant;
            p[1] -= (aa * br - ab * ar) / determinant;
        }
        return p;
    }

    /** Newton on the three closing conditions along the curvature change of least mean square. */
    private void close() {
        int n = curvature.length;
        for (int round = 0; round < 6; round++) {
            End end = End.of(curvature, step);
            double[] miss = end.gap();
            miss[2] -= 2.0 * Math.PI * turns;
            double[][] g = new double[3][n];
            for (int i = 0; i < n; i++) {
                g[0][i] = -(end.endY - end.y[i]) * step;
                g[1][i] = (end.endX - end.x[i]) * step;
                g[2][i] = step;
            }
            double[] factor = solve(g, miss);
            for (int i = 0; i < n; i++) {
                curvature[i] -= factor[0] * g[0][i] + factor[1] * g[1][i] + factor[2] * g[2][i];
            }
        }
    }

    private static double[] solve(double[][] g, double[] right) {
        double[][] a = new double[3][4];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                a[i][j] = dot(g[i], g[j]);
            }
            a[i][3] = right[i];
        }
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                if (k != i) {
                    double share = a[k][i] / a[i][i];
                    for (int j = i; j < 4; j++) {
                        a[k][j] -= share * a[i][j];
                    }
                }
            }
        }
        return new double[] {a[0][3] / a[0][0], a[1][3] / a[1][1], a[2][3] / a[2][2]};
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0.0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double squares(double[] values) {
        return dot(values, values);
    }

    /** The path of a curvature: nodes and where it ends. */
    private static final class End {
        private final double[] x;
        private final double[] y;
        private final double[] heading;
        private double endX;
        private double endY;
        private double endHeading;

        private End(int nodes) {
            x = new double[nodes];
            y = new double[nodes];
            heading = new double[nodes];
        }

        static End of(double[] curvature, double step) {
            int n = curvature.length;
            End path = new End(n);
            for (int i = 0; i < n; i++) {
                path.x[i] = path.endX;
                path.y[i] = path.endY;
                path.heading[i] = path.endHeading;
                double turn = 0.5 * (curvature[i] + curvature[(i + 1) % n]) * step;
                path.endX += step * Math.cos(path.endHeading + 0.5 * turn);
                path.endY += step * Math.sin(path.endHeading + 0.5 * turn);
                path.endHeading += turn;
            }
            return path;
        }

        double[] gap() {
            return new double[] {endX, endY, endHeading};
        }
    }
}
