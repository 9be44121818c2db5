package setwright.intake;

import setwright.core.numerics.Robust;
import setwright.core.numerics.UniformResampler;
import setwright.intake.problem.InputProblem;

/**
 * The uniform base that a recording is brought onto: its own rate, or a whole fraction of it when that is above 100 Hz.
 *
 * @param nativeHz   rate of the file, Hz
 * @param rateHz     rate of the recording, Hz
 * @param resampler  onto that base
 */
record TimeBase(double nativeHz, double rateHz, UniformResampler resampler) {
    /** Hands and pedals move at up to about 5 Hz; slower recordings cannot show them. */
    private static final double SLOWEST_HZ = 9.5;

    private static final double FASTEST_KEPT_HZ = 100.0;
    /** Nothing is invented across more than this, s. */
    private static final double LONGEST_GAP_S = 0.1;
    /** A clock is good to a thousandth; a rate this near to a whole number is that number. */
    private static final double WHOLE = 1.0e-3;

    static TimeBase of(String file, String column, double[] timesS) {
        double step = step(timesS);
        double rate = 1.0 / step;
        double whole = Math.rint(rate);
        rate = Math.abs(rate / whole - 1.0) < WHOLE ? whole : rate;
        if (!(rate >= SLOWEST_HZ)) {
            throw InputProblem.in(file)
                    .column(column)
                    .expected("at least 10 rows a second")
                    .found(String.format(java.util.Locale.ROOT, "%.3g", rate))
                    .advice("Export at the rate of the logger: hands and pedals cannot be judged from slower data.")
                    .problem();
        }
        double kept = rate / Math.ceil(rate / FASTEST_KEPT_HZ - 1.0e-9);
        double gap = Math.max(LONGEST_GAP_S, 1.5 / rate);
        return new TimeBase(rate, kept, UniformResampler.onto(timesS, kept, gap));
    }

    /** Mean step without the gaps: a median alone would keep the rounding of printed times. */
    private static double step(double[] times) {
        double[] steps = new double[times.length - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = times[i + 1] - times[i];
        }
        double median = Robust.median(steps);
        double sum = 0.0;
        int count = 0;
        for (double step : steps) {
            if (step < 1.5 * median && step > 0.5 * median) {
                sum += step;
                count++;
            }
        }
        return count > 0 ? sum / count : median;
    }
}
