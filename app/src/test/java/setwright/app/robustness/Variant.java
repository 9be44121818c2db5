package setwright.app.robustness;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.core.simulation.logger.ChannelSet;
import setwright.core.simulation.logger.LoggerPlan;

/** What is worse than it should be. */
enum Variant {
    AS_IT_SHOULD_BE("as it should be", 100.0, ChannelSet.USUAL, 1.0, 1.0),
    HALF_THE_CHANNELS("half the channels", 100.0, ChannelSet.MINIMAL, 1.0, 1.0),
    SLOW("50 Hz", 50.0, ChannelSet.USUAL, 1.0, 1.0),
    QUICK("250 Hz", 250.0, ChannelSet.USUAL, 1.0, 1.0),
    NOISY("twice the noise", 100.0, ChannelSet.USUAL, 2.0, 1.0),
    RATIO_TOO_HIGH("steering ratio 10 % too high", 100.0, ChannelSet.USUAL, 1.0, 1.1),
    RATIO_TOO_LOW("steering ratio 10 % too low", 100.0, ChannelSet.USUAL, 1.0, 1.0 / 1.1);

    private static final long SEED = 7L;
    private static final Pattern RATIO = Pattern.compile("(?m)^(steering_ratio:\\s*)([0-9.]+)");

    private final String words;
    private final double rateHz;
    private final ChannelSet channels;
    private final double noise;
    private final double ratio;

    Variant(String words, double rateHz, ChannelSet channels, double noise, double ratio) {
        this.words = words;
        this.rateHz = rateHz;
        this.channels = channels;
        this.noise = noise;
        this.ratio = ratio;
    }

    String words() {
        return words;
    }

    /** Without most channels there is no position either: speed, hands, yaw rate, pedals and a pulse at the line are left. */
    LoggerPlan logger() {
        LoggerPlan good = LoggerPlan.good(SEED, rateHz);
        LoggerPlan.Satellites sky = good.satellites();
        return new LoggerPlan(
                SEED,
                rateHz,
                channels,
                channels == ChannelSet.MINIMAL ? LoggerPlan.Place.NONE : good.place(),
                new LoggerPlan.Satellites(sky.rateHz(), noise * sky.noiseM(), noise * sky.driftM(), sky.turnedRad()),
                noise,
                good.errors(),
                good.dropOuts(),
                Optional.empty(),
                good.layout());
    }

    /** The sheet with its steering ratio written down wrongly. */
    String sheet(String text) {
        Matcher line = RATIO.matcher(text);
        if (!line.find()) {
            throw new IllegalArgumentException("the sheet has no steering ratio");
        }
        double wrong = ratio * Double.parseDouble(line.group(2));
        return line.replaceFirst(line.group(1) + String.format(Locale.ROOT, "%.4f", wrong));
    }
}
