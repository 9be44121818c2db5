package setwright.core.chassis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import setwright.core.circuit.Lap;
import setwright.core.circuit.LapKind;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Invented runs whose every channel is a formula of the time. */
final class Runs {
    private final double rateHz;
    private final int lapSamples;
    private final int laps;
    private final Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
    private DoubleUnaryOperator speed = t -> 40.0;
    private DoubleUnaryOperator forward = t -> 0.0;
    private DoubleUnaryOperator lateral = t -> 0.0;
    private DoubleUnaryOperator throttle = t -> 1.0;

    Runs(double rateHz, double lapS, int laps) {
        this.rateHz = rateHz;
        this.lapSamples = (int) Math.round(lapS * rateHz);
        this.laps = laps;
    }

    Runs with(Quantity quantity, DoubleUnaryOperator value) {
        channels.put(quantity, channel(value));
        return this;
    }

    Runs speed(DoubleUnaryOperator value) {
        speed = value;
        return this;
    }

    Runs forward(DoubleUnaryOperator value) {
        forward = value;
        return this;
    }

    Runs lateral(DoubleUnaryOperator value) {
        lateral = value;
        return this;
    }

    Runs throttle(DoubleUnaryOperator value) {
        throttle = value;
        return this;
    }

    private Channel channel(DoubleUnaryOperator value) {
        double[] samples = new double[lapSamples * laps];
        Arrays.setAll(samples, i -> value.applyAsDouble(i / rateHz));
        return Channel.of(samples);
    }

    Motion motion() {
        channels.put(Quantity.SPEED, channel(speed));
        List<Lap> cut = new ArrayList<>();
        for (int lap = 0; lap < laps; lap++) {
            cut.add(new Lap(lap + 1, lap * lapSamples, (lap + 1) * lapSamples, lapSamples / rateHz, LapKind.GOOD, ""));
        }
        return new Motion(
                new Recording("invented", rateHz, channels, List.of()),
                cut,
                channel(speed),
                channel(forward),
                channel(lateral),
                channel(t -> 0.0),
                channel(throttle));
    }
}
