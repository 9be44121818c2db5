package setwright.core.chassis;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.circuit.Lap;
import setwright.core.numerics.Robust;
import setwright.core.numerics.SlopeInterval;
import setwright.core.recording.Quantity;

/** Reads tyre pressures: at the start, warm, and how they drift. */
final class TyrePressureReader {
    /** A gas warms in minutes: this is the start. */
    private static final double START_S = 20.0;

    private TyrePressureReader() {}

    static void read(Motion motion, CarSheet sheet, ChassisEvidence.Builder into) {
        List<Wheel> there = Arrays.stream(Wheel.values())
                .filter(wheel -> motion.recording().has(wheel.of("TYRE_PRESSURE")))
                .toList();
        if (there.isEmpty()) {
            into.missing(Subject.TYRE_PRESSURE, false, "no tyre pressure was recorded");
            return;
        }
        List<Lap> good = motion.goodLaps();
        if (good.size() < 2) {
            into.missing(Subject.TYRE_PRESSURE, true, "fewer than two laps can be judged");
            return;
        }
        List<Lap> warm = good.subList(good.size() / 2, good.size());
        double[][] medians = Arrays.stream(Wheel.values())
                .map(wheel -> warm.stream()
                        .mapToDouble(lap ->
                                there.contains(wheel) ? motion.median(wheel.of("TYRE_PRESSURE"), lap) : Double.NaN)
                        .toArray())
                .toArray(double[][]::new);
        into.tyrePressures = Optional.of(new TyrePressures(
                there.stream()
                        .map(wheel -> wheel(motion, sheet, wheel, warm, medians[place(wheel)]))
                        .toList(),
                over(warm.size(), lap -> medians[0][lap] - medians[1][lap]),
                over(warm.size(), lap -> medians[2][lap] - medians[3][lap]),
                over(warm.size(), lap -> 0.5 * (medians[0][lap] + medians[1][lap] - medians[2][lap] - medians[3][lap])),
                warm.stream().map(Lap::number).toList()));
    }

    private static int place(Wheel wheel) {
        return List.of(Wheel.values()).indexOf(wheel);
    }

    private static LapInterval over(int laps, java.util.function.IntToDoubleFunction value) {
        double[] perLap = new double[laps];
        Arrays.setAll(perLap, value);
        return LapInterval.of(perLap);
    }

    private static TyrePressures.OfWheel wheel(
            Motion motion, CarSheet sheet, Wheel wheel, List<Lap> warm, double[] medians) {
        Quantity quantity = wheel.of("TYRE_PRESSURE");
        int start = (int) Math.min(
                Math.round(START_S * motion.recording().sampleRateHz()),
                motion.recording().sampleCount());
        String item = wheel.isFront() ? "front_tyre_pressure" : "rear_tyre_pressure";
        return new TyrePressures.OfWheel(
                wheel,
                Robust.median(motion.recording().channel(quantity).slice(0, start)),
                LapInterval.of(medians),
                SlopeInterval.of(warm.stream().mapToDouble(Lap::number).toArray(), medians),
                SetupCatalogue.find(item)
                        .flatMap(kind -> sheet.item(item)
                                .map(found -> new TyrePressures.Window(
                                        kind.toSi(found),
                                        kind.toSi(found, found.min()),
                                        kind.toSi(found, found.max())))));
    }
}
