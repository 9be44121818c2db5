package setwright.benchmarks.kernel;

import java.util.List;
import java.util.Random;
import setwright.core.numerics.MonotoneCubic;

/** A curve that does not overshoot, through points and read off at many places. Hipparchus has none. */
final class MonotoneCurve implements Kernel {
    private static final int POINTS = 200;
    private static final int PLACES = 100_000;

    private final double[] x = new double[POINTS];
    private final double[] y = Signal.draw(POINTS, 12L);
    private final double[] places = new double[PLACES];

    MonotoneCurve() {
        Random random = new Random(13L);
        for (int i = 1; i < POINTS; i++) {
            x[i] = x[i - 1] + 0.1 + random.nextDouble();
        }
        for (int i = 0; i < PLACES; i++) {
            places[i] = x[POINTS - 1] * random.nextDouble();
        }
    }

    @Override
    public String words() {
        return "Monotone cubic through 200 points, read off at 100,000 places";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(x, y, places);
    }

    @Override
    public double[] ours() {
        MonotoneCubic curve = MonotoneCubic.through(x, y);
        double[] values = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            values[i] = curve.at(places[i]);
        }
        return values;
    }
}
