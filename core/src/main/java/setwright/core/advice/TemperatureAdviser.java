package setwright.core.advice;

import java.util.Arrays;
import java.util.List;
import setwright.core.advice.AdviceReview.Silent;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.judgement.Diagnosis;
import setwright.core.numerics.Robust;
import setwright.core.numerics.SlopeInterval;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/*
 * Design note. One temperature a tyre tells how hard tyres work against each other. It tells nothing of camber, which takes three across
 * the tread, and of a good window only what the maker of the tyre says: none is assumed here.
 */

/** Holds the tyres' temperatures against each other. */
final class TemperatureAdviser {
    private static final List<Quantity> TYRES = List.of(
            Quantity.TYRE_TEMPERATURE_FRONT_LEFT,
            Quantity.TYRE_TEMPERATURE_FRONT_RIGHT,
            Quantity.TYRE_TEMPERATURE_REAR_LEFT,
            Quantity.TYRE_TEMPERATURE_REAR_RIGHT);

    /** Axles within ten degrees of each other are usual (common practice). */
    private static final double AXLES_APART_K = 10.0;
    /** A circuit turns more one way than the other: sides differ by more (common practice). */
    private static final double SIDES_APART_K = 20.0;
    /** Half a degree a lap over a stint of ten is five: as much as a tenth of a bar makes (orientation). */
    private static final double DRIFT_K_PER_LAP = 0.5;

    private TemperatureAdviser() {}

    static void look(Diagnosis diagnosis, List<Advice> advice, List<Silent> silent) {
        Stint stint = diagnosis.stint();
        if (!TYRES.stream().allMatch(stint.recording()::has) || stint.goodLaps().size() < 2) {
            silent.add(new Silent(Topic.TYRE_TEMPERATURE, false, "no temperature of every tyre was recorded"));
            return;
        }
        List<Lap> laps = stint.goodLaps();
        List<Lap> last = laps.subList(laps.size() / 2, laps.size());
        double[] tyres = TYRES.stream()
                .mapToDouble(tyre -> Robust.median(
                        last.stream().mapToDouble(lap -> mean(stint, tyre, lap)).toArray()))
                .toArray();
        double front = 0.5 * (tyres[0] + tyres[1]);
        double rear = 0.5 * (tyres[2] + tyres[3]);
        double left = 0.5 * (tyres[0] + tyres[2]);
        double right = 0.5 * (tyres[1] + tyres[3]);
        SlopeInterval drift = SlopeInterval.of(
                laps.stream().mapToDouble(Lap::number).toArray(),
                laps.stream()
                        .mapToDouble(lap -> TYRES.stream()
                                .mapToDouble(tyre -> mean(stint, tyre, lap))
                                .average()
                                .orElse(Double.NaN))
                        .toArray());
        boolean drifts = drift.clear() && Math.abs(drift.slope()) > DRIFT_K_PER_LAP;
        if (Math.abs(front - rear) > AXLES_APART_K || Math.abs(left - right) > SIDES_APART_K || drifts) {
            advice.add(new TemperatureAdvice(
                    tyres[0],
                    tyres[1],
                    tyres[2],
                    tyres[3],
                    front - rear,
                    left - right,
                    drift,
                    laps.stream().map(Lap::number).toList()));
        } else {
            silent.add(new Silent(Topic.TYRE_TEMPERATURE, true, "no axle or side stands out, and none drifts"));
        }
    }

    private static double mean(Stint stint, Quantity tyre, Lap lap) {
        Channel channel = stint.recording().channel(tyre);
        return Arrays.stream(channel.slice(lap.from(), lap.to()))
                .filter(Double::isFinite)
                .average()
                .orElse(Double.NaN);
    }
}
