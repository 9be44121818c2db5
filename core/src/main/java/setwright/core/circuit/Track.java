package setwright.core.circuit;

import java.util.Optional;
import java.util.stream.IntStream;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/**
 * Recorded positions in a right-handed plane, NaN where unknown.
 *
 * <p>Positions that are held until the next fix are kept once and joined in a straight line. When the course turns the
 * other way than yaw rate or lateral acceleration say, the plane was left-handed (x north, y east) and y is turned over.
 */
final class Track {
    /** Longest stretch between fixes that is joined, s: slower receivers than 2 Hz tell nothing about a corner. */
    private static final double LONGEST_HOLD_S = 0.5;
    /** Positions that stay within this hold no circuit; the receiver had no fix, m. */
    private static final double LEAST_EXTENT_M = 20.0;
    /** So many, evenly spread, tell the noise to half a percent. */
    private static final int MOST_DIFFERENCES = 50_000;

    private final double stepS;
    private final double[] x;
    private final double[] y;
    private final boolean turnedOver;
    private final double noiseM;
    private final double fixesPerS;

    private Track(double stepS, double[] x, double[] y, boolean turnedOver) {
        this.stepS = stepS;
        this.x = x;
        this.y = y;
        this.turnedOver = turnedOver;
        int tenth = Math.max(1, (int) Math.round(0.1 / stepS));
        double[] noise = IntStream.of(1, tenth)
                .parallel()
                .mapToDouble(lag -> thirdDifference(x, y, lag))
                .toArray();
        double quick = noise[0];
        this.noiseM = Math.max(quick, noise[1]);
        // Fixes slower than the samples are joined by lines, whose quick noise is small: their count is what averages.
        double rate = 1.0 / stepS;
        double share = noiseM > 0.0 ? quick / noiseM : 1.0;
        this.fixesPerS = Math.min(rate, Math.max(10.0, rate * share * share));
    }

    static Optional<Track> of(Recording recording) {
        if (!recording.has(Quantity.POSITION_X) || !recording.has(Quantity.POSITION_Y)) {
            return Optional.empty();
        }
        double[] x = recording.channel(Quantity.POSITION_X).toArray();
        double[] y = recording.channel(Quantity.POSITION_Y).toArray();
        int known = 0;
        for (int i = 0; i < x.length; i++) {
            if (Double.isNaN(x[i]) || Double.isNaN(y[i])) {
                x[i] = Double.NaN;
                y[i] = Double.NaN;
            } else {
                known++;
            }
        }
        if (known < 0.5 * x.length || !(Math.max(extent(x), extent(y)) > LEAST_EXTENT_M)) {
            return Optional.empty();
        }
        release(x, y, recording.stepS());
        boolean turnOver = isLeftHanded(recording, x, y);
        if (turnOver) {
            for (int i = 0; i < y.length; i++) {
                y[i] = -y[i];
            }
        }
        return Optional.of(new Track(recording.stepS(), x, y, turnOver));
    }

    private static double extent(double[] values) {
        return Robust.quantile(values, 0.95) - Robust.quantile(values, 0.05);
    }

    private static void release(double[] x, double[] y, double stepS) {
        int repeats = 0;
        for (int i = 1; i < x.length; i++) {
            if (x[i] == x[i - 1] && y[i] == y[i - 1]) {
                repeats++;
            }
        }
        if (repeats < 0.3 * x.length) {
            return;
        }
        int longest = (int) Math.round(LONGEST_HOLD_S / stepS);
        int fix = 0;
        double heldX = x[0];
        double heldY = y[0];
        for (int i = 1; i < x.length; i++) {
            if (Double.isNaN(x[i]) || (x[i] == heldX && y[i] == heldY)) {
                continue;
            }
            if (i - fix <= longest) {
                for (int k = fix + 1; k < i; k++) {
                    double share = (double) (k - fix) / (i - fix);
                    x[k] = heldX + share * (x[i] - heldX);
                    y[k] = heldY + share * (y[i] - heldY);
                }
            }
            fix = i;
            heldX = x[i];
            heldY = y[i];
        }
    }

