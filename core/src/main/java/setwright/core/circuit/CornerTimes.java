package setwright.core.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/*
 * Design note. What is lost at the exit is lost all along the straight, so a corner has the straight behind it and not the one before: it
 * begins where its own approach does, with the braking.
 */

/** What each corner takes, from where its approach begins to where that of the next one does. */
public final class CornerTimes {
    /** A lap is not told to be cut so near to the start line: the sample before may lie on the other side. */
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
                .map(corner -> new Begin(corner.number(), cut(corner.startM(), length)))
                .sorted(Comparator.comparingDouble(Begin::stationM))
                .toList();
        Map<Integer, List<Double>> times = new TreeMap<>();
        if (begins.isEmpty()) {
            return times;
        }
        LapCuts cuts = new LapCuts(begins.stream()
                .map(Begin::stationM)
                .filter(station -> station > 0.0)
                .toList());
        int atTheLine = begins.size() - cuts.cutsM().size();
        int last = begins.size() - 1;
        for (Lap lap : stint.goodLaps()) {
            List<Double> parts = cuts.timesS(stint, lap);
            for (int i = 0; i < begins.size() && !parts.isEmpty(); i++) {
                // the part that the start line begins goes with the corner before the line, unless one begins there
                double time = i < atTheLine - 1 ? 0.0 : parts.get(i - atTheLine + 1);
                times.computeIfAbsent(begins.get(i).corner(), corner -> new ArrayList<>())
                        .add(i == last && atTheLine == 0 ? time + parts.get(0) : time);
            }
        }
        return times;
    }

    /** Where to cut; at zero where that is the start line. */
    private static double cut(double startM, double lengthM) {
        double station = startM - lengthM * Math.floor(startM / lengthM);
        return station < LINE_M || station > lengthM - LINE_M ? 0.0 : station;
    }
}
