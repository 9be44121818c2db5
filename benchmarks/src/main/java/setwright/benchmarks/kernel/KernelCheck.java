package setwright.benchmarks.kernel;

/** Whether two ways give the same result. */
final class KernelCheck {
    private KernelCheck() {}

    /**
     * Returns the greatest difference, of the greatest value.
     *
     * @throws IllegalStateException when it is greater than the kernel allows, or lengths differ
     */
    static double same(Kernel kernel, double[] ours, double[] theirs, String whose) {
        if (ours.length != theirs.length) {
            throw new IllegalStateException(
                    kernel.words() + ": " + ours.length + " values, but " + theirs.length + " by " + whose);
        }
        double size = 0.0;
        double apart = 0.0;
        for (int i = 0; i < ours.length; i++) {
            size = Math.max(size, Math.abs(theirs[i]));
            double difference = Math.abs(ours[i] - theirs[i]);
            apart = difference <= apart ? apart : difference; // keeps what is no number
        }
        double share = apart / size;
        if (!(share <= kernel.tolerance())) {
            throw new IllegalStateException(kernel.words() + ": differs from " + whose + " by " + share
                    + " of the greatest value; no more than " + kernel.tolerance() + " is rounding");
        }
        return share;
    }
}
