package setwright.intake.gather;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import setwright.core.recording.Quantity;
import setwright.intake.map.ColumnWords;
import setwright.intake.table.TableColumn;

/**
 * Reads a column of one table at the times of another.
 *
 * <p>A measure is joined by straight lines, a position by a curve through four fixes: between two of them, T apart, a car that corners at
 * a leaves the straight line by a T&sup2;/8, which is 2 m at 15 m/s&sup2; and one fix a second. Counters and states (gear, lap, flags) keep what they
 * were. Nothing is read across a gap.
 */
final class OntoTimes {
    /** A row that came late leaves no gap, a row that is missing does. */
    private static final double LONGEST_STEPS = 1.6;
    /** Whole numbers of which there are no more than these name something: no car has more gears, no switch more places. */
    private static final int MOST_STATES = 16;

    private static final double SURE = 0.8;

    private enum Way {
        HOLD,
        STRAIGHT,
        CURVE
    }

    private OntoTimes() {}

    /**
     * Returns the readings of a column at other times; NaN where it has none.
     *
     * @param from     table that the column stands in
     * @param toTimesS rising, on the same clock
     */
    static double[] read(TableColumn column, TimedTable from, double[] toTimesS) {
        return read(column.toArray(), way(column), from, toTimesS);
    }

    /** The same of numbers that are a measure and belong to the rows of a table. */
    static double[] measure(double[] values, TimedTable from, double[] toTimesS) {
        return read(values, Way.STRAIGHT, from, toTimesS);
    }

    private static Way way(TableColumn column) {
        boolean place = ColumnWords.score(column, Quantity.LATITUDE) > SURE
                || ColumnWords.score(column, Quantity.LONGITUDE) > SURE
                || ColumnWords.score(column, Quantity.POSITION_X) > SURE
                || ColumnWords.score(column, Quantity.POSITION_Y) > SURE;
        return place ? Way.CURVE : isState(column) ? Way.HOLD : Way.STRAIGHT;
    }

    private static boolean isState(TableColumn column) {
        Set<Double> met = new HashSet<>();
        for (int i = 0; i < column.size() && met.size() <= MOST_STATES; i++) {
            double value = column.get(i);
            if (Double.isFinite(value)) {
                if (value != Math.rint(value)) {
                    return false;
                }
                met.add(value);
            }
        }
        return met.size() <= MOST_STATES || ColumnWords.score(column, Quantity.LAP_NUMBER) > SURE;
    }

    private static double[] read(double[] values, Way way, TimedTable from, double[] toTimesS) {
        double[] times = from.timesS();
        double longest = LONGEST_STEPS * from.stepS();
        double[] out = new double[toTimesS.length];
        Arrays.fill(out, Double.NaN);
        int after = 0;
        for (int k = 0; k < out.length; k++) {
            double t = toTimesS[k];
            while (after < times.length && times[after] <= t) {
                after++;
            }
            int before = after - 1;
            if (before < 0) {
                continue;
            }
            boolean within = after < times.length && times[after] - times[before] <= longest;
            if (times[before] == t) {
                out[k] = values[before];
            } else if (way == Way.HOLD) {
                out[k] = within || t - times[before] <= from.stepS() ? values[before] : Double.NaN;
            } else if (within) {
                boolean curve = way == Way.CURVE
                        && before > 0
                        && after + 1 < times.length
                        && times[before] - times[before - 1] <= longest
                        && times[after + 1] - times[after] <= longest
                        && Double.isFinite(values[before - 1])
                        && Double.isFinite(values[after + 1]);
                out[k] = curve
                        ? cubic(times, values, before - 1, t)
                        : values[before]
                                + (values[after] - values[before])
                                        * (t - times[before])
                                        / (times[after] - times[before]);
            }
        }
        return out;
    }

    /** Lagrange's cubic through four points. */
    private static double cubic(double[] times, double[] values, int first, double t) {
        double sum = 0.0;
        for (int i = first; i < first + 4; i++) {
            double weight = 1.0;
            for (int j = first; j < first + 4; j++) {
                weight *= j == i ? 1.0 : (t - times[j]) / (times[i] - times[j]);
            }
            sum += weight * values[i];
        }
        return sum;
    }
}
