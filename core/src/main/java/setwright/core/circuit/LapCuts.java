package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import setwright.core.recording.Channel;

/**
 * Stations at which laps are cut into parts.
 *
 * @param cutsM  m, ascending, none at the start line
 */
record LapCuts(List<Double> cutsM) {
    LapCuts {
        cutsM = List.copyOf(cutsM);
    }

    /**
     * Returns the times of a lap's parts, s; their sum is the lap time.
     *
     * @return empty where the lap is not placed around a cut
     */
    List<Double> timesS(Stint stint, Lap lap) {
        double step = stint.recording().stepS();
        double begin = begin(stint, lap);
        List<Double> times = new ArrayList<>();
        double sum = 0.0;
        for (double cut : cutsM) {
            double at = crossing(stint.station(), lap, cut);
            if (!Double.isFinite(at)) {
                return List.of();
            }
            times.add((at - begin) * step - sum);
            sum = (at - begin) * step;
        }
        times.add(lap.timeS() - sum);
        return times;
    }

    /** The sample, with its fraction, at which the line was crossed. */
    private static double begin(Stint stint, Lap lap) {
        if (lap.from() == 0) {
            return 0.0;
        }
        double after = stint.station().get(lap.from());
        double before = stint.circuit().line().lengthM() - stint.station().get(lap.from() - 1);
        return before >= 0.0 && after >= 0.0 && before + after > 0.0
                ? lap.from() - after / (before + after)
                : lap.from();
    }

    private static double crossing(Channel station, Lap lap, double cut) {
        for (int i = lap.from(); i + 1 < lap.to(); i++) {
            double here = station.get(i);
            double next = station.get(i + 1);
            if (here < cut && next >= cut && next - here < cut) {
                return i + (cut - here) / (next - here);
            }
        }
        return Double.NaN;
    }
}
