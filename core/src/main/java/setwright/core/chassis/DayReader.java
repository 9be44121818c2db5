package setwright.core.chassis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.circuit.Lap;
import setwright.core.recording.Quantity;

/** Reads the temperatures of track and air. */
final class DayReader {
    private DayReader() {}

    static void read(Motion motion, ChassisEvidence.Builder into) {
        List<Lap> laps = motion.goodLaps();
        Lap first = laps.get(0);
        Lap last = laps.get(laps.size() - 1);
        DayTemperatures day = new DayTemperatures(
                median(motion, Quantity.TRACK_TEMPERATURE, first),
                median(motion, Quantity.TRACK_TEMPERATURE, last),
                median(motion, Quantity.AIR_TEMPERATURE, first),
                median(motion, Quantity.AIR_TEMPERATURE, last));
        if (day.trackFromK().isEmpty() && day.airFromK().isEmpty()) {
            into.missing(Subject.DAY, false, "neither was recorded");
        } else {
            into.day = Optional.of(day);
        }
    }

    private static OptionalDouble median(Motion motion, Quantity quantity, Lap lap) {
        double found = motion.recording().has(quantity) ? motion.median(quantity, lap) : Double.NaN;
        return Double.isFinite(found) ? OptionalDouble.of(found) : OptionalDouble.empty();
    }
}
