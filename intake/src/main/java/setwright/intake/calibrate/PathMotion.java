package setwright.intake.calibrate;

import setwright.core.numerics.LocalPolynomial;

/** How a point moves along a path given by positions. */
public final class PathMotion {
    /** Where a position's noise moves more than the car does, a course means nothing, m/s. */
    private static final double SLOWEST_MPS = 3.0;

    private final double[] speedMps;
    private final double[] turnRadPerS;

    private PathMotion(double[] speedMps, double[] turnRadPerS) {
        this.speedMps = speedMps;
        this.turnRadPerS = turnRadPerS;
    }

    /** Returns a copy of the speed along the path, m/s. */
    public double[] speedMps() {
        return speedMps.clone();
    }

    /** Returns a copy of the rate of turn of the direction of travel, rad/s, left positive; NaN where the point hardly moves. */
    public double[] turnRadPerS() {
        return turnRadPerS.clone();
    }

    /**
     * Differentiates positions by local quadratics over five samples.
     *
     * <p><b>Source:</b> {@code (x' y'' - y' x'') / (x'^2 + y'^2)}, rate of turn of a plane curve; any textbook of differential
     * geometry.
     *
     * @param x      m, first axis of a right-handed plane
     * @param y      m, second axis
     * @param stepS  time between samples, s
     */
    public static PathMotion of(double[] x, double[] y, double stepS) {
        LocalPolynomial fit = LocalPolynomial.of(2, 2);
        double[] vx = fit.derivative(x, stepS);
        double[] vy = fit.derivative(y, stepS);
        double[] ax = fit.derivative(vx, stepS);
        double[] ay = fit.derivative(vy, stepS);
        double[] speed = new double[x.length];
        double[] turn = new double[x.length];
        for (int i = 0; i < speed.length; i++) {
            speed[i] = Math.hypot(vx[i], vy[i]);
            double rate = (vx[i] * ay[i] - vy[i] * ax[i]) / (speed[i] * speed[i]);
            turn[i] = speed[i] > SLOWEST_MPS ? rate : Double.NaN;
        }
        return new PathMotion(speed, turn);
    }
}
