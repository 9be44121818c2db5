package setwright.core.chassis;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/**
 * The samples of a stint with the motion that they are read against.
 *
 * @param recording  the channels
 * @param laps       in driving order, good ones and those put aside
 * @param speed      m/s
 * @param forward    longitudinal acceleration, m/s²
 * @param lateral    lateral acceleration, m/s²
 * @param brake      0..1
 * @param throttle   0..1
 */
record Motion(
        Recording recording,
        List<Lap> laps,
        Channel speed,
        Channel forward,
        Channel lateral,
        Channel brake,
        Channel throttle) {
    Motion {
        laps = List.copyOf(laps);
    }

    static Motion of(Stint stint, HandlingTrace trace) {
        return new Motion(
                stint.recording(),
                stint.laps(),
                trace.speed(),
                trace.forward(),
                trace.lateral(),
                trace.brake(),
                trace.throttle());
    }

    List<Lap> goodLaps() {
        return laps.stream().filter(Lap::good).toList();
    }

    boolean has(List<Quantity> quantities) {
        return quantities.stream().allMatch(recording::has);
    }

    /** Returns the mean of one value a lap, given by the good lap's place in their order. */
    LapInterval overLaps(IntToDoubleFunction value) {
        double[] perLap = new double[goodLaps().size()];
        for (int lap = 0; lap < perLap.length; lap++) {
            perLap[lap] = value.applyAsDouble(lap);
        }
        return LapInterval.of(perLap);
    }

    /** Median of a quantity over a lap; NaN without samples. */
    double median(Quantity quantity, Lap lap) {
        return Robust.median(recording.channel(quantity).slice(lap.from(), lap.to()));
    }

    /** Mean of a quantity over a lap; NaN without samples. */
    double mean(Quantity quantity, Lap lap) {
        double sum = 0.0;
        int count = 0;
        Channel channel = recording.channel(quantity);
        for (int i = lap.from(); i < lap.to(); i++) {
            if (Double.isFinite(channel.get(i))) {
                sum += channel.get(i);
                count++;
            }
        }
        return sum / count;
    }
}
