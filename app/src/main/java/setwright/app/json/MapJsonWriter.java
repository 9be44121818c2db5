package setwright.app.json;

import static setwright.app.json.Numbers.digits;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import setwright.intake.map.Proposal;

/** Writes a proposed channel map as JSON of version 1: docs/map.schema.json. */
public final class MapJsonWriter {
    private static final int VERSION = 1;

    private MapJsonWriter() {}

    record Document(int version, List<Entry> channels, List<String> remarks) {}

    record Entry(
            String quantity,
            String column,
            String unit,
            int sign,
            OptionalDouble offset,
            OptionalDouble confidence,
            List<String> evidence) {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(Proposal proposal) {
        return Numbers.text(new Document(
                VERSION, proposal.reasons().stream().map(MapJsonWriter::entry).toList(), proposal.remarks()));
    }

    private static Entry entry(Proposal.Reason reason) {
        return new Entry(
                reason.quantity().name().toLowerCase(Locale.ROOT),
                reason.entry().column(),
                reason.entry().unit().symbol(),
                reason.entry().sign(),
                digits(reason.entry().offset()),
                digits(reason.confidence()),
                Stream.of(reason.words(), reason.physics())
                        .filter(text -> !text.isBlank())
                        .toList());
    }
}
