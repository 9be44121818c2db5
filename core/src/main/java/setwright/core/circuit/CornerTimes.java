package setwright.core.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/*
 * Design note. What is lost at the exit is lost all along the straight, so a corner has the straight after it and not the one before: it
 * begins where its own approach does, with the braking.
 */

/** What each corner takes, from where its approach begins to where that of the next one does. */
public final class CornerTimes {
    /** What begins so near to the start line begins there: the sample before may lie on the other side of it. */
    private static final double LINE_M = 20.0;

    private CornerTimes() {}

    /**
     * Returns the times of the good laps.
     *
     * @return seconds by corner, one for each good lap that is placed at every cut, in the same order for all corners
     */
    public static Map<Integer, List<Double>> of(Stint stint) {
        double length = stint.circuit().line().lengthM();
        record Begin(int corner, double stationM) {}
        List<Begin> begins = stint.circuit().corners().stream()
                .map(corner -> new Begin(corner.number(), fromLine(corner.startM(), length)))
                .sorted(Comparator.comparingDouble(Begin::stationM))
                .toList();
        Map<Integer, List<Double>> times = new TreeMap<>();
        if (begins.isEmpty()) {
            return times;
        }
        LapCuts cuts = new LapCuts(begins.stream()
                .map(Begin::stationM)
                .filter(station -> station >= LINE_M)
                .toList());
        int atTheLine = begins.size() - cuts.cutsM().size();
        int last = begins.size() - 1;
        for (Lap lap : stint.goodLaps()) {
            List<Double> parts = cuts.timesS(stint, lap);
            // of several corners at the line only the last one has a part; where none is, the part that the line begins
            // goes with
            // the corner before it
            for (int i = Math.max(0, atTheLine - 1); i < begins.size() && !parts.isEmpty(); i++) {
                double time = parts.get(i - atTheLine + 1);
                times.computeIfAbsent(begins.get(i).corner(), corner -> new ArrayList<>())
                        .add(i == last && atTheLine == 0 ? time + parts.get(0) : time);
            }
        }
        return times;
    }

    /** The station where a corner begins; just below zero where that is just before the line. */
    private static double fromLine(double startM, double lengthM) {
        double station = startM - lengthM * Math.floor(startM / lengthM);
        return station > lengthM - LINE_M ? station - lengthM : station;
    }
}
