package setwright.core.chassis;

/*
 * Design note. The slope of a straight or parabolic fit over 2m+1 samples is sum(k x_k) / (dt sum(k^2)); a wave of w rad a sample then
 * shows sum(k sin(k w)) / (w sum(k^2)) of its true slope (Savitzky and Golay, 1964, worked out for the first derivative). The widest
 * window that keeps 0.7 of what is asked for is taken: it has the least noise. With three samples the gain is sin(w)/w, which is 0.7 at
 * 1.39 rad: that gives the rate below which a motion is lost whatever the window.
 */

/** How wide a window the derivative of suspension travel may take at a sampling rate. */
final class DamperSpeed {
    /** Bodies move on their springs at 1 to 3 Hz, stiff ones at 4 (common practice). */
    static final double BODY_HZ = 4.0;
    /** Wheels hop at 10 to 15 Hz (common practice). */
    static final double HOP_HZ = 15.0;

    private static final double KEPT = Math.sqrt(0.5);
    /** Where sin(w)/w is {@link #KEPT}, rad a sample. */
    private static final double LAST_RAD = 1.3916;

    private static final int WIDEST = 50;

    private DamperSpeed() {}

    /** Returns the rate below which a motion of this frequency cannot be seen, Hz. */
    static double leastRateHz(double frequencyHz) {
        return 2.0 * Math.PI * frequencyHz / LAST_RAD;
    }

    /** Returns the frequency up to which a half width of so many samples keeps 0.7 of the slope, Hz. */
    static double bandHz(int halfWidth, double rateHz) {
        double low = 0.0;
        double high = Math.PI / halfWidth;
        for (int i = 0; i < 50; i++) {
            double middle = 0.5 * (low + high);
            if (gain(halfWidth, middle) > KEPT) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low * rateHz / (2.0 * Math.PI);
    }

    /** Returns the widest half width, in samples, that keeps 0.7 of a motion of this frequency; at least 1. */
    static int halfWidth(double frequencyHz, double rateHz) {
        double radians = 2.0 * Math.PI * frequencyHz / rateHz;
        int widest = 1;
        for (int m = 2; m <= WIDEST && gain(m, radians) >= KEPT; m++) {
            widest = m;
        }
        return widest;
    }

    /** Returns the share of its slope that a wave of so many radians a sample shows. */
    static double gain(int halfWidth, double radians) {
        double sines = 0.0;
        double squares = 0.0;
        for (int k = 1; k <= halfWidth; k++) {
            sines += k * Math.sin(k * radians);
            squares += (double) k * k;
        }
        return radians == 0.0 ? 1.0 : sines / (radians * squares);
    }
}
