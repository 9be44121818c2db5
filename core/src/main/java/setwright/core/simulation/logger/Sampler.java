package setwright.core.simulation.logger;

import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;

/** Takes the fine samples of a drive down to a logger's rate. */
final class Sampler {
    private final DriveHistory history;
    private final double stepS;
    private final int rows;

    Sampler(DriveHistory history, double rateHz) {
        this.history = history;
        this.stepS = 1.0 / rateHz;
        this.rows = (int) Math.floor((history.count() - 1) * history.stepS() * rateHz) + 1;
    }

    int rows() {
        return rows;
    }

    double timeS(int row) {
        return row * stepS;
    }

    /** Returns the mean over the time of a row: no more bandwidth than the rate can carry. */
    double[] mean(Signal signal) {
        double half = Math.max(0.5 * stepS, 0.5 * history.stepS());
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            int first = index(timeS(row) - half + 1.0e-9);
            int last = index(timeS(row) + half - 1.0e-9);
            double sum = 0.0;
            for (int i = first; i <= last; i++) {
                sum += history.at(signal, i);
            }
            out[row] = sum / (last - first + 1);
        }
        return out;
    }

    /** Returns the value at the time of a row: for what jumps. */
    double[] held(Signal signal) {
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            out[row] = history.at(signal, (int) Math.min(history.count() - 1, timeS(row) / history.stepS() + 1.0e-6));
        }
        return out;
    }

    private int index(double timeS) {
        return (int) Math.max(0, Math.min(history.count() - 1, Math.round(timeS / history.stepS())));
    }
}
