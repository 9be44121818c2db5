package setwright.app.diagnose;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import setwright.app.diagnose.WrittenTable.Column;
import setwright.app.evidence.Answer;
import setwright.app.scoreboard.Home;
import setwright.core.judgement.Diagnostician;
import setwright.core.recording.Quantity;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.Dimension;
import setwright.intake.map.MapEntry;
import setwright.intake.map.Unit;
import setwright.intake.map.Units;

/**
 * A practice recording as packaged, or changed in a way of which the answer is known. Its columns are known by the map that is
 * proposed for the file as packaged; the scoreboard counts that map against the truth.
 *
 * @param car    its car sheet
 * @param map    of the file as packaged
 * @param table  its columns
 */
record PackagedRun(Path car, ChannelMap map, WrittenTable table) {
    /** Columns of which a mirror changes the sign. */
    static final List<Quantity> LATERAL =
            List.of(Quantity.STEERING_WHEEL_ANGLE, Quantity.YAW_RATE, Quantity.LATERAL_ACCELERATION);

    private static final List<String> SIDED = List.of("WHEEL_SPEED", "SUSPENSION", "TYRE_TEMPERATURE");

    /**
     * How the columns of a file are named and in which units they are written.
     *
     * @param words  by quantity; the quantity's own words where there are none
     * @param units  symbol by dimension; the unit of the file as packaged where there is none
     */
    record Style(Map<Quantity, String> words, Map<Dimension, String> units) {}

    static PackagedRun of(String name) {
        Path folder = Home.cases().resolve(name);
        Path file = folder.resolve("stint1.csv.gz");
        Path car = folder.resolve("car.yaml");
        ChannelMap map = RecordingReader.read(file, Optional.empty(), Optional.of(CarSheetReader.read(car)))
                .proposal()
                .map();
        return new PackagedRun(car, map, WrittenTable.read(file));
    }

    /** Sends a file through the whole chain with this run's car sheet. */
    Answer diagnose(Path file) {
        DiagnoseRequest request = DiagnoseRequest.of(file, Optional.of(car), Optional.empty(), Optional.empty());
        try {
            return new FileDiagnoser(Diagnostician::diagnose).diagnose(request, step -> {});
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    boolean has(Quantity quantity) {
        return map.has(quantity);
    }

    String header(Quantity quantity) {
        return map.entry(quantity).orElseThrow().column();
    }

    double[] get(Quantity quantity) {
        return table.get(header(quantity));
    }

    PackagedRun with(WrittenTable other) {
        return new PackagedRun(car, map, other);
    }

    PackagedRun with(Quantity quantity, double[] values) {
        return with(table.with(header(quantity), new Column(header(quantity), values)));
    }

    PackagedRun with(Quantity quantity, DoubleUnaryOperator change) {
        return with(quantity, Arrays.stream(get(quantity)).map(change).toArray());
    }

    PackagedRun flipped(Quantity quantity) {
        return with(quantity, value -> -value);
    }

    /** Turns left into right in all columns but the positions. */
    PackagedRun mirroredSides() {
        PackagedRun out = this;
        for (Quantity quantity : LATERAL) {
            out = has(quantity) ? out.flipped(quantity) : out;
        }
        for (String family : SIDED) {
            for (String axle : List.of("_FRONT", "_REAR")) {
                Quantity left = Quantity.valueOf(family + axle + "_LEFT");
                Quantity right = Quantity.valueOf(family + axle + "_RIGHT");
                if (has(left) && has(right)) {
                    out = out.with(left, get(right)).with(right, get(left));
                }
            }
        }
        return out;
    }

    /** Writes all columns under other words and in other units; numbers without a unit stay. */
    WrittenTable written(Style style) {
        List<Column> columns = new ArrayList<>();
        for (Column column : table.columns()) {
            Optional<Quantity> quantity = map.entries().entrySet().stream()
                    .filter(item -> item.getValue().column().equals(column.header()))
                    .map(Map.Entry::getKey)
                    .findFirst();
            columns.add(quantity.map(known -> written(column, known, style)).orElse(column));
        }
        return new WrittenTable(columns);
    }

    private Column written(Column column, Quantity quantity, Style style) {
        MapEntry entry = map.entry(quantity).orElseThrow();
        Unit from = entry.unit();
        String words = style.words().getOrDefault(quantity, quantity.words());
        if (from.dimension() == Dimension.NUMBER) {
            return new Column(words, column.values());
        }
        Unit to = Optional.ofNullable(style.units().get(from.dimension()))
                .map(symbol -> Units.get(from.dimension(), symbol))
                .orElse(from);
        double zero = to.toSi(0.0);
        double one = to.toSi(1.0) - zero;
        return new Column(
                words + " [" + to.symbol() + "]",
                Arrays.stream(column.values())
                        .map(value -> (from.toSi(value) - zero) / one)
                        .toArray());
    }
}
