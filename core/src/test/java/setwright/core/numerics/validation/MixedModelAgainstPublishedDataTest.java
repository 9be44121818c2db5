package setwright.core.numerics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import setwright.core.numerics.MixedFit;
import setwright.core.numerics.MixedModel;

/**
 * Against R 4.2.2 with lme4 1.1-31 and nlme (estimates, standard errors, REML criterion, degrees of freedom) on the published data that come with
 * them, and against a certified value of NIST. Computed once with these programs; the data stand below.
 */
class MixedModelAgainstPublishedDataTest {
    /** Yield of dyestuff, six batches of five (Davies, Statistical Methods in Research and Production, 1947). */
    private static final double[] DYESTUFF = {
        1545, 1440, 1440, 1520, 1580, 1540, 1555, 1490, 1560, 1495, 1595, 1550, 1605, 1510, 1560, 1445, 1440, 1595,
        1465, 1545, 1595, 1630, 1515, 1635, 1625, 1520, 1455, 1450, 1480, 1445
    };

    /** The same plan, invented so that batches do not differ (Box and Tiao, Bayesian Inference, 1973, section 5.1.2). */
    private static final double[] WITHOUT_BATCHES = {
        7.298, 3.846, 2.434, 9.566, 7.990, 5.220, 6.556, 0.608, 11.788, -0.892, 0.110, 10.386, 13.434, 5.510, 8.166,
        2.212, 4.852, 7.092, 9.288, 4.980, 0.282, 9.014, 4.458, 9.446, 7.198, 1.722, 4.782, 8.106, 0.758, 3.758
    };

    /** Reaction times of 18 people over ten days with little sleep, ms (Belenky et al., J. Sleep Res. 12, 2003). */
    private static final double[] SLEEP = {
        249.56, 258.7047, 250.8006, 321.4398, 356.8519, 414.6901, 382.2038, 290.1486, 430.5853, 466.3535,
        222.7339, 205.2658, 202.9778, 204.707, 207.7161, 215.9618, 213.6303, 217.7272, 224.2957, 237.3142,
        199.0539, 194.3322, 234.32, 232.8416, 229.3074, 220.4579, 235.4208, 255.7511, 261.0125, 247.5153,
        321.5426, 300.4002, 283.8565, 285.133, 285.7973, 297.5855, 280.2396, 318.2613, 305.3495, 354.0487,
        287.6079, 285.0, 301.8206, 320.1153, 316.2773, 293.3187, 290.075, 334.8177, 293.7469, 371.5811,
        234.8606, 242.8118, 272.9613, 309.7688, 317.4629, 309.9976, 454.1619, 346.8311, 330.3003, 253.8644,
        283.8424, 289.555, 276.7693, 299.8097, 297.171, 338.1665, 332.0265, 348.8399, 333.36, 362.0428,
        265.4731, 276.2012, 243.3647, 254.6723, 279.0244, 284.1912, 305.5248, 331.5229, 335.7469, 377.299,
        241.6083, 273.9472, 254.4907, 270.8021, 251.4519, 254.6362, 245.4523, 235.311, 235.7541, 237.2466,
        312.3666, 313.8058, 291.6112, 346.1222, 365.7324, 391.8385, 404.2601, 416.6923, 455.8643, 458.9167,
        236.1032, 230.3167, 238.9256, 254.922, 250.7103, 269.7744, 281.5648, 308.102, 336.2806, 351.6451,
        256.2968, 243.4543, 256.2046, 255.5271, 268.9165, 329.7247, 379.4445, 362.9184, 394.4872, 389.0527,
        250.5265, 300.0576, 269.8939, 280.5891, 271.8274, 304.6336, 287.7466, 266.5955, 321.5418, 347.5655,
        221.6771, 298.1939, 326.8785, 346.8555, 348.7402, 352.8287, 354.4266, 360.4326, 375.6406, 388.5417,
        271.9235, 268.4369, 257.2424, 277.6566, 314.8222, 317.2135, 298.1353, 348.1229, 340.28, 366.5131,
        225.264, 234.5235, 238.9008, 240.473, 267.5373, 344.1937, 281.1481, 347.5855, 365.163, 372.2288,
        269.8804, 272.4428, 277.8989, 281.7895, 279.1705, 284.512, 259.2658, 304.6306, 350.7807, 369.4692,
        269.4117, 273.474, 297.5968, 310.6316, 287.1726, 329.6076, 334.4818, 343.2199, 369.1417, 364.1236
    };

    /** Effort to rise from four stools, nine people (Wretenberg et al., 1993; Pinheiro and Bates, 2000, section 1.2). */
    private static final double[] STOOLS = {
        12, 15, 12, 10, 10, 14, 13, 12, 7, 14, 13, 9, 7, 11, 10, 9, 8, 11, 8, 7, 9, 11, 11, 10, 8, 12, 12, 11, 7, 11, 8,
        7, 9, 13, 10, 8
    };

    /** Resistivity by five instruments (NIST Statistical Reference Datasets, SiRstv). */
    private static final double[] INSTRUMENTS = {
        196.3052, 196.1240, 196.1890, 196.2569, 196.3403, 196.3042, 196.3825, 196.1669, 196.3257, 196.0422, 196.1303,
        196.2005, 196.2889, 196.0343, 196.1811, 196.2795, 196.1748, 196.1494, 196.1485, 195.9885, 196.2119, 196.1051,
        196.1850, 196.0052, 196.2090
    };

    private static final Offset<Double> FOUR_DIGITS = within(0.0005);

