package setwright.core.numerics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import setwright.core.numerics.MixedFit;
import setwright.core.numerics.MixedModel;

/**
 * Linear regression against NIST's Statistical Reference Datasets, set Norris (calibration of ozone monitors), certified to fifteen digits: the library
 * with which trials are planned, and the mixed model, which must come to the same where groups have nothing in common.
 */
final class RegressionAgainstCertifiedValueTest {
    private static final double SLOPE = 1.00211681802045;
    private static final double SLOPE_ERROR = 0.429796848199937e-3;
    private static final double INTERCEPT = -0.262323073774029;
    private static final double RESIDUAL = 0.884796396144373;

    private static final double[] Y = {
        0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9,
                10.8,
        557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4,
                449.2, 0.2
    };
    private static final double[] X = {
        0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
                11.6,
        556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
                448.9, 0.5
    };

    @Test
    void theLibrarysRegression() {
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < X.length; i++) {
            line.addData(X[i], Y[i]);
        }
        assertThat(line.getSlope()).isCloseTo(SLOPE, within(1e-12));
        assertThat(line.getSlopeStdErr()).isCloseTo(SLOPE_ERROR, within(1e-12));
        assertThat(line.getIntercept()).isCloseTo(INTERCEPT, within(1e-10));
        assertThat(Math.sqrt(line.getMeanSquareError())).isCloseTo(RESIDUAL, within(1e-9));
    }

    /** Groups that lie symmetrically about the line: the scatter between them is estimated as none, and plain regression is left. */
    @Test
    void theMixedModelWhereGroupsHaveNothingInCommon() {
        double[][] rows = new double[X.length][];
        int[] groups = new int[X.length];
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < X.length; i++) {
            rows[i] = new double[] {1.0, X[i]};
            line.addData(X[i], Y[i]);
        }
        // The largest residuals of either sign meet in one group, then the next: group means come out nearly alike.
        Integer[] order = IntStream.range(0, X.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(i -> Y[i] - line.predict(X[i])));
        for (int k = 0; k < order.length; k++) {
            groups[order[k]] = Math.min(k, order.length - 1 - k);
        }
        MixedFit fit = MixedModel.fit(rows, Y, groups, Optional.empty());
        MixedFit.Contrast slope = fit.contrast(0.0, 1.0);
        assertThat(fit.betweenDeviation()).isZero();
        assertThat(slope.value()).isCloseTo(SLOPE, within(1e-9));
        assertThat(slope.error()).isCloseTo(SLOPE_ERROR, within(1e-4 * SLOPE_ERROR));
        assertThat(fit.withinDeviation()).isCloseTo(RESIDUAL, within(1e-4 * RESIDUAL));
        assertThat(slope.freedom()).isCloseTo(X.length - 2.0, within(0.01));
    }
}
