package setwright.app.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.app.export.ChannelsTable.Sample;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** The calibrated recording: one row per sample. */
final class ChannelsTable implements Table<Sample> {
    /** All channels at one moment. */
    record Sample(Recording recording, int index) {}

    @Override
    public String name() {
        return "channels";
    }

    @Override
    public String words() {
        return "One row per sample of one recording, calibrated and on its uniform time base. Columns of quantities that were"
                + " not recorded are left out; a gap is an empty cell. Signs are those of ISO 8855: x forward, y left, z up.";
    }

    @Override
    public Source source() {
        return Source.RECORDING;
    }

    @Override
    public List<Column<Sample>> columns() {
        List<Column<Sample>> columns = new ArrayList<>(List.of(Column.number(
                Quantity.TIME.words(),
                Measure.TIME,
                "since the start of the recording",
                sample -> sample.index() * sample.recording().stepS())));
        Arrays.stream(Quantity.values())
                .filter(quantity -> quantity != Quantity.TIME)
                .map(ChannelsTable::column)
                .forEach(columns::add);
        return columns;
    }

    private static Column<Sample> column(Quantity quantity) {
        return Column.number(
                quantity.words(),
                Measure.of(quantity),
                words(quantity),
                sample -> sample.recording().channel(quantity).get(sample.index()));
    }

    private static String words(Quantity quantity) {
        return switch (quantity) {
            case STEERING_WHEEL_ANGLE, ROAD_WHEEL_ANGLE, YAW_RATE, LATERAL_ACCELERATION -> "left positive";
            case THROTTLE -> "0 released to 1 floored";
            case BRAKE -> "0 released to 1 the hardest of the recording, or the car sheet's greatest pressure";
            case GEAR -> "0 neutral, negative reverse";
            case LAP_TRIGGER -> "not 0 for a moment when the start line is crossed";
            case LAP_DISTANCE -> "since the start line";
            case POSITION_X, POSITION_Y -> "in a right-handed local plane";
            default -> "as recorded";
        };
    }

    @Override
    public List<Column<Sample>> columns(Material material) {
        Set<String> recorded =
                recording(material).quantities().stream().map(Quantity::words).collect(Collectors.toSet());
        return columns().stream()
                .filter(column -> column.name().equals(Quantity.TIME.words()) || recorded.contains(column.name()))
                .toList();
    }

    @Override
    public Stream<Sample> rows(Material material) {
        Recording recording = recording(material);
        return IntStream.range(0, recording.sampleCount()).mapToObj(i -> new Sample(recording, i));
    }

    private static Recording recording(Material material) {
        return material.laps().get(0).answer().diagnosis().stint().recording();
    }
}
