package setwright.core.limit;

import java.util.Arrays;

/** Closed lines by their curvature. */
public final class Loops {
    /** Station of the apex, length, radius (left positive) of each corner of an invented circuit of 5 km, m. */
    private static final double[][] CORNERS = {
        {300, 120, 25}, {700, 60, -18}, {1100, 150, 60}, {1500, 200, -120}, {2000, 90, 15}, {2300, 90, -30},
        {2700, 180, 90}, {3200, 80, 12}, {3500, 150, -45}, {3900, 250, 200}, {4300, 100, 22}, {4600, 120, -35}
    };

    public static final double LENGTH_M = 5000.0;

    private Loops() {}

    /** Returns the curvature of the invented circuit at so many nodes, 1/m. */
    public static double[] circuit(int nodes) {
        double[] curvature = new double[nodes];
        for (double[] corner : CORNERS) {
            for (int i = 0; i < nodes; i++) {
                double away = Math.abs(i * LENGTH_M / nodes - corner[0]) / (0.5 * corner[1]);
                if (away < 1.0) {
                    curvature[i] += Math.pow(Math.cos(0.5 * Math.PI * away), 2) / corner[2];
                }
            }
        }
        return curvature;
    }

    /** Returns a circle. */
    public static double[] circle(double radiusM, int nodes) {
        double[] curvature = new double[nodes];
        Arrays.fill(curvature, 1.0 / radiusM);
        return curvature;
    }

    /** Returns two straights joined by two half circles, at about this step. */
    public static double[] stadium(double straightM, double radiusM, double step) {
        int straight = (int) Math.round(straightM / step);
        int bend = (int) Math.round(Math.PI * radiusM / step);
        double[] curvature = new double[2 * (straight + bend)];
        Arrays.fill(curvature, straight, straight + bend, 1.0 / radiusM);
        Arrays.fill(curvature, 2 * straight + bend, curvature.length, 1.0 / radiusM);
        return curvature;
    }

    /** Returns a bend at the start that nobody passes faster than a crawl, and then something else. */
    public static double[] afterCrawl(double crawlCurvature, double thenCurvature, int nodes) {
        double[] curvature = new double[nodes];
        Arrays.fill(curvature, thenCurvature);
        curvature[0] = crawlCurvature;
        return curvature;
    }
}
