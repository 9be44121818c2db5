package setwright.core.identification;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/*
 * Design note. Derivatives cost as many replays of the laps as there are parameters. The optimiser asks for them only where it
 * stays, not where a step was too bold, which is why both are given apart; and it asks for the same point again, which is why the
 * last few are kept.
 */

/** Residuals of the evidence and of the prior, in units of the prior's spread, so that all coordinates are alike; for one search. */
final class FitResiduals implements ValueAndJacobianFunction {
    private static final double STEP = 0.02;
    /** The point where the search stands and the one that it tries. */
    private static final int KEPT = 2;

    private final Evidence evidence;
    private final double[] middle;
    private final double[] spread;
    private final Deque<Point> last = new ArrayDeque<>();

    FitResiduals(Evidence evidence, double[] middle, double[] spread) {
        this.evidence = evidence;
        this.middle = middle.clone();
        this.spread = spread.clone();
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
        double[] x = point.toArray();
        return new Pair<>(computeValue(x), computeJacobian(x));
    }

    @Override
    public RealVector computeValue(double[] x) {
        return new ArrayRealVector(at(x).residuals);
    }

    @Override
    public RealMatrix computeJacobian(double[] x) {
        Point base = at(x);
        Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(base.residuals.length, x.length);
        IntStream.range(0, x.length).parallel().forEach(i -> {
            double[] moved = x.clone();
            moved[i] += STEP;
            double[] there = residuals(base.about, moved);
            for (int row = 0; row < there.length; row++) {
                matrix.setEntry(row, i, (there[row] - base.residuals[row]) / STEP);
            }
        });
        return matrix;
    }

    private Point at(double[] x) {
        for (Point point : last) {
            if (Arrays.equals(point.x, x)) {
                return point;
            }
        }
        if (last.size() == KEPT) {
            last.removeFirst();
        }
        last.addLast(new Point(x.clone()));
        return last.getLast();
    }

    private double[] residuals(Function<double[], double[]> about, double[] x) {
        double[] data = about.apply(parameters(x));
        double[] out = Arrays.copyOf(data, data.length + x.length);
        System.arraycopy(x, 0, out, data.length, x.length);
        return out;
    }

    private double[] parameters(double[] x) {
        double[] parameters = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            parameters[i] = middle[i] + spread[i] * x[i];
        }
        return parameters;
    }

    /** A point that was looked at. */
    private final class Point {
        private final double[] x;
        private final Function<double[], double[]> about;
        private final double[] residuals;

        private Point(double[] x) {
            this.x = x;
            this.about = evidence.about(parameters(x));
            this.residuals = FitResiduals.this.residuals(about, x);
        }
    }
}
