package setwright.intake.calibrate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import setwright.core.numerics.LocalPolynomial;
import setwright.core.numerics.ZeroPhaseLowPass;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;

/**
 * Channels being calibrated: SI units, ISO 8855 signs, one time base. Changed in place by one thread, while no other looks at it; what was done is
 * noted.
 *
 * <p>Comparisons are made on a slow base (about twenty samples a second behind a 1 Hz zero-phase low-pass): the car's motion
 * passes, sensor noise does not. Of a long recording it holds {@link DrivenTime} only.
 */
public final class Bench {
    /** Below this, divisions by speed and courses of positions make noise, m/s. */
    static final double SLOWEST_MPS = 6.0;
    /** Residuals of smoothed signals hang together for about so long, s: one independent value in that time. */
    static final double INDEPENDENT_S = 2.0;

    private static final double SLOW_HZ = 20.0;
    private static final double CUTOFF_HZ = 1.0;

    private final double rateHz;
    private final Map<Quantity, double[]> channels = new EnumMap<>(Quantity.class);
    /** What has been asked for on the slow base, as long as its channel stays as it is. */
    private final Map<Quantity, double[]> slow = new ConcurrentHashMap<>();

    private final List<Calibration> calibrations = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final int stride;
    private final ZeroPhaseLowPass lowPass;
    private final DrivenTime driven;

    /**
     * Lays channels on the bench.
     *
     * @param rateHz    samples per second, above 2 Hz
     * @param channels  equally long; owned by the bench from now on
     */
    public Bench(double rateHz, Map<Quantity, double[]> channels) {
        this.rateHz = rateHz;
        this.channels.putAll(channels);
        this.stride = Math.max(1, (int) Math.round(rateHz / SLOW_HZ));
        this.lowPass = ZeroPhaseLowPass.butterworth(2, CUTOFF_HZ, rateHz);
        int samples =
                channels.values().stream().mapToInt(all -> all.length).findAny().orElse(0);
        this.driven = DrivenTime.of(channels.getOrDefault(Quantity.SPEED, new double[samples]), SLOWEST_MPS, rateHz);
    }

    /** Returns samples per second. */
    public double rateHz() {
        return rateHz;
    }

    /** Returns the channels as they are now. */
    public Map<Quantity, double[]> channels() {
        return Collections.unmodifiableMap(channels);
    }

    /** Returns what was corrected, in order. */
    public List<Calibration> calibrations() {
        return List.copyOf(calibrations);
    }

    /** Returns what was dropped or could not be told. */
    public List<String> remarks() {
        return List.copyOf(remarks);
    }

    boolean has(Quantity quantity) {
        return channels.containsKey(quantity);
    }

    double[] get(Quantity quantity) {
        double[] samples = channels.get(quantity);
        if (samples == null) {
            throw new IllegalStateException("no channel " + quantity);
        }
        return samples;
    }

    void put(Quantity quantity, double[] samples) {
        channels.put(quantity, samples);
        slow.remove(quantity);
    }

    void drop(Quantity quantity) {
        channels.remove(quantity);
        slow.remove(quantity);
    }

    void note(Calibration calibration) {
        calibrations.add(calibration);
    }

    void remark(String sentence) {
        remarks.add(sentence);
    }

    /** Subtracts a constant. */
    void subtract(Quantity quantity, double amount) {
        double[] samples = get(quantity).clone();
        for (int i = 0; i < samples.length; i++) {
            samples[i] -= amount;
        }
        put(quantity, samples);
    }

    /** Moves a channel to an earlier time by whole samples; the end is left open. */
    void advance(Quantity quantity, double seconds) {
        int shift = (int) Math.round(seconds * rateHz);
        double[] old = get(quantity);
        double[] moved = new double[old.length];
        for (int i = 0; i < moved.length; i++) {
            int from = i + shift;
            moved[i] = from >= 0 && from < old.length ? old[from] : Double.NaN;
        }
        put(quantity, moved);
    }

    double slowStepS() {
        return stride / rateHz;
    }

    /** A channel on the slow base; the caller's own. */
    double[] slow(Quantity quantity) {
        return slow.computeIfAbsent(quantity, this::smoothed).clone();
    }

    private double[] smoothed(Quantity quantity) {
        double[] smooth = lowPass.apply(driven.of(get(quantity)));
        double[] out = new double[(smooth.length + stride - 1) / stride];
        for (int i = 0; i < out.length; i++) {
            out[i] = smooth[i * stride];
        }
        return out;
    }

    /** Rate of change of the speed on the slow base, m/s2. */
    double[] slowSpeedRise() {
        return rise(slow(Quantity.SPEED));
    }

    double[] rise(double[] slow) {
        return LocalPolynomial.of(2, 2).derivative(slow, slowStepS());
    }

    /** Motion along the positions on the slow base, when there are positions. */
    Optional<PathMotion> path() {
        if (!has(Quantity.POSITION_X) || !has(Quantity.POSITION_Y)) {
            return Optional.empty();
        }
        return Optional.of(PathMotion.of(slow(Quantity.POSITION_X), slow(Quantity.POSITION_Y), slowStepS()));
    }

    /** Slow samples per independent one. */
    double samplesPerIndependent() {
        return Math.max(1.0, INDEPENDENT_S / slowStepS());
    }

    /** The best rate of turn there is, rad/s, on the slow base: gyro, else path, else lateral acceleration over speed. */
    Optional<double[]> turnRate() {
        if (has(Quantity.YAW_RATE)) {
            return Optional.of(slow(Quantity.YAW_RATE));
        }
        Optional<double[]> course = path().map(PathMotion::turnRadPerS);
        if (course.isPresent()) {
            return course;
        }
        if (!has(Quantity.LATERAL_ACCELERATION)) {
            return Optional.empty();
        }
        double[] turn = slow(Quantity.LATERAL_ACCELERATION);
        double[] v = slow(Quantity.SPEED);
        for (int i = 0; i < turn.length; i++) {
            turn[i] = v[i] > SLOWEST_MPS ? turn[i] / v[i] : Double.NaN;
        }
        return Optional.of(turn);
    }
}
