package setwright.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.numerics.Robust;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.DateLine;
import setwright.intake.map.Dimension;
import setwright.intake.map.MapEntry;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** Turns mapped columns into SI channels on the uniform base. */
final class ColumnReader {
    private static final double SLOWEST_MPS = 3.0;

    private final Table table;
    private final ChannelMap map;
    private final TimeBase base;
    private final Optional<CarSheet> car;
    private final List<Calibration> calibrations = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    ColumnReader(Table table, ChannelMap map, TimeBase base, Optional<CarSheet> car) {
        this.table = table;
        this.map = map;
        this.base = base;
        this.car = car;
    }

    static TimeBase base(Table table, ChannelMap map, double[] timesS) {
        return TimeBase.of(
                table.file(), map.entry(Quantity.TIME).map(MapEntry::column).orElse(""), timesS);
    }

    List<Calibration> calibrations() {
        return calibrations;
    }

    List<String> remarks() {
        return remarks;
    }

    Map<Quantity, double[]> read() {
        Map<Quantity, double[]> channels = new EnumMap<>(Quantity.class);
        List<Read> all = map.entries().entrySet().parallelStream()
                .filter(item -> item.getKey() != Quantity.TIME)
                .map(item -> read(item.getKey(), item.getValue()))
                .toList();
        for (Read one : all) {
            channels.put(one.quantity, one.samples);
            remarks.addAll(one.remarks);
        }
        rollWheels(channels);
        boolean pressures = OptionalChannels.brakeFromCircuits(channels, remarks);
        OptionalChannels.tyreFromThirds(channels, remarks);
        scalePedals(channels, pressures);
        return channels;
    }

    private Read read(Quantity quantity, MapEntry entry) {
        Read read = new Read(quantity);
        double[] si = Spikes.removed(quantity, toSi(entry), read.remarks);
        read.samples = switch (quantity) {
            case GEAR, LAP_NUMBER -> base.resampler().hold(si);
            case LAP_TRIGGER -> base.resampler().peak(si);
            case LONGITUDE -> base.resampler().resample(DateLine.unwrapped(si, 2.0 * Math.PI));
            default -> base.resampler().resample(si);
        };
        return read;
    }

    /** One channel and what is to be said of it; each is read by one thread. */
    private static final class Read {
        private final Quantity quantity;
        private final List<String> remarks = new ArrayList<>();
        private double[] samples = new double[0];

        private Read(Quantity quantity) {
            this.quantity = quantity;
        }
    }

    private double[] toSi(MapEntry entry) {
        TableColumn column = table.column(entry.column())
                .orElseThrow(() -> InputProblem.in(table.file())
                        .column(entry.column())
                        .expected("a column of that name, as the channel map says")
                        .found("none")
                        .advice("Correct the channel map.")
                        .problem());
        double[] values = column.toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] = entry.toSi(values[i]);
        }
        return values;
    }

    /** Rates of rotation become speeds: times the car sheet's radius, else the radius that makes them equal the speed. */
    private void rollWheels(Map<Quantity, double[]> channels) {
        double[] speed = channels.get(Quantity.SPEED);
        for (Map.Entry<Quantity, double[]> item : channels.entrySet()) {
            Optional<MapEntry> entry = map.entry(item.getKey());
            boolean rotates = Dimension.of(item.getKey()) == Dimension.SPEED
                    && entry.isPresent()
                    && entry.get().unit().dimension() == Dimension.ANGULAR_RATE;
            if (!rotates || speed == null) {
                continue;
            }
            double[] rate = item.getValue();
            double[] ratio = new double[rate.length];
            for (int i = 0; i < ratio.length; i++) {
                ratio[i] = speed[i] > 10.0 && rate[i] > 1.0 ? speed[i] / rate[i] : Double.NaN;
            }
            boolean fromSheet =
                    car.isPresent() && car.get().assumed().stream().noneMatch(line -> line.contains("tyre_radius"));
            double radius = fromSheet ? car.get().tyreRadiusM() : Robust.median(ratio);
            item.setValue(Arrays.stream(rate).map(value -> radius * value).toArray());
            calibrations.add(new Calibration(
                    item.getKey().words() + " radius",
                    radius,
                    "m",
                    fromSheet ? "the tyre radius of the car sheet" : "the median of speed over rate of rotation"));
        }
    }

    private void scalePedals(Map<Quantity, double[]> channels, boolean fromCircuits) {
        double[] brake = channels.get(Quantity.BRAKE);
        boolean pressure = fromCircuits
                || map.entry(Quantity.BRAKE)
                        .map(entry -> entry.unit().dimension() == Dimension.PRESSURE)
                        .orElse(false);
        if (brake != null && pressure) {
            // A parked car may stand on its brakes harder than it ever drives on them.
            double[] speed = channels.getOrDefault(Quantity.SPEED, brake);
            double[] moving = new double[brake.length];
            for (int i = 0; i < moving.length; i++) {
                moving[i] = speed[i] > SLOWEST_MPS ? brake[i] : Double.NaN;
            }
            double hardest = Robust.quantile(moving, 0.9995);
            double most = car.map(CarSheet::brakePressureMaxPa)
                    .filter(java.util.OptionalDouble::isPresent)
                    .map(java.util.OptionalDouble::getAsDouble)
                    .orElse(hardest);
            boolean fromSheet = most != hardest;
            channels.put(
                    Quantity.BRAKE,
                    Arrays.stream(brake).map(value -> value / most).toArray());
            calibrations.add(new Calibration(
                    "brake scale",
                    most / 1.0e5,
                    "bar",
                    fromSheet
                            ? "the greatest brake pressure of the car sheet counts as 1"
                            : String.format(
                                    Locale.ROOT,
                                    "the hardest braking of the recording (%.1f bar) counts as 1",
                                    hardest / 1.0e5)));
        }
        for (Quantity pedal : List.of(Quantity.BRAKE, Quantity.THROTTLE)) {
            double[] values = channels.get(pedal);
            if (values != null) {
                channels.put(
                        pedal,
                        Arrays.stream(values)
                                .map(value -> Double.isNaN(value) ? value : Math.max(0.0, Math.min(1.0, value)))
                                .toArray());
            }
        }
    }
}
