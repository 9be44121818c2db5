package setwright.benchmarks.kernel;

import setwright.core.numerics.UnscentedSmoother;

/** A pendulum with friction that is not known: angle, rate and friction, of which the sine of the angle is read. */
final class Pendulum implements UnscentedSmoother.Model {
    static final double NOISE = 0.02;

    private static final double STEP_S = 0.05;
    private static final double SMALL = 1.0e-6;

    @Override
    public int states() {
        return 3;
    }

    @Override
    public int readings() {
        return 1;
    }

    @Override
    public void move(int step, double[] state) {
        double rate = state[1];
        state[1] += STEP_S * (-9.0 * Math.sin(state[0]) - state[2] * rate);
        state[0] += STEP_S * state[1];
    }

    @Override
    public void read(int step, double[] state, double[] reading) {
        reading[0] = Math.sin(state[0]);
    }

    @Override
    public void noise(int step, double[] variance) {
        variance[0] = SMALL;
        variance[1] = NOISE * NOISE;
        variance[2] = SMALL;
    }
}
