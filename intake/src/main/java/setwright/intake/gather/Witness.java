package setwright.intake.gather;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.intake.map.ColumnWords;
import setwright.intake.map.DateLine;
import setwright.intake.table.TableColumn;

/** What a table saw of the car's motion, by the words of its headers, for telling by how much two clocks differ. */
final class Witness {
    /** In the order of how much they tell; what a device sees of the motion, not what it is told by another. */
    static final List<Quantity> TELLING = List.of(
            Quantity.SPEED,
            Quantity.YAW_RATE,
            Quantity.LATERAL_ACCELERATION,
            Quantity.ENGINE_SPEED,
            Quantity.LONGITUDINAL_ACCELERATION,
            Quantity.STEERING_WHEEL_ANGLE,
            Quantity.THROTTLE,
            Quantity.BRAKE);

    private static final double SURE = 0.8;
    private static final double SMOOTHED_S = 0.5;
    private static final double EARTH_M = 6_371_000.0;

    private Witness() {}

    /** Returns the readings of a quantity, one for each row, in any unit; a speed may be that of the position. */
    static Optional<double[]> of(TimedTable table, Quantity quantity) {
        Optional<double[]> measured = best(table, quantity).map(TableColumn::toArray);
        return measured.isEmpty() && quantity == Quantity.SPEED ? speedOfPlace(table) : measured;
    }

    private static Optional<TableColumn> best(TimedTable table, Quantity quantity) {
        return table.table().columns().stream()
                .filter(column -> column.finiteCount() > 1 && ColumnWords.score(column, quantity) >= SURE)
                .max(Comparator.comparingDouble(column -> ColumnWords.score(column, quantity)));
    }

    private static Optional<double[]> speedOfPlace(TimedTable table) {
        Optional<TableColumn> x = best(table, Quantity.POSITION_X);
        Optional<TableColumn> y = best(table, Quantity.POSITION_Y);
        Optional<TableColumn> latitude = best(table, Quantity.LATITUDE);
        Optional<TableColumn> longitude = best(table, Quantity.LONGITUDE);
        if (latitude.isPresent() && longitude.isPresent()) {
            double[] north = radians(latitude.get(), Quantity.LATITUDE);
            double[] east = radians(longitude.get(), Quantity.LONGITUDE);
            // A ball is good enough here: two speeds are compared by their shape. One parallel for all, or going north
            // would count as east.
            double parallel = EARTH_M * Math.cos(Robust.median(north));
            double[] eastM = Arrays.stream(DateLine.unwrapped(east, 2.0 * Math.PI))
                    .map(angle -> parallel * angle)
                    .toArray();
            double[] northM = Arrays.stream(north).map(angle -> EARTH_M * angle).toArray();
            return Optional.of(speed(table, eastM, northM));
        }
        return x.isPresent() && y.isPresent()
                ? Optional.of(speed(table, x.get().toArray(), y.get().toArray()))
                : Optional.empty();
    }

    private static double[] radians(TableColumn column, Quantity quantity) {
        double factor = ColumnWords.siFactor(column, quantity);
        double[] values = column.toArray();
        boolean degrees = factor == 1.0 && Arrays.stream(values).anyMatch(v -> Math.abs(v) > Math.PI);
        for (int i = 0; i < values.length; i++) {
            values[i] *= degrees ? Math.PI / 180.0 : factor;
        }
        return values;
    }

    /** Over half a second on both sides, so that it is not early or late, and the noise of a fix does not count. */
    private static double[] speed(TimedTable table, double[] x, double[] y) {
        double[] times = table.timesS();
        double[] out = new double[times.length];
        for (int i = 0; i < out.length; i++) {
            int before = i;
            while (before > 0 && times[i] - times[before] < SMOOTHED_S - 1.0e-6) {
                before--;
            }
            int after = i;
            while (after < out.length - 1 && times[after] - times[i] < SMOOTHED_S - 1.0e-6) {
                after++;
            }
            out[i] = Math.hypot(x[after] - x[before], y[after] - y[before]) / (times[after] - times[before]);
        }
        return out;
    }
}
