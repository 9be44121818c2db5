package setwright.core.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.GripLimit;
import setwright.core.car.Sheets;
import setwright.core.numerics.UnscentedSmoother;

/**
 * The filter's innovations on drives of its own single-track car, with the noise that it expects: squared and normalised they are
 * chi-square with two degrees of freedom at each step, and the errors of the state with eight (Y. Bar-Shalom, X. R. Li, T.
 * Kirubarajan, Estimation with Applications to Tracking and Navigation, Wiley 2001, ch. 5.4, value from memory).
 */
final class FilterConsistencyTest {
    private static final double STEP_S = 0.04;
    private static final int STEPS = 500;
    private static final int RUNS = 20;
    private static final double[] WANDER = {0.001, 0.02, 0.01, 0.01, 0.003, 0.003, 0.0002, 0.02};
    private static final double[] START_SD = {0.005, 0.02, 0.05, 0.05, 0.1, 0.05, 0.002, 0.1};
    private static final double[] SCATTER = {0.002 * 0.002, 0.1 * 0.1};

    private static SlipModel slalom(CarSheet sheet) {
        AxleLoads loads = new AxleLoads(sheet, new GripLimit(1.4, 0.0));
        SlipModel model = new SlipModel(sheet, loads, loads.curve(), STEPS, STEP_S, WANDER);
        AxleLoads.At at = new AxleLoads.At();
        for (int k = 0; k < STEPS; k++) {
            model.speed[k] = 30.0;
            model.steer[k] = Math.toRadians(4.0) * Math.sin(0.8 * k * STEP_S);
            loads.fill(true, 30.0, 0.0, 8.0, 0.0, at);
            model.frontPeak[k] = at.peak;
            model.frontPeakSlip[k] = at.peakSlip;
            loads.fill(false, 30.0, 0.0, 8.0, 0.0, at);
            model.rearPeak[k] = at.peak;
            model.rearPeakSlip[k] = at.peakSlip;
        }
        return model;
    }

    @Test
    void innovations_are_as_large_as_the_filter_believes() {
        SlipModel model = slalom(Sheets.adjustable());
        UnscentedSmoother smoother = new UnscentedSmoother(model);
        double sum = 0.0;
        for (int run = 0; run < RUNS; run++) {
            Random random = new Random(100L + run);
            double[] state = new double[SlipModel.STATES];
            double[] variance = new double[SlipModel.STATES];
            for (int i = 0; i < state.length; i++) {
                state[i] = START_SD[i] * random.nextGaussian();
                variance[i] = START_SD[i] * START_SD[i];
            }
            double[][] readings = new double[STEPS][2];
            for (int k = 0; k < STEPS; k++) {
                model.read(k, state, readings[k]);
                for (int a = 0; a < 2; a++) {
                    readings[k][a] += Math.sqrt(SCATTER[a]) * random.nextGaussian();
                }
                model.move(k, state);
                for (int i = 0; i < state.length; i++) {
                    state[i] += WANDER[i] * Math.sqrt(STEP_S) * random.nextGaussian();
                }
            }
            smoother.filter(STEPS, new double[SlipModel.STATES], variance, readings, SCATTER);
            for (int k = 0; k < STEPS; k++) {
                sum += smoother.surprise(k);
            }
        }
        ChiSquaredDistribution expected = new ChiSquaredDistribution(2.0 * STEPS * RUNS);
        assertThat(sum)
                .isBetween(
                        expected.inverseCumulativeProbability(0.0005), expected.inverseCumulativeProbability(0.9995));
    }
}
