package setwright.core.trial;

import java.util.Arrays;
import java.util.List;
import setwright.core.numerics.Robust;

/*
 * Design note. Whether first laps are slow is asked of all runs at once, and the same number is left out of each: what is left out cannot favour
 * a setup. A first lap counts as slow when it lies two standard deviations (from the median absolute deviation) above the rest of its run; by
 * chance that happens in both of two runs about once in two hundred trials, and then costs a lap of each.
 */

/** Finds first laps on which the tyres were not yet warm. */
final class ColdLaps {
    private static final int MOST = 2;
    private static final int LEFT = 4;
    private static final double SLOW = 2.0;

    private ColdLaps() {}

    /** Returns how many laps are to be left out at the beginning of every run. */
    static int count(List<TrialRun> runs) {
        int count = 0;
        while (count < MOST && allSlow(runs, count)) {
            count++;
        }
        return count;
    }

    private static boolean allSlow(List<TrialRun> runs, int first) {
        return runs.stream().allMatch(run -> {
            double[] times = run.laps().stream().mapToDouble(TrialLap::timeS).toArray();
            if (times.length < first + 1 + LEFT) {
                return false;
            }
            double[] rest = Arrays.copyOfRange(times, first + 1, times.length);
            return times[first] - Robust.median(rest) > SLOW * Robust.scaledMad(rest);
        });
    }
}
