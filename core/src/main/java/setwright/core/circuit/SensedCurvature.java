package setwright.core.circuit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.core.numerics.PeriodicSpline;
import setwright.core.numerics.Robust;

/**
 * Curvature of a reference line from the rate of turn, where positions are too noisy to be differentiated twice: place from
 * position, shape of the corners from the car's own turning.
 */
final class SensedCurvature {
    /** Below this, curvature from position is good enough, m/s2: a tenth of the least corner demand. */
    private static final double GOOD_ENOUGH = 0.1;
    /** The two curvatures must agree this well, or the sensor is not to be trusted. */
    private static final double LEAST_CORRELATION = 0.8;
    /** As for lines from rate of turn alone, Hz. */
    private static final double QUICKEST_HZ = 1.5;

    private SensedCurvature() {}

    /** Returns the line with the better curvature; the same line where position is good or there is no rate of turn. */
    static BuiltLine better(BuiltLine built, Motion motion, List<Lap> laps, Placement placement) {
        Optional<double[]> turnRate = motion.turnRate();
        if (!built.quality().fromPosition() || built.quality().demandNoise() < GOOD_ENOUGH || turnRate.isEmpty()) {
            return built;
        }
        List<Lap> good = laps.stream().filter(Lap::good).toList();
        ReferenceLine line = built.line();
        double[] speed = Survey.typicalSpeed(motion, laps, placement, line);
        double[][] rates = new double[good.size()][];
        for (int k = 0; k < rates.length; k++) {
            Lap lap = good.get(k);
            rates[k] = placement.atNodes(turnRate.get(), lap.from(), lap.to(), line.nodeCount(), line.stepM());
        }
        double[] curvature = new double[line.nodeCount()];
        double[] scatter = new double[line.nodeCount()];
        double[] here = new double[rates.length];
        double time = 0.0;
        double turned = 0.0;
        for (int i = 0; i < curvature.length; i++) {
            for (int k = 0; k < here.length; k++) {
                here[k] = rates[k][i];
            }
            curvature[i] = Robust.median(here);
            scatter[i] = Robust.scaledMad(here) * speed[i];
            if (Double.isNaN(curvature[i])) {
                curvature[i] = line.curvature(i) * speed[i];
            }
            time += line.stepM() / speed[i];
            turned += curvature[i] * line.stepM() / speed[i];
        }
        double whole = line.heading(line.nodeCount() - 1) - line.heading(0);
        double bias = (turned - 2.0 * Math.PI * Math.rint(whole / (2.0 * Math.PI))) / time;
        for (int i = 0; i < curvature.length; i++) {
            curvature[i] = (curvature[i] - bias) / speed[i];
        }
        curvature = smooth(curvature, speed, line.stepM());
        if (!(correlation(curvature, line) > LEAST_CORRELATION)) {
            return built;
        }
        // The smoothing averages over half a period of its cut-off, the median over laps.
        double independent = Math.max(1.0, good.size() * motion.rateHz() / (2.0 * QUICKEST_HZ));
        double noise = Robust.median(scatter) / Math.sqrt(independent);
        return noise < built.quality().demandNoise() ? with(built, curvature, noise) : built;
    }

    private static BuiltLine with(BuiltLine built, double[] curvature, double noise) {
        ReferenceLine line = built.line();
        int nodes = line.nodeCount();
        double[][] copy = new double[3][nodes];
        for (int i = 0; i < nodes; i++) {
            copy[0][i] = line.x(i);
            copy[1][i] = line.y(i);
            copy[2][i] = line.heading(i);
        }
        LineQuality q = built.quality();
        return new BuiltLine(
                new ReferenceLine(line.stepM(), copy[0], copy[1], copy[2], curvature),
                new LineQuality(q.lengthM(), q.laps(), true, q.closingGapM(), noise));
    }

    private static double correlation(double[] curvature, ReferenceLine line) {
        double product = 0.0;
        double left = 0.0;
        double right = 0.0;
        for (int i = 0; i < curvature.length; i++) {
            product += curvature[i] * line.curvature(i);
            left += curvature[i] * curvature[i];
            right += line.curvature(i) * line.curvature(i);
        }
        return product / Math.sqrt(left * right);
    }

    /** Smooths values at the nodes of a line by a spline of the time at which they are passed. */
    static double[] smooth(double[] values, double[] speed, double stepM) {
        int nodes = values.length;
        double[] u = new double[nodes];
        double[] weight = new double[nodes];
        double time = 0.0;
        for (int i = 0; i < nodes; i++) {
            u[i] = time;
            weight[i] = stepM / speed[i];
            time += weight[i];
        }
        double cutoff = 2.0 * Math.PI * QUICKEST_HZ;
        int knots = Math.max(16, (int) Math.ceil(8.0 * time * QUICKEST_HZ));
        PeriodicSpline spline = PeriodicSpline.fit(time, knots, u, values, weight, 1.0 / Math.pow(cutoff, 6.0));
        double[] smooth = new double[nodes];
        Arrays.setAll(smooth, i -> spline.at(u[i], 0));
        return smooth;
    }
}
