package setwright.core.slip;

/**
 * What was estimated, at the filter's steps; arrays of equal length, NaN where nothing was.
 *
 * @param stride  samples of the recording per step
 */
@SuppressWarnings("ArrayRecordComponent") // package-private, never changed after it is built
record SlipSteps(
        int stride,
        double stepS,
        double[] sideslip,
        double[] sideslipVariance,
        double[] yawRate,
        double[] frontSlip,
        double[] rearSlip,
        double[] frontUse,
        double[] rearUse,
        double[] frontGrip,
        double[] rearGrip,
        double[] frontPeakSlip,
        double[] rearPeakSlip,
        double[] frontPeakSlipSd,
        double[] rearPeakSlipSd,
        double[] surprise) {

    static SlipSteps empty(int count, int stride, double stepS) {
        double[][] all = new double[14][count];
        for (double[] one : all) {
            java.util.Arrays.fill(one, Double.NaN);
        }
        return new SlipSteps(
                stride, stepS, all[0], all[1], all[2], all[3], all[4], all[5], all[6], all[7], all[8], all[9], all[10],
                all[11], all[12], all[13]);
    }

    int count() {
        return sideslip.length;
    }

    /** The sample of the recording in the middle of a step. */
    int sample(int step) {
        return step * stride + stride / 2;
    }
}
