package setwright.core.simulation.truth;

import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;

/** How far along the line a drive is at every sample, counted on from lap to lap. */
final class Distance {
    private final double[] along;
    private final int laps;

    Distance(DriveHistory history, double lengthM) {
        along = new double[history.count()];
        int crossings = 0;
        double before = 0.0;
        for (int i = 0; i < along.length; i++) {
            double station = history.at(Signal.STATION, i);
            double moved = station - before;
            crossings += moved < -0.5 * lengthM ? 1 : moved > 0.5 * lengthM ? -1 : 0;
            along[i] = crossings * lengthM + station;
            before = station;
        }
        laps = crossings;
    }

    /** Returns how often the start line was crossed, the start not counted. */
    int crossings() {
        return laps;
    }

    int count() {
        return along.length;
    }

    double at(int sample) {
        return along[sample];
    }

    /** Returns the first sample at or beyond a distance, m; the count when there is none. */
    int sampleAt(double distanceM) {
        int low = 0;
        int high = along.length;
        while (low < high) {
            int middle = (low + high) / 2;
            if (along[middle] < distanceM) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
