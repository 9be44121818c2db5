package setwright.core.recording;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One recording on a uniform time base: named channels of equal length in SI units and ISO 8855 signs. Immutable.
 *
 * <p>Sample {@code i} was taken {@code i / sampleRateHz} seconds after the start. Every channel has the same length;
 * missing data are NaN.
 */
public final class Recording {
    private final String name;
    private final double sampleRateHz;
    private final int sampleCount;
    private final Map<Quantity, Channel> channels;
    private final List<Calibration> calibrations;

    /**
     * Makes a recording.
     *
     * @param name          what people call it, usually the file name without folders
     * @param sampleRateHz  samples per second, &gt; 0
     * @param channels      at least one channel, all of the same length
     * @param calibrations  what was corrected on the way in
     * @throws IllegalArgumentException when the rate is not positive or lengths differ
     */
    public Recording(
            String name, double sampleRateHz, Map<Quantity, Channel> channels, List<Calibration> calibrations) {
        if (!(sampleRateHz > 0.0 && sampleRateHz < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("sample rate must be finite and > 0 Hz, got " + sampleRateHz);
        }
        if (channels.isEmpty()) {
            throw new IllegalArgumentException("recording '" + name + "' has no channel");
        }
        this.name = name;
        this.sampleRateHz = sampleRateHz;
        this.channels = new EnumMap<>(channels);
        this.calibrations = List.copyOf(calibrations);
        this.sampleCount = this.channels.values().iterator().next().size();
        this.channels.forEach((quantity, channel) -> {
            if (channel.size() != sampleCount) {
                throw new IllegalArgumentException("channel " + quantity.words() + " has " + channel.size()
                        + " samples where the recording has " + sampleCount);
            }
        });
    }

    /** Returns what people call the recording. */
    public String name() {
        return name;
    }

    /** Returns samples per second. */
    public double sampleRateHz() {
        return sampleRateHz;
    }

    /** Returns the time between samples, s. */
    public double stepS() {
        return 1.0 / sampleRateHz;
    }

    /** Returns the number of samples of every channel. */
    public int sampleCount() {
        return sampleCount;
    }

    /** Tells whether the quantity was recorded (or derived on the way in). */
    public boolean has(Quantity quantity) {
        return channels.containsKey(quantity);
    }

    /** Returns the quantities present. */
    public Set<Quantity> quantities() {
        return Set.copyOf(channels.keySet());
    }

    /**
     * Returns the channel of a quantity.
     *
     * @throws IllegalArgumentException when it was not recorded; ask {@link #has} first
     */
    public Channel channel(Quantity quantity) {
        Channel channel = channels.get(quantity);
        if (channel == null) {
            throw new IllegalArgumentException("recording '" + name + "' has no " + quantity.words());
        }
        return channel;
    }

    /** Returns what was corrected on the way in, in the order applied. */
    public List<Calibration> calibrations() {
        return calibrations;
    }

    /** Returns this recording with one channel added or replaced. */
    public Recording with(Quantity quantity, Channel channel) {
        Map<Quantity, Channel> changed = new EnumMap<>(channels);
        changed.put(quantity, channel);
        return new Recording(name, sampleRateHz, changed, calibrations);
    }

    /** Returns this recording with one more calibration on its list. */
    public Recording with(Calibration calibration) {
        List<Calibration> more = new ArrayList<>(calibrations);
        more.add(calibration);
        return new Recording(name, sampleRateHz, channels, more);
    }
}