    private static boolean isLeftHanded(Recording recording, double[] x, double[] y) {
        Quantity turn = recording.has(Quantity.YAW_RATE) ? Quantity.YAW_RATE : Quantity.LATERAL_ACCELERATION;
        if (!recording.has(turn)) {
            return false;
        }
        double[] sensor = Gaps.bridged(recording.channel(turn).toArray());
        double mean = Robust.median(sensor);
        int reach = Math.max(1, (int) Math.round(0.4 / recording.stepS()));
        double same = 0.0;
        double all = 0.0;
        for (int i = 0; i + 2 * reach < x.length; i += reach) {
            double ax = x[i + reach] - x[i];
            double ay = y[i + reach] - y[i];
            double bx = x[i + 2 * reach] - x[i + reach];
            double by = y[i + 2 * reach] - y[i + reach];
            if (Math.hypot(ax, ay) > 2.0 && Math.hypot(bx, by) > 2.0) {
                double product = Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * (sensor[i + reach] - mean);
                same += product;
                all += Math.abs(product);
            }
        }
        return same < -0.5 * all;
    }

    /** Standard deviation of the part of the positions that does not follow a smooth path, m. */
    private static double thirdDifference(double[] x, double[] y, int lag) {
        int samples = Math.max(0, x.length - 3 * lag);
        int stride = Math.max(1, samples / MOST_DIFFERENCES);
        int count = (samples + stride - 1) / stride;
        double[] difference = new double[2 * count];
        for (int k = 0; k < count; k++) {
            int i = k * stride;
            difference[2 * k] = x[i + 3 * lag] - 3.0 * x[i + 2 * lag] + 3.0 * x[i + lag] - x[i];
            difference[2 * k + 1] = y[i + 3 * lag] - 3.0 * y[i + 2 * lag] + 3.0 * y[i + lag] - y[i];
        }
        // White noise of unit variance has third differences of variance 1 + 9 + 9 + 1.
        return Robust.scaledMad(difference) / Math.sqrt(20.0);
    }

    double x(int sample) {
        return x[sample];
    }

    double y(int sample) {
        return y[sample];
    }

    boolean known(int sample) {
        return !Double.isNaN(x[sample]);
    }

    int size() {
        return x.length;
    }

    double stepS() {
        return stepS;
    }

    /** Tells whether y was turned over to make the plane right-handed. */
    boolean turnedOver() {
        return turnedOver;
    }

    /** Noise of one fix, m. */
    double noiseM() {
        return noiseM;
    }

    /** Independent fixes per second. */
    double fixesPerS() {
        return fixesPerS;
    }

    /** Returns this track moved into another plane: turned by an angle, then shifted. */
    Track moved(RigidMove move) {
        double[] movedX = new double[x.length];
        double[] movedY = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            movedX[i] = move.x(x[i], y[i]);
            movedY[i] = move.y(x[i], y[i]);
        }
        return new Track(stepS, movedX, movedY, turnedOver);
    }

    /** Speed over ground, m/s, by differences over 0.4 s; NaN where positions are unknown. */
    double[] speed() {
        int reach = Math.max(1, (int) Math.round(0.2 / stepS));
        double[] speed = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            int a = Math.max(0, i - reach);
            int b = Math.min(x.length - 1, i + reach);
            speed[i] = Math.hypot(x[b] - x[a], y[b] - y[a]) / ((b - a) * stepS);
        }
        return speed;
    }

    /**
     * The place and course at a moment, from straight-line fits over 0.3 s each way; empty when positions are missing
     * there.
     */
    Optional<Fix> fixAt(double sample) {
        int reach = Math.max(2, (int) Math.round(0.3 / stepS));
        int from = Math.max(0, (int) Math.ceil(sample) - reach);
        int to = Math.min(x.length, (int) Math.floor(sample) + reach + 1);
        double[] sums = new double[8];
        for (int i = from; i < to; i++) {
            if (known(i)) {
                double t = i - sample;
                sums[0]++;
                sums[1] += t;
                sums[2] += t * t;
                sums[3] += x[i];
                sums[4] += y[i];
                sums[5] += t * x[i];
                sums[6] += t * y[i];
            }
        }
        double determinant = sums[0] * sums[2] - sums[1] * sums[1];
        if (sums[0] < 3 || !(determinant > 0.0)) {
            return Optional.empty();
        }
        double slopeX = (sums[0] * sums[5] - sums[1] * sums[3]) / determinant;
        double slopeY = (sums[0] * sums[6] - sums[1] * sums[4]) / determinant;
        return Optional.of(new Fix(
                (sums[3] - slopeX * sums[1]) / sums[0], (sums[4] - slopeY * sums[1]) / sums[0], slopeX, slopeY));
    }

    /**
     * A place and the movement through it.
     *
     * @param x   first coordinate, m
     * @param y   second coordinate, m
     * @param dx  movement per sample, m
     * @param dy  movement per sample, m
     */
    record Fix(double x, double y, double dx, double dy) {
        double course() {
            return Math.atan2(dy, dx);
        }
    }
}
