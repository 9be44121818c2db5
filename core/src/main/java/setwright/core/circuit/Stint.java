package setwright.core.circuit;

import java.util.List;
import java.util.OptionalDouble;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/**
 * A recording cut into laps, with every sample placed on the circuit.
 *
 * @param recording  the samples
 * @param circuit    the circuit they were taken on
 * @param laps       in driving order, good ones and those put aside
 * @param station    of each sample, m along the reference line, in [0, length); NaN where unknown
 * @param offset     of each sample, m to the left of the reference line; NaN where there is no position
 */
public record Stint(Recording recording, Circuit circuit, List<Lap> laps, Channel station, Channel offset) {
    public Stint {
        laps = List.copyOf(laps);
        if (station.size() != recording.sampleCount() || offset.size() != recording.sampleCount()) {
            throw new IllegalArgumentException("station and offset must have one value per sample");
        }
    }

    /** Returns the laps that are judged. */
    public List<Lap> goodLaps() {
        return laps.stream().filter(Lap::good).toList();
    }

    /** Returns the fuel on board in the judged laps as far as it was recorded, kg. */
    public List<Double> fuelKg() {
        return goodLaps().stream()
                .flatMapToDouble(lap -> fuelKg(lap).stream())
                .boxed()
                .toList();
    }

    /** Returns the fuel on board in a lap, kg, its median; empty where none was recorded. */
    public OptionalDouble fuelKg(Lap lap) {
        if (!recording.has(Quantity.FUEL_MASS)) {
            return OptionalDouble.empty();
        }
        double median = Robust.median(recording.channel(Quantity.FUEL_MASS).slice(lap.from(), lap.to()));
        return Double.isFinite(median) ? OptionalDouble.of(median) : OptionalDouble.empty();
    }
}