    @Test
    void oneWayWithBatches() {
        MixedFit fit = MixedModel.fit(ones(30), DYESTUFF, inRowsOf(5, 30), Optional.empty());
        MixedFit.Contrast mean = fit.contrast(1.0);
        assertThat(mean.value()).isCloseTo(1527.5, FOUR_DIGITS);
        assertThat(mean.error()).isCloseTo(19.38341, FOUR_DIGITS);
        assertThat(fit.betweenDeviation()).isCloseTo(42.00060, FOUR_DIGITS);
        assertThat(fit.withinDeviation()).isCloseTo(49.51010, FOUR_DIGITS);
        assertThat(fit.criterion()).isCloseTo(319.654277, within(1e-6));
        assertThat(mean.freedom())
                .as("six batches less one: exact in a balanced plan")
                .isCloseTo(5.0, FOUR_DIGITS);
    }

    @Test
    void batchesThatDoNotDifferGetNoVariance() {
        MixedFit fit = MixedModel.fit(ones(30), WITHOUT_BATCHES, inRowsOf(5, 30), Optional.empty());
        assertThat(fit.betweenDeviation()).isZero();
        assertThat(fit.withinDeviation()).isCloseTo(3.715684, FOUR_DIGITS);
        assertThat(fit.contrast(1.0).value()).isCloseTo(5.6656, FOUR_DIGITS);
        assertThat(fit.contrast(1.0).error()).isCloseTo(0.678388, FOUR_DIGITS);
        assertThat(fit.contrast(1.0).freedom()).isCloseTo(29.0, FOUR_DIGITS);
    }

    @Test
    void aSlopeBesideTheGroups() {
        double[][] rows = IntStream.range(0, 180)
                .mapToObj(i -> new double[] {1.0, i % 10})
                .toArray(double[][]::new);
        MixedFit fit = MixedModel.fit(rows, SLEEP, inRowsOf(10, 180), Optional.empty());
        assertThat(fit.contrast(1.0, 0.0).value()).isCloseTo(251.4051, FOUR_DIGITS);
        assertThat(fit.contrast(1.0, 0.0).error()).isCloseTo(9.746716, FOUR_DIGITS);
        assertThat(fit.contrast(0.0, 1.0).value()).isCloseTo(10.46729, FOUR_DIGITS);
        assertThat(fit.contrast(0.0, 1.0).error()).isCloseTo(0.804221, FOUR_DIGITS);
        assertThat(fit.contrast(0.0, 1.0).freedom()).as("within people").isCloseTo(161.0, FOUR_DIGITS);
        assertThat(fit.betweenDeviation()).isCloseTo(37.12383, FOUR_DIGITS);
        assertThat(fit.withinDeviation()).isCloseTo(30.99123, FOUR_DIGITS);
        assertThat(fit.criterion()).isCloseTo(1786.465085, within(1e-5));
    }

    @Test
    void kindsWithinPeople() {
        double[][] rows = IntStream.range(0, 36)
                .mapToObj(
                        i -> new double[] {1.0, i % 4 == 1 ? 1.0 : 0.0, i % 4 == 2 ? 1.0 : 0.0, i % 4 == 3 ? 1.0 : 0.0})
                .toArray(double[][]::new);
        MixedFit fit = MixedModel.fit(rows, STOOLS, inRowsOf(4, 36), Optional.empty());
        MixedFit.Contrast second = fit.contrast(0.0, 1.0, 0.0, 0.0);
        assertThat(second.value()).isCloseTo(3.888889, FOUR_DIGITS);
        assertThat(second.error()).isCloseTo(0.518684, FOUR_DIGITS);
        assertThat(second.freedom()).isCloseTo(24.0, FOUR_DIGITS);
        assertThat(second.byChance()).isCloseTo(9.7534e-8, within(1e-11));
        assertThat(fit.contrast(1.0, 0.0, 0.0, 0.0).error()).isCloseTo(0.576012, FOUR_DIGITS);
        assertThat(fit.betweenDeviation()).isCloseTo(1.332465, FOUR_DIGITS);
        assertThat(fit.withinDeviation()).isCloseTo(1.100295, FOUR_DIGITS);
    }

    /** In a balanced plan the ratio of mean squares follows from the two variances. */
    @Test
    void theCertifiedRatioOfMeanSquares() {
        MixedFit fit = MixedModel.fit(ones(25), INSTRUMENTS, inRowsOf(5, 25), Optional.empty());
        double ratio = Math.pow(fit.betweenDeviation() / fit.withinDeviation(), 2);
        assertThat(1.0 + 5.0 * ratio).isCloseTo(1.18046237440255, within(1e-5));
    }

    @Test
    void whatIsKnownOfTheGroupsCountsAsManyGroups() {
        MixedModel.Known known = new MixedModel.Known(42.0, 1.0e6);
        MixedFit fit = MixedModel.fit(ones(30), DYESTUFF, inRowsOf(5, 30), Optional.of(known));
        assertThat(fit.betweenDeviation()).isCloseTo(42.0, within(0.01));
        assertThat(fit.contrast(1.0).freedom())
                .as("only the scatter within is left to be estimated")
                .isGreaterThan(100.0);
    }

    private static double[][] ones(int count) {
        return IntStream.range(0, count).mapToObj(i -> new double[] {1.0}).toArray(double[][]::new);
    }

    private static int[] inRowsOf(int size, int count) {
        int[] groups = new int[count];
        Arrays.setAll(groups, i -> i / size);
        return groups;
    }
}
