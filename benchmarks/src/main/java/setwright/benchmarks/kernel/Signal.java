package setwright.benchmarks.kernel;

import java.util.Random;

/** Signals as a logger has them: slow waves with noise on them. */
final class Signal {
    private Signal() {}

    /**
     * Draws one; the same seed gives the same one.
     *
     * @param count  samples of 0.01 s
     */
    static double[] draw(int count, long seed) {
        Random random = new Random(seed);
        double[] signal = new double[count];
        double phase = random.nextDouble();
        for (int i = 0; i < count; i++) {
            double timeS = 0.01 * i;
            signal[i] = 20.0
                    + 8.0 * Math.sin(0.7 * timeS + phase)
                    + 3.0 * Math.sin(2.9 * timeS - phase)
                    + 0.5 * random.nextGaussian();
        }
        return signal;
    }
}
