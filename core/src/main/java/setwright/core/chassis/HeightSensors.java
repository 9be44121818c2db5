package setwright.core.chassis;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Measured ride heights. */
public final class HeightSensors {
    private HeightSensors() {}

    /** Returns the height of an axle between its wheels, m: recorded there, or the mean of both sides; empty without either. */
    public static Optional<double[]> between(Recording recording, boolean isFront) {
        Quantity axle = isFront ? Quantity.RIDE_HEIGHT_FRONT : Quantity.RIDE_HEIGHT_REAR;
        if (recording.has(axle)) {
            return Optional.of(recording.channel(axle).toArray());
        }
        List<Quantity> sides = Arrays.stream(Wheel.values())
                .filter(wheel -> wheel.isFront() == isFront)
                .map(wheel -> wheel.of("RIDE_HEIGHT"))
                .toList();
        return sides.stream().allMatch(recording::has) ? Optional.of(mean(recording, sides)) : Optional.empty();
    }

    static double[] mean(Recording recording, List<Quantity> sides) {
        double[] one = recording.channel(sides.get(0)).toArray();
        double[] other = recording.channel(sides.get(1)).toArray();
        double[] mean = new double[one.length];
        Arrays.setAll(mean, i -> 0.5 * (one[i] + other[i]));
        return mean;
    }
}
